/** The words in a picture of the engine, as the language of the screens shows them. */
import { strings } from './strings';

/** Numbers, units and signs are the same in every language. */
const hasWords = /\p{L}{3}/u;

const translated = 'data-said';

/** Puts the words of the language in the place of the engine's; those it lacks say which they are. */
export function sayWords(svg: SVGSVGElement): void {
  const { lang } = strings.asWritten;
  if (lang === undefined) return;
  for (const text of svg.querySelectorAll('text')) {
    const written = text.textContent ?? '';
    if (text.children.length > 0 || !hasWords.test(written)) continue;
    const pieces = strings.readEngine(written, 'pictureWord');
    if (pieces.every(({ asWritten }) => !asWritten)) {
      text.textContent = pieces.map((piece) => piece.text).join(' ');
      text.setAttribute(translated, '');
    } else {
      text.setAttribute('lang', lang);
    }
  }
}

/** Words that are longer than the engine's are drawn closer where they would leave the picture. */
export function keepWithin(svg: SVGSVGElement): void {
  const frame = svg.getBoundingClientRect();
  for (const text of svg.querySelectorAll<SVGTextElement>(`text[${translated}]`)) {
    const { left, right, width, height } = text.getBoundingClientRect();
    const over = Math.max(right - frame.right, frame.left - left);
    if (over <= 0 || over >= width || height > width) continue;
    text.setAttribute('lengthAdjust', 'spacingAndGlyphs');
    text.setAttribute('textLength', String(text.getComputedTextLength() * (1 - over / width)));
  }
}
