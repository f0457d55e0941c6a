import { expect, it } from 'vitest';
import { enlarged, middleOf, moved, wholeOf } from './map_view_box';

const whole = { width: 1000, height: 500 };
const all = wholeOf(whole);

it('enlarges about a place that stays where it is', () => {
  const box = enlarged(all, 2, { x: 250, y: 125 }, whole);
  expect(box).toEqual({ x: 125, y: 62.5, width: 500, height: 250 });
  // A quarter of the way across, before and after.
  expect((250 - box.x) / box.width).toBeCloseTo(0.25);
});

it('never shows less than all of it shrunk, or more than forty times enlarged', () => {
  expect(enlarged(all, 0.1, { x: 0, y: 0 }, whole)).toEqual(all);
  expect(enlarged(all, 1e6, { x: 500, y: 250 }, whole).width).toBe(25);
});

it('cannot be moved away from the drawing', () => {
  const far = moved(enlarged(all, 4, { x: 500, y: 250 }, whole), 100, -100, whole);
  expect(middleOf(far)).toEqual({ x: 1000, y: 0 });
});
