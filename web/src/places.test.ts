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
  { at: 'desk', show: 'board' },
  { at: 'desk', show: 'site' },
  { at: 'desk', show: 'start' },
  { at: 'desk', show: 'start', step: 2 },
  { at: 'desk', show: 'timeline' },
  { at: 'desk', show: 'timeline', of: '/zones/outer-bank' },
  { at: 'desk', show: 'part', part: 'zones' },
  { at: 'desk', show: 'part', part: 'zones', id: 'outer-bank' },
  { at: 'desk', show: 'new', part: 'zones' },
  { at: 'desk', show: 'blend' },
  { at: 'desk', show: 'study', part: 'zones', id: 'outer-bank', study: 'other-rock' },
  { at: 'desk', show: 'study', part: 'sources', id: 'granite-knob', study: 'submittals' },
];

it.each(places)('is found again under its address: %o', (place) => {
  expect(placeAt(addressOf(place))).toEqual(place);
});

it.each([
  ['', { at: 'findings' }],
  ['#/finding/some.id', { at: 'findings' }],
  ['#/%E0%A4%A', { at: 'findings' }],
  ['#/field/lot', { at: 'field' }],
  ['#/desk/new', { at: 'desk', show: 'board' }],
  ['#/desk/start/9', { at: 'desk', show: 'start' }],
  ['#/desk/sources/knob/mix', { at: 'desk', show: 'part', part: 'sources', id: 'knob' }],
  ['#/field/lot/x/paint', { at: 'lot', lot: 'x' }],
])('takes %s for what it can', (hash, place) => {
  expect(placeAt(hash)).toEqual(place);
});
