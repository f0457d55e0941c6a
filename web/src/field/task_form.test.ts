import { expect, it } from 'vitest';
import { answered, quantityText } from './task_form';

it('takes a decimal comma and says nothing for nothing', () => {
  expect(quantityText(' 12,5 ', 'in')).toBe('12.5 in');
  expect(quantityText('', 'in')).toBe('');
});

it('leaves out what was left empty', () => {
  expect(answered({ ticket: ' 4411 ', note: ' ' }, ['ticket', 'note', 'mass'])).toEqual({
    ticket: '4411',
  });
});
