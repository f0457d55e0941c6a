/** A sentence of the engine with gaps, and the same in the language of the screens. */
import { type Gap, type GapMark, type Known, shownInGap } from './gap';

/** Text and gaps in turn; there is text, perhaps empty, before, between and after the gaps. */
interface Parts {
  texts: string[];
  gaps: Gap[];
}

const gapText = /\{([a-zA-Z]+)([#!*;@_]?)([a-zA-Z]*)\}/g;

export function partsOf(pattern: string): Parts {
  const gaps: Gap[] = [];
  const texts: string[] = [];
  let from = 0;
  for (const match of pattern.matchAll(gapText)) {
    texts.push(pattern.slice(from, match.index));
    const [, name = '', mark = '', of = ''] = match;
    gaps.push({ name, mark: mark as GapMark, of });
    from = match.index + match[0].length;
  }
  texts.push(pattern.slice(from));
  return { texts, gaps };
}

/** Each word once: the engine writes in English. */
export function wordsIn(text: string): Set<string> {
  return new Set(text.match(/[A-Za-z]{3,}/g));
}

/** Words that stand whole in the fixed texts: what is in a gap may go on a word beside it. */
function fixedWords(texts: readonly string[]): string[] {
  const whole = texts.map((text, part) => {
    const from = part === 0 ? text : text.replace(/^[A-Za-z]+/, '');
    return part === texts.length - 1 ? from : from.replace(/[A-Za-z]+$/, '');
  });
  return [...wordsIn(whole.join(' '))];
}

export class SentencePattern {
  readonly written: Parts;
  readonly shown: Parts;
  /** How much of the sentence is fixed: the most specific pattern wins. */
  readonly fixed: number;
  /** Words that every such sentence has. */
  readonly words: readonly string[];

  constructor(written: string, shown: string) {
    this.written = partsOf(written);
    this.shown = partsOf(shown);
    this.fixed = this.written.texts.join('').length;
    this.words = fixedWords(this.written.texts);
  }

  /** Whether the fixed words stand in the text, one after the other: quickly told, and seldom so. */
  #mayBe(text: string): boolean {
    const { texts } = this.written;
    const last = texts.length - 1;
    if (text.length < this.fixed || !text.startsWith(texts[0] ?? '')) return false;
    if (!text.endsWith(texts[last] ?? '')) return false;
    let from = texts[0]?.length ?? 0;
    for (let part = 1; part < last; part++) {
      const at = text.indexOf(texts[part] ?? '', from + 1);
      if (at < 0) return false;
      from = at + (texts[part]?.length ?? 0);
    }
    return true;
  }

  /** The words shown for a whole text; undefined where it is no such sentence. */
  shownFor(text: string, known: Known): string | undefined {
    if (!this.#mayBe(text)) return undefined;
    const filled = this.#fill(text, this.written.texts[0]?.length ?? 0, 0, known);
    if (!filled) return undefined;
    const said = new Map(this.written.gaps.map(({ name }, at) => [name, filled[at]]));
    const { texts, gaps } = this.shown;
    return texts.map((words, at) => words + (said.get(gaps[at]?.name ?? '') ?? '')).join('');
  }

  /** What stands in the gaps from one on, where the rest of the text can be read so. */
  #fill(text: string, from: number, gap: number, known: Known): string[] | undefined {
    const { texts, gaps } = this.written;
    const here = gaps[gap];
    if (!here) return from === text.length ? [] : undefined;
    const after = texts[gap + 1] ?? '';
    for (const end of this.#endsOf(text, from, gap)) {
      const words = shownInGap(here, text.slice(from, end), known);
      const rest = words && this.#fill(text, end + after.length, gap + 1, known);
      if (rest) return [words, ...rest];
    }
    return undefined;
  }

  /** Where a gap may end; that of a number after its unit rather than before it. */
  #endsOf(text: string, from: number, gap: number): number[] {
    const { texts, gaps } = this.written;
    const after = texts[gap + 1] ?? '';
    if (gap === gaps.length - 1) {
      const end = text.length - after.length;
      return end > from ? [end] : [];
    }
    const ends: number[] = [];
    for (let at = text.indexOf(after, from + 1); at >= 0; at = text.indexOf(after, at + 1)) {
      ends.push(at);
    }
    return gaps[gap]?.mark === '#' ? ends.reverse() : ends;
  }
}
