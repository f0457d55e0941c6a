import { expect, it } from 'vitest';
import { findingsNaming, findingsOf, findingWithId } from './finding_index';
import type { Finding } from './findings';

const finding = (id: string, about: Finding['about'] = {}) => ({ id, about }) as Finding;
const findings = [
  finding('gradation.pile', { lot: 'pile' }),
  finding('gradation.pile.count', { lot: 'pile', look: 'count', zone: '' }),
  finding('compare.pile.load.load-7', { lot: 'pile' }),
  finding('supply.other', { lot: 'other' }),
];
const ids = (some: readonly Finding[]) => some.map(({ id }) => id);

it('finds what is about an item in the order of the engine', () => {
  expect(ids(findingsOf(findings, 'lot', 'pile'))).toEqual(ids(findings.slice(0, 3)));
  expect(ids(findingsOf(findings, 'look', 'count'))).toEqual(['gradation.pile.count']);
  expect(findingsOf(findings, 'zone', '')).toEqual([]);
  expect(findingsOf(findings, 'look', 'pile')).toEqual([]);
});

it('finds what names an item by its id, once', () => {
  expect(ids(findingsNaming(findings, 'load-7'))).toEqual(['compare.pile.load.load-7']);
  expect(findingsNaming([finding('a.a')], 'a')).toHaveLength(1);
  expect(findingWithId(findings, 'supply.other')).toBe(findings[3]);
  expect(findingWithId(findings, 'supply')).toBeUndefined();
});
