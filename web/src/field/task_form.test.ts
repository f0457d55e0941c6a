import { expect, it } from 'vitest';
import { pointsIn } from './points_input';
import { quantityText } from './quantity_input';
import { answered } from './task_form';

it('takes a decimal comma and says nothing for nothing', () => {
  expect(quantityText(' 12,5 ', 'in')).toBe('12.5 in');
  expect(quantityText('−0,06', 'ft')).toBe('-0.06 ft');
  expect(quantityText('', 'in')).toBe('');
});

it('leaves out what was left empty', () => {
  expect(answered({ ticket: ' 4411 ', note: ' ' }, ['ticket', 'note', 'mass'])).toEqual({
    ticket: '4411',
  });
});

it('reads the points of an answer back', () => {
  expect(pointsIn('')).toEqual([]);
  expect(pointsIn('0.04 ft; -0.06 ft')).toEqual(['0.04 ft', '-0.06 ft']);
});
