import { expect, it } from 'vitest';
import {
  freshId,
  headsOf,
  pointerTo,
  type Revision,
  siteIdOf,
  utcNow,
  withParents,
} from './revision';

it('writes times as the record takes them', () => {
  expect(utcNow(new Date('2026-05-04T15:10:00.734Z'))).toBe('2026-05-04T15:10:00Z');
});

it('makes ids that no two share', () => {
  const now = new Date();
  const ids = new Set(Array.from({ length: 500 }, () => freshId('look', now)));
  expect(ids.size).toBe(500);
});

it('finds the ends of a history', () => {
  const one = (id: string, after: string[]) => ({
    id,
    after,
    time: '',
    author: '',
    note: '',
    changes: [],
  });
  expect(headsOf([one('a', []), one('b', ['a']), one('c', ['a'])])).toEqual(['b', 'c']);
});

it('says what stood unsaid: a revision that names none was made upon the one before', () => {
  const written = [{ id: 'a' }, { id: 'b' }, { id: 'c', after: ['a'] }] as Revision[];
  expect(withParents(written).map(({ after }) => after)).toEqual([undefined, ['a'], ['a']]);
});

it('escapes what a pointer would read otherwise', () => {
  expect(pointerTo('looks', 'a/b~c')).toBe('/looks/a~1b~0c');
});

it('knows a site again by its first revision', async () => {
  const first = { id: 'r1', after: [], time: 't', author: 'A', note: 'n', changes: [] };
  expect(await siteIdOf(first)).toBe(await siteIdOf({ ...first }));
  expect(await siteIdOf(first)).not.toBe(await siteIdOf({ ...first, author: 'B' }));
});
