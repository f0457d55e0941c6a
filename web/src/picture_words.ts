/** The words in a picture of the engine, as the language of the screens shows them. */
import { strings } from './strings';

/** Numbers, units and signs are the same in every language. */
const hasWords = /\p{L}{3}/u;

const translated = 'data-said';

/** Lines of one text stand closer than this many of its sizes; texts of their own farther apart. */
const closest = 1.45;

const numberOf = (text: Element, name: string) => Number(text.getAttribute(name));

function goesOn(before: Element, next: Element): boolean {
  const same = ['x', 'class', 'fill', 'font-size', 'text-anchor'].every(
    (name) => before.getAttribute(name) === next.getAttribute(name),
  );
  const down = numberOf(next, 'y') - numberOf(before, 'y');
  return same && down > 0 && down < closest * numberOf(before, 'font-size');
}

/** The texts of a picture, each with its lines: the engine breaks long ones. */
export function textsOf(svg: Element): Element[][] {
  const texts: Element[][] = [];
  for (const line of svg.querySelectorAll('text')) {
    const before = texts.at(-1);
    const last = before?.at(-1);
    if (before && last && goesOn(last, line)) before.push(line);
    else texts.push([line]);
  }
  return texts;
}

/** A word, or a number with its unit: they stay together. */
const unbroken = /(?:≥ )?\d\S*(?: [a-z%³²/]{1,4}[,;:.]?(?=\s|$))?|\S+/g;

/** Words in so many lines, none much longer than need be. */
export function inLines(words: string, lines: number, longest: number): string[] {
  const room = Math.max(longest, Math.ceil((words.length / lines) * 1.15));
  const broken: string[] = [''];
  for (const word of words.match(unbroken) ?? []) {
    const line = broken.at(-1) ?? '';
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length <= room || line === '' || broken.length === lines) {
      broken[broken.length - 1] = longer;
    } else broken.push(word);
  }
  return broken;
}

/** Puts the words of the language in the place of the engine's; those it lacks say which they are. */
export function sayWords(svg: SVGSVGElement): void {
  const { lang } = strings.asWritten;
  if (lang === undefined) return;
  for (const lines of textsOf(svg)) {
    const written = lines.map((line) => line.textContent ?? '');
    if (lines.some((line) => line.children.length > 0) || !written.some((w) => hasWords.test(w))) {
      continue;
    }
    const pieces = strings.readEngine(written.join(' '), 'pictureWord');
    const known = pieces.every(({ asWritten }) => !asWritten);
    const said = inLines(
      pieces.map((piece) => piece.text).join(' '),
      lines.length,
      Math.max(...written.map(({ length }) => length)),
    );
    for (const [index, line] of lines.entries()) {
      if (!known) line.setAttribute('lang', lang);
      else {
        line.textContent = said[index] ?? '';
        line.setAttribute(translated, '');
      }
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
