/** What a form leaves behind: the smallest changes that lead from one value to another. */
import type { Change } from '../record/revision';
import { pointerTo } from '../record/revision';

type Item = Record<string, unknown>;

function isItem(value: unknown): value is Item {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}

function isFile(value: Item): boolean {
  return typeof value.file === 'string';
}

export function sameValue(one: unknown, other: unknown): boolean {
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((inner, at) => sameValue(inner, other[at]));
  }
  if (isItem(one) && isItem(other)) {
    const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
    return [...keys].every((key) => sameValue(one[key], other[key]));
  }
  return one === other;
}

/** The value without fields left empty; an empty text is no answer. */
export function withoutEmpty(value: unknown): unknown {
  if (Array.isArray(value)) {
    return value.map((inner) => withoutEmpty(inner)).filter((inner) => inner !== '');
  }
  if (typeof value === 'string') return value.trim();
  if (!isItem(value)) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]) => {
      const kept = withoutEmpty(inner);
      return kept === undefined || kept === '' ? [] : [[key, kept]];
    }),
  );
}

/**
 * The changes from `before` to `after` at a pointer. Fields of items change one by one, so that two
 * people can work upon different fields of one item; a list changes as a whole, and so does what
 * stands in a file, which is one with its table.
 */
export function changesBetween(pointer: string, before: unknown, after: unknown): Change[] {
  if (sameValue(before, after)) return [];
  if (after === undefined) return [{ remove: pointer }];
  const whole = !isItem(before) || !isItem(after) || isFile(before) || isFile(after);
  if (whole) return [{ set: pointer, to: after }];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) =>
    changesBetween(`${pointer}${pointerTo(key)}`, before[key], after[key]),
  );
}

/** A name as an id of the document: "Outer bank, left" → "outer-bank-left". Another's is not taken. */
export function idFromName(name: string, taken: readonly string[], otherwise: string): string {
  const plain = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 56)
    .replaceAll(/^-|-$/g, '');
  const base = plain === '' ? otherwise : plain;
  if (!taken.includes(base)) return base;
  for (let number = 2; ; number += 1) {
    const next = `${base}-${number}`;
    if (!taken.includes(next)) return next;
  }
}

/**
 * A number with a decimal comma with a point in its place. Where the comma may part thousands,
 * nothing is guessed and the engine asks.
 */
export function withPoint(text: string): string {
  return text.replace(/^(\s*[-−+]?\d+),(\d+)(?![\d,.])/, (whole, before: string, after: string) =>
    after.length === 3 && !/^[-−+\s]*0+$/.test(before) ? whole : `${before}.${after}`,
  );
}
