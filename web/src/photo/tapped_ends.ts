/** Ends of axes that are tapped one after the other; each can be dragged until the last is there. */
import { useState } from 'preact/hooks';
import type { Spot } from './photo_draft';

/** A tenth of a pixel is finer than anybody taps. */
const tenth = (value: number) => Math.round(value * 10) / 10;
export const inTenths = ([x, y]: Spot): Spot => [tenth(x), tenth(y)];

export interface TappedEnds {
  ends: Spot[];
  tap: (at: Spot) => void;
  move: (index: number, at: Spot) => void;
  back: () => void;
  clear: () => void;
}

/** `onAxes` is told both axes once four ends are tapped. */
export function useTappedEnds(
  onAxes: (axes: { long: [Spot, Spot]; short: [Spot, Spot] }) => void,
): TappedEnds {
  const [ends, setEnds] = useState<Spot[]>([]);
  return {
    ends,
    tap: (at) => {
      const next = [...ends, inTenths(at)];
      setEnds(next);
      const [a, b, c, d] = next;
      if (a && b && c && d) onAxes({ long: [a, b], short: [c, d] });
    },
    move: (index, at) => setEnds(ends.map((end, which) => (which === index ? inTenths(at) : end))),
    back: () => setEnds(ends.slice(0, -1)),
    clear: () => setEnds([]),
  };
}
