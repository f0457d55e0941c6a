import { expect, it } from 'vitest';
import type { CountSheet } from './count_sheet';
import { groupsFrom } from './weigh_form';

const sheet = {
  bins: [
    { not_larger_than: '4 in', text: 'up to 4 in' },
    { larger_than: '4 in', not_larger_than: '6 in', text: '4 to 6 in' },
    { larger_than: '6 in', not_larger_than: '8 in', text: '6 to 8 in' },
  ],
} as CountSheet;

it('keeps the groups that were filled in, and leaves half of one for the engine to name', () => {
  const answers = { 'mass.0': '25,5', 'stones.0': '6', 'mass.2': '1345' };
  expect(groupsFrom(sheet, answers, 'lb')).toEqual([
    { not_larger_than: '4 in', mass: '25.5 lb', stones: 6 },
    { larger_than: '6 in', not_larger_than: '8 in', mass: '1345 lb' },
  ]);
  expect(groupsFrom(sheet, {}, 'lb')).toEqual([]);
});
