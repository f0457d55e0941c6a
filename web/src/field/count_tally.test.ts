import { expect, it } from 'vitest';
import { type CountTap, stonesField, stonesIn } from './count_tally';

const bins = [
  { not_larger_than: '4 in', text: 'up to 4 in' },
  { larger_than: '4 in', not_larger_than: '8 in', text: '4 to 8 in' },
];
const taps = (...list: CountTap[]) => list.map((what) => ({ what }));

it('counts each bin', () => {
  const stones = stonesIn(taps({ bin: 1 }, { bin: 0 }, { bin: 1 }));
  expect(stonesField(bins, stones)).toEqual({
    bins: [
      { not_larger_than: '4 in', stones: 1 },
      { larger_than: '4 in', not_larger_than: '8 in', stones: 2 },
    ],
  });
});

it('takes back the last stone that stands, and no more than there are', () => {
  const list = taps(
    { bin: 0 },
    { bin: 1 },
    { undo: true },
    { undo: true },
    { undo: true },
    { bin: 1 },
  );
  expect(stonesIn(list)).toEqual([{ bin: 1 }]);
});

it('lists axes that were measured', () => {
  expect(stonesField([], stonesIn(taps({ axis: '7 in' }, { axis: '9.5 in' })))).toEqual({
    axes: ['7 in', '9.5 in'],
  });
});

it('has no field before the first stone', () => {
  expect(stonesField(bins, [])).toBeUndefined();
});
