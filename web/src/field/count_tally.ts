/** The taps of a count as a tally. Undoing is a tap of its own: nothing tapped is ever lost. */
import type { Tap } from '../record/record_database';

/** A size bin as the engine proposes it for a class; sizes are texts with their unit. */
export interface CountBin {
  larger_than?: string;
  not_larger_than: string;
  text: string;
}

/** What one tap says: a stone in a bin, a measured axis, or that the last stone is taken back. */
export type CountTap = { bin: number } | { axis: string } | { undo: true };

export type Stone = Exclude<CountTap, { undo: true }>;

/** The stones that stand, in the order they were taken. */
export function stonesIn(taps: readonly Pick<Tap, 'what'>[]): Stone[] {
  const stones: Stone[] = [];
  for (const { what } of taps) {
    const tap = what as CountTap;
    if ('undo' in tap) stones.pop();
    else stones.push(tap);
  }
  return stones;
}

/** The field `stones` of a stone count; undefined where none was taken. */
export function stonesField(
  bins: readonly CountBin[],
  stones: readonly Stone[],
): { bins: object[] } | { axes: string[] } | undefined {
  if (stones.length === 0) return undefined;
  const axes = stones.flatMap((stone) => ('axis' in stone ? [stone.axis] : []));
  if (axes.length > 0) return { axes };
  const counted = bins.map(
    (_, index) => stones.filter((stone) => 'bin' in stone && stone.bin === index).length,
  );
  return {
    bins: bins.map(({ larger_than, not_larger_than }, index) => ({
      ...(larger_than === undefined ? {} : { larger_than }),
      not_larger_than,
      stones: counted[index],
    })),
  };
}
