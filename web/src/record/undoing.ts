/** What takes a revision back. Nothing is erased: undoing is a revision of its own. */
import { type Change, stepsOf } from './revision';

/** What stands at a pointer of a state; undefined where nothing does. */
export function standingAt(state: unknown, pointer: string): unknown {
  let at = state;
  for (const key of stepsOf(pointer)) {
    if (at === null || typeof at !== 'object') return undefined;
    at = Object.hasOwn(at, key) ? (at as Record<string, unknown>)[key] : undefined;
  }
  return at;
}

/** The changes that lead from after `changes` back to `before`, the last first. */
export function inverseOf(changes: readonly Change[], before: unknown): Change[] {
  const seen = new Set<string>();
  const inverse: Change[] = [];
  for (const one of changes) {
    const pointer = 'set' in one ? one.set : one.remove;
    if (seen.has(pointer)) continue;
    seen.add(pointer);
    const old = standingAt(before, pointer);
    if (old !== undefined) inverse.unshift({ set: pointer, to: old });
    else if ('set' in one) inverse.unshift({ remove: pointer });
  }
  return inverse;
}
