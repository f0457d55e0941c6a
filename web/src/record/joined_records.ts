/**
 * Two copies of one site made into one that holds everything of both. Revisions are appended and
 * never rewritten, so what one copy has more than the other is put behind what they share.
 */
import type { NamedText } from '../findings';
import { withoutPositions } from './position';
import type { Revision } from './revision';

export interface SiteCopy {
  revisions: Revision[];
  files: NamedText[];
}

/** Something that stands in both copies under one name and is not the same. */
export interface Clash {
  kind: 'revision' | 'file';
  name: string;
}

function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(sorted(one)) === JSON.stringify(sorted(other));
}

/** The value with the fields of its objects in one order: how they are written means nothing. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  );
}

/** Those of `more` that `kept` lacks, and the first that it has otherwise. */
function added<Item>(
  kept: readonly Item[],
  more: readonly Item[],
  nameOf: (item: Item) => string,
  isSame: (one: Item, other: Item) => boolean = same,
): { items: Item[]; clash?: string } {
  const known = new Map(kept.map((item) => [nameOf(item), item]));
  const items: Item[] = [];
  for (const item of more) {
    const name = nameOf(item);
    const there = known.get(name);
    if (there === undefined) items.push(item);
    else if (!isSame(there, item)) return { items: [], clash: name };
  }
  return { items };
}

/** A copy that leaves out where things were taken down is a copy still. */
function sameRevision(one: Revision, other: Revision): boolean {
  return same(withoutPositions(one), withoutPositions(other));
}

/** Everything of both copies, or what stands in the way. */
export function joined(kept: SiteCopy, more: SiteCopy): SiteCopy | Clash {
  const revisions = added(kept.revisions, more.revisions, ({ id }) => id, sameRevision);
  if (revisions.clash !== undefined) return { kind: 'revision', name: revisions.clash };
  const files = added(kept.files, more.files, ({ name }) => name);
  if (files.clash !== undefined) return { kind: 'file', name: files.clash };
  return {
    revisions: [...kept.revisions, ...revisions.items],
    files: [...kept.files, ...files.items],
  };
}
