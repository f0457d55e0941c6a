/**
 * Sentences of the engine in the language of the screens. What the engine writes is the record and
 * stays; here is only looked up what is shown for it.
 */
import type { EnginePiece } from '../words/sentences';
import type { Known } from './gap';
import { partsOf, SentencePattern, wordsIn } from './sentence_pattern';

/** A sentence may end here, and another begin. */
const boundary = /[.!?]["»)]? (?=["(]?[A-Z\d])/g;

/** No sentence ends in these. */
const abbreviation = /(?:^|[ (])(?:[A-Z]|No|Eq|Eqs|Fig|St|approx|e\.g|i\.e|ed|vol|ch|sec|p|pp)\.$/;

/** So many texts are remembered. */
const most = 20_000;

/** What one pattern makes of a text, and how much of it the pattern fixes. */
export interface Reading {
  shown: string;
  fixed: number;
}

/** The sentences, or the words of one kind, to be looked up. */
class Index {
  readonly #whole = new Map<string, string>();
  /** Patterns by the word in them that fewest others have; those without a word under none. */
  readonly #byRarestWord = new Map<string, SentencePattern[]>();
  readonly #found = new Map<string, string | undefined>();

  constructor(table: Readonly<Record<string, string>>) {
    const patterns: SentencePattern[] = [];
    for (const [written, shown] of Object.entries(table)) {
      if (partsOf(written).gaps.length === 0) this.#whole.set(written, shown);
      else patterns.push(new SentencePattern(written, shown));
    }
    const having = new Map<string, number>();
    for (const word of patterns.flatMap((pattern) => pattern.words)) {
      having.set(word, (having.get(word) ?? 0) + 1);
    }
    for (const pattern of patterns) {
      const [rarest = ''] = [...pattern.words].sort(
        (one, other) => (having.get(one) ?? 0) - (having.get(other) ?? 0),
      );
      const others = this.#byRarestWord.get(rarest);
      if (others) others.push(pattern);
      else this.#byRarestWord.set(rarest, [pattern]);
    }
  }

  /** Patterns that may fit, the most specific first. */
  #candidates(text: string): SentencePattern[] {
    return ['', ...wordsIn(text)]
      .flatMap((word) => this.#byRarestWord.get(word) ?? [])
      .sort((one, other) => other.fixed - one.fixed);
  }

  shown(text: string, known: Known): string | undefined {
    if (this.#found.has(text)) return this.#found.get(text);
    let found = this.#whole.get(text);
    for (const pattern of found === undefined ? this.#candidates(text) : []) {
      found = pattern.shownFor(text, known);
      if (found !== undefined) break;
    }
    if (this.#found.size > most) this.#found.clear();
    this.#found.set(text, found);
    return found;
  }

  readings(text: string, known: Known): Reading[] {
    const whole = this.#whole.get(text);
    if (whole !== undefined) return [{ shown: whole, fixed: text.length }];
    return this.#candidates(text).flatMap((pattern) => {
      const shown = pattern.shownFor(text, known);
      return shown === undefined ? [] : [{ shown, fixed: pattern.fixed }];
    });
  }
}

export class SentenceTable {
  readonly #sentences: Index;
  readonly #words: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Words of a kind are put in order once they are asked for. */
  readonly #kinds = new Map<string, Index>();

  /** `kinds` are words that stand in gaps of their kind only. */
  constructor(
    sentences: Readonly<Record<string, string>>,
    kinds: Readonly<Record<string, Readonly<Record<string, string>>>> = {},
  ) {
    this.#sentences = new Index(sentences);
    this.#words = kinds;
  }

  #indexOf(kind: string): Index {
    const words = this.#words[kind];
    if (!words) return this.#sentences;
    const index = this.#kinds.get(kind) ?? new Index(words);
    this.#kinds.set(kind, index);
    return index;
  }

  /** One sentence, or words that stand by themselves; undefined where they are not known. */
  readonly known = (text: string, of = ''): string | undefined =>
    this.#indexOf(of).shown(text, this.known);

  /** All that can be made of a text, the most specific first: different ones are a fault. */
  readings(text: string, of = ''): Reading[] {
    return this.#indexOf(of).readings(text, this.known);
  }

  /**
   * A text sentence by sentence: each sentence of the engine stands by itself, so the one that is
   * known is shown though the next is not. Where it stands may tell that it is words of a kind.
   */
  pieces(text: string, of = ''): EnginePiece[] {
    const whole = of === '' ? undefined : this.known(text, of);
    if (whole !== undefined) return [{ text: whole, asWritten: false }];
    const ends = [...text.matchAll(boundary)].map(({ 0: mark, index }) => index + mark.length - 1);
    ends.push(text.length);
    const pieces: EnginePiece[] = [];
    let from = 0;
    while (from < text.length) {
      const after = ends.filter((end) => end > from);
      const end = after.find((to) => this.known(text.slice(from, to)) !== undefined);
      const to = end ?? after.find((at) => !abbreviation.test(text.slice(from, at))) ?? text.length;
      const written = text.slice(from, to);
      const shown = this.known(written);
      const before = pieces.at(-1);
      if (shown === undefined && before?.asWritten) before.text += ` ${written}`;
      else pieces.push({ text: shown ?? written, asWritten: shown === undefined });
      from = to + 1;
    }
    return pieces;
  }
}
