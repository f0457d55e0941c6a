import { expect, it } from 'vitest';
import { addressOf, type Place, placeAt } from './places';

const places: Place[] = [
  { at: 'findings' },
  { at: 'field' },
  { at: 'new-rock' },
  { at: 'lot', lot: 'first-deliveries' },
  { at: 'lot', lot: 'a/b %', task: 'count' },
  { at: 'zone', zone: 'outer-bank' },
  { at: 'zone', zone: 'outer-bank', check: 'toe' },
  { at: 'zone-problem', zone: 'outer-bank' },
  { at: 'zone-problem', zone: 'outer-bank', check: 'toe' },
  { at: 'problem', problem: 'shallow-toe' },
];

it.each(places)('is found again under its address: %o', (place) => {
  expect(placeAt(addressOf(place))).toEqual(place);
});

it.each([
  ['', { at: 'findings' }],
  ['#/finding/some.id', { at: 'findings' }],
  ['#/%E0%A4%A', { at: 'findings' }],
  ['#/field/lot', { at: 'field' }],
  ['#/field/lot/x/paint', { at: 'lot', lot: 'x' }],
])('takes %s for what it can', (hash, place) => {
  expect(placeAt(hash)).toEqual(place);
});
