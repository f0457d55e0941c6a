// @vitest-environment node
import { expect, it } from 'vitest';
import { changesBetween, idFromName, withoutEmpty, withPoint } from './item_changes';

it('changes the fields that differ, and lists as a whole', () => {
  const before = {
    name: 'Bank',
    toe: { kind: 'trench', depth: '4 ft' },
    kinds: [{ kind: 'bare' }],
  };
  const after = { name: 'Bank', toe: { kind: 'trench', depth: '5 ft' }, kinds: [], soil: 'clay' };
  expect(changesBetween('/zones/bank', before, after)).toEqual([
    { set: '/zones/bank/toe/depth', to: '5 ft' },
    { set: '/zones/bank/kinds', to: [] },
    { set: '/zones/bank/soil', to: 'clay' },
  ]);
});

it('takes away what is left out, and sets what was not there whole', () => {
  expect(changesBetween('/zones/bank', { toe: { kind: 'x' } }, {})).toEqual([
    { remove: '/zones/bank/toe' },
  ]);
  expect(changesBetween('/zones/bank', undefined, { name: 'B' })).toEqual([
    { set: '/zones/bank', to: { name: 'B' } },
  ]);
  expect(changesBetween('/a', { b: ['1'] }, { b: ['1'] })).toEqual([]);
});

it('puts typed points in the place of a file as a whole, and back', () => {
  const [file, points] = [{ survey: { file: 'a.csv' } }, { survey: { points: [] } }];
  expect(changesBetween('/s', file, points)).toEqual([{ set: '/s/survey', to: { points: [] } }]);
  expect(changesBetween('/s', points, file)).toEqual([{ set: '/s/survey', to: { file: 'a.csv' } }]);
});

it('escapes what means something in a pointer', () => {
  expect(changesBetween('/x', {}, { 'a/b': '1' })).toEqual([{ set: '/x/a~1b', to: '1' }]);
});

it('leaves out what was not answered, and keeps empty lists', () => {
  expect(withoutEmpty({ name: ' A ', toe: { depth: '' }, zones: [], note: undefined })).toEqual({
    name: 'A',
    toe: {},
    zones: [],
  });
});

it.each([
  ['Outer bank, left', [], 'outer-bank-left'],
  ['Outer bank', ['outer-bank', 'outer-bank-2'], 'outer-bank-3'],
  ['Río Grande – orilla', [], 'rio-grande-orilla'],
  ['堤防', [], 'zone'],
])('makes an id of %s', (name, taken, id) => {
  expect(idFromName(name, taken, 'zone')).toBe(id);
});

it.each([
  ['24,5 in', '24.5 in'],
  ['0,125 m', '0.125 m'],
  ['1,200 ft', '1,200 ft'],
  ['1,200.5 ft', '1,200.5 ft'],
  ['-3,25', '-3.25'],
  ['3V:1H', '3V:1H'],
  ['riprap, dumped', 'riprap, dumped'],
])('reads %s as %s', (typed, read) => {
  expect(withPoint(typed)).toBe(read);
});
