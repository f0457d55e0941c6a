/**
 * Where things were taken down: the field `position` of looks, loads, walks and problems. A copy of
 * a record may leave it out; it is the same record still.
 */
import type { Change, Revision } from './revision';

/** WGS 84 in decimal degrees, as the document holds it. */
export interface Position {
  latitude: string;
  longitude: string;
  /** Within so much of it. */
  accuracy?: string;
  /** When the device found it; RFC 3339 in UTC. */
  when?: string;
}

function isPosition(value: unknown): boolean {
  return value !== null && typeof value === 'object' && 'latitude' in value;
}

/** The value without the positions anywhere in it; the same value where it has none. */
function without(value: unknown): unknown {
  if (Array.isArray(value)) {
    const items = value.map(without);
    return items.some((item, index) => item !== value[index]) ? items : value;
  }
  if (value === null || typeof value !== 'object') return value;
  const entries = Object.entries(value);
  const kept = entries
    .filter(([key, inner]) => key !== 'position' || !isPosition(inner))
    .map(([key, inner]) => [key, without(inner)] as const);
  const changed =
    kept.length < entries.length || kept.some(([key, inner]) => inner !== Reflect.get(value, key));
  return changed ? Object.fromEntries(kept) : value;
}

/** Whether a change is of a position alone: put there, made otherwise, taken away. */
function isOfPosition(change: Change): boolean {
  const pointer = 'set' in change ? change.set : change.remove;
  return /\/position(\/|$)/.test(pointer);
}

/** A revision as if no device had told where it was; the same one where none did. */
export function withoutPositions(revision: Revision): Revision {
  const changes = revision.changes
    .filter((change) => !isOfPosition(change))
    .map((change) => {
      if (!('set' in change)) return change;
      const to = without(change.to);
      return to === change.to ? change : { ...change, to };
    });
  const same =
    changes.length === revision.changes.length &&
    changes.every((change, index) => change === revision.changes[index]);
  return same ? revision : { ...revision, changes };
}

/** The pointers of all positions in a state: "/looks/north-face/position". */
export function positionsIn(state: unknown, above = ''): string[] {
  if (state === null || typeof state !== 'object') return [];
  return Object.entries(state).flatMap(([key, inner]) => {
    const pointer = `${above}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`;
    return key === 'position' && isPosition(inner) ? [pointer] : positionsIn(inner, pointer);
  });
}
