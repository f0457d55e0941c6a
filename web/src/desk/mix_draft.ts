/** A mix that is being designed for a zone, and the changes that it would be. */
import { type Change, pointerTo } from '../record/revision';
import { idFromName, withPoint } from './item_changes';

export type MixItem = Record<string, unknown>;

/** What is chosen on the page; texts as they were typed. */
export interface MixDraft {
  kind: string;
  placing: string;
  rock_voids: string;
  most_buckets: string;
  bucket: string;
  /** Materials left out of those on offer. */
  left: ReadonlySet<string>;
}

const text = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : '';

/** What the zone's mix says already; materials it does not name are left out. */
export function draftOf(mix: MixItem | undefined, materials: readonly string[]): MixDraft {
  const named = [
    ...((mix?.on_offer as string[] | undefined) ?? []),
    ...((mix?.parts as { material: string }[] | undefined) ?? []).map(({ material }) => material),
  ];
  return {
    kind: text(mix?.kind) || 'void-filled',
    placing: text(mix?.placing) || 'mixed before placing',
    rock_voids: text(mix?.rock_voids),
    most_buckets: text(mix?.most_buckets),
    bucket: text(mix?.bucket),
    left: new Set(named.length === 0 ? [] : materials.filter((id) => !named.includes(id))),
  };
}

/** The mix as the document would have it, with proportions where they are known. */
export function mixOf(
  draft: MixDraft,
  before: MixItem | undefined,
  name: string,
  materials: readonly string[],
  proportions: { rock_parts: string; parts: unknown[] } | undefined,
): MixItem {
  const { recipe: _recipe, soil: _soil, parts: _parts, rock_parts: _rock, ...rest } = before ?? {};
  const buckets = draft.most_buckets.trim();
  const stated = Object.entries({
    rock_voids: withPoint(draft.rock_voids.trim()),
    bucket: withPoint(draft.bucket.trim()),
    most_buckets: /^\d+$/.test(buckets) ? Number(buckets) : buckets,
  });
  const kept = Object.fromEntries(
    Object.entries(rest).filter(([key]) => !stated.some(([other]) => other === key)),
  );
  return {
    name,
    ...kept,
    kind: draft.kind,
    placing: draft.placing,
    ...Object.fromEntries(stated.filter(([, value]) => value !== '')),
    on_offer: materials.filter((id) => !draft.left.has(id)),
    ...(proportions ?? {}),
  };
}

/** The mix in its place, named by the zone. */
export function mixChanges(
  zone: string,
  named: string | undefined,
  taken: readonly string[],
  mix: MixItem,
): Change[] {
  const id = named ?? idFromName(text(mix.name), taken, 'mix');
  const change: Change[] = [{ set: pointerTo('mixes', id), to: mix }];
  return named === undefined
    ? [...change, { set: pointerTo('zones', zone, 'mix'), to: id }]
    : change;
}
