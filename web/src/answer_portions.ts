/**
 * A long answer in portions, none of which holds the page up for long when it is taken in: the
 * answer without the rows of its long lists first, then the rows.
 */
import { isFinding, isPacked, packed, unpacked } from './packed_finding';

/** Rows of the list, or the record, at a place in the answer. */
export interface Portion {
  at: readonly string[];
  rows: readonly unknown[] | readonly (readonly [string, unknown])[];
}

/** Lists and records with more rows are sent in portions of so many. */
export const rowsInPortion = 200;

/** Deeper in an answer no list is long. */
const deepest = 4;

function isRecord(value: unknown): value is Record<string, unknown> {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}

function taken<Row>(rows: readonly Row[], at: readonly string[], portions: Portion[]): void {
  for (let from = 0; from < rows.length; from += rowsInPortion) {
    const some = rows.slice(from, from + rowsInPortion);
    portions.push({ at, rows: some.map((row) => (isFinding(row) ? packed(row) : row)) });
  }
}

/** The value without long lists; their rows go to `portions`. */
function framed(value: unknown, at: readonly string[], portions: Portion[]): unknown {
  if (Array.isArray(value)) {
    if (value.length <= rowsInPortion) return value;
    taken(value, at, portions);
    return [];
  }
  if (!isRecord(value) || at.length >= deepest) return value;
  const entries = Object.entries(value);
  if (entries.length <= rowsInPortion) {
    return Object.fromEntries(
      entries.map(([key, inner]) => [key, framed(inner, [...at, key], portions)]),
    );
  }
  taken(entries, at, portions);
  return {};
}

export function inPortions(answer: unknown): { frame: unknown; portions: Portion[] } {
  const portions: Portion[] = [];
  return { frame: framed(answer, [], portions), portions };
}

/** Puts the rows of a portion where they belong. Portions come in the order they were made. */
export function putPortion(frame: unknown, { at, rows }: Portion): void {
  let place = frame;
  for (const key of at) place = (place as Record<string, unknown>)[key];
  if (Array.isArray(place)) {
    place.push(...rows.map((row) => (isPacked(row) ? unpacked(row) : row)));
    return;
  }
  for (const [key, value] of rows as [string, unknown][]) {
    // Not assigned: one of the keys means something else to the language.
    const row = { value, enumerable: true, writable: true, configurable: true };
    Object.defineProperty(place, key, row);
  }
}
