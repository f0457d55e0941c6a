import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, expect, it } from 'vitest';
import { DraftEnded, type KeptSite, RecordDatabase } from './record_database';
import type { Revision } from './revision';

let record: RecordDatabase;
let opened = 0;

const site: KeptSite = { id: 's', name: 'Site', origin: 'device', opened: 'now', heads: [] };
const first: Revision = {
  id: 'r1',
  after: [],
  time: '2026-05-04T15:10:00Z',
  author: 'A',
  note: '',
  changes: [{ set: '/name', to: 'Site' }],
};
const next = (id: string) => ({
  id,
  time: '2026-05-05T15:10:00Z',
  author: 'A',
  note: 'more',
  changes: [],
});

beforeEach(async () => {
  opened += 1;
  record = await RecordDatabase.open(`test-${opened}`);
  await record.takeIn(site, { revisions: [first], files: [{ name: 'a.csv', text: '1,2' }] });
});

it('keeps a site as it was', async () => {
  expect(await record.revisions('s')).toEqual([first]);
  expect(await record.files('s')).toEqual([{ name: 'a.csv', text: '1,2' }]);
  expect((await record.site('s'))?.heads).toEqual(['r1']);
});

it('keeps a long record whole and in order, and tells what came after a place', async () => {
  const long = Array.from({ length: 2500 }, (_, number) => ({ ...first, id: `long-${number}` }));
  await record.takeIn({ ...site, id: 'long' }, { revisions: long, files: [] });
  expect(await record.revisions('long')).toEqual(long);
  expect(await record.revisions('long', 1998)).toEqual(long.slice(1998));
  expect(await record.revisions('long', 2500)).toEqual([]);
});

it('appends upon what stands', async () => {
  await record.append('s', next('r2'));
  const third = await record.append('s', next('r3'));
  expect(third.after).toEqual(['r2']);
  expect((await record.revisions('s')).map(({ id }) => id)).toEqual(['r1', 'r2', 'r3']);
});

it('loses none of two tabs that append at once', async () => {
  const other = await RecordDatabase.open(`test-${opened}`);
  await Promise.all(
    [record, other].flatMap((tab, index) =>
      [0, 1, 2].map((number) => tab.append('s', next(`tab-${index}-${number}`))),
    ),
  );
  const revisions = await record.revisions('s');
  expect(revisions).toHaveLength(7);
  for (const [place, revision] of revisions.entries()) {
    expect(revision.after).toEqual(place === 0 ? [] : [revisions[place - 1]?.id]);
  }
});

it('brings forks together with the next revision', async () => {
  const fork = { ...first, id: 'r2', after: ['r1'] };
  await record.takeIn(site, { revisions: [first, fork, { ...fork, id: 'r3' }], files: [] });
  expect((await record.append('s', next('r4'))).after).toEqual(['r2', 'r3']);
});

it('takes nothing away when an older copy is taken in', async () => {
  await record.append('s', next('r2'));
  const fork = { ...first, id: 'theirs', after: ['r1'] };
  await record.takeIn(site, { revisions: [first, fork], files: [{ name: 'b.csv', text: '3' }] });
  expect((await record.revisions('s')).map(({ id }) => id)).toEqual(['r1', 'r2', 'theirs']);
  expect((await record.files('s')).map(({ name }) => name)).toEqual(['a.csv', 'b.csv']);
  expect((await record.site('s'))?.heads).toEqual(['r2', 'theirs']);
});

it('changes nothing when a copy reads otherwise', async () => {
  const other = { revisions: [first], files: [{ name: 'a.csv', text: '9' }] };
  expect(await record.takeIn(site, other)).toEqual({ kind: 'file', name: 'a.csv' });
  expect(await record.files('s')).toEqual([{ name: 'a.csv', text: '1,2' }]);
});

it('refuses to append to a site it does not keep, and changes nothing', async () => {
  await expect(record.append('other', next('r2'))).rejects.toThrow('other');
  expect(await record.revisions('other')).toEqual([]);
});

it('keeps the taps of a draft in their order, and ends it with its revision', async () => {
  await record.keepDraft({ id: 'd', site: 's', kind: 'stone count', begun: 'now', about: {} });
  await Promise.all([1, 2, 3].map((bin) => record.keepTap('d', { bin })));
  const taps = await record.taps('d');
  expect(taps.map(({ number }) => number)).toEqual([0, 1, 2]);
  expect(await record.drafts('s')).toHaveLength(1);
  await record.append('s', next('r2'), { done: 'd' });
  expect(await record.taps('d')).toEqual([]);
  expect(await record.drafts('s')).toEqual([]);
});

it('takes no tap for a draft that has ended', async () => {
  await record.keepDraft({ id: 'd', site: 's', kind: 'stone count', begun: 'now', about: {} });
  await record.append('s', next('r2'), { done: 'd' });
  await expect(record.keepTap('d', { bin: 0 })).rejects.toThrow(DraftEnded);
  expect(await record.taps('d')).toEqual([]);
});

it('throws a draft away with its taps, and no other', async () => {
  for (const id of ['d', 'd2']) {
    await record.keepDraft({ id, site: 's', kind: 'stone count', begun: 'now', about: {} });
    await record.keepTap(id, { bin: 0 });
  }
  await record.dropDraft('d');
  expect(await record.taps('d')).toEqual([]);
  expect(await record.taps('d2')).toHaveLength(1);
});

it('keeps the files that come with a revision, or neither', async () => {
  await record.append('s', next('r2'), { files: [{ name: 'b.csv', text: '3' }] });
  expect(await record.files('s')).toEqual([
    { name: 'a.csv', text: '1,2' },
    { name: 'b.csv', text: '3' },
  ]);
  const again = record.append('s', next('r3'), { files: [{ name: 'a.csv', text: 'other' }] });
  await expect(again).rejects.toThrow();
  expect(await record.revisions('s')).toHaveLength(2);
});

it('keeps a photo once, under the hash of its bytes', async () => {
  const photo = {
    hash: 'f'.repeat(64),
    name: 'pile.jpg',
    type: 'image/jpeg',
    bytes: new Uint8Array([1, 2, 3]).buffer,
    small: new Uint8Array([4]).buffer,
  };
  await record.keepPhoto(photo);
  await record.keepPhoto({ ...photo, name: 'again.jpg' });
  expect(await record.photo(photo.hash)).toEqual(photo);
  expect(await record.photo('0'.repeat(64))).toBeUndefined();
});

it('opens a record of before photos were kept, and loses nothing', async () => {
  const older = await openDB(`older-${opened}`, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('sites', { keyPath: 'id' });
      fresh.createObjectStore('revisions', { keyPath: ['site', 'place'] });
      fresh.createObjectStore('files', { keyPath: ['site', 'name'] });
      fresh.createObjectStore('drafts', { keyPath: 'id' }).createIndex('site', 'site');
      fresh.createObjectStore('taps', { keyPath: ['draft', 'number'] });
    },
  });
  await older.put('sites', site);
  older.close();
  const newer = await RecordDatabase.open(`older-${opened}`);
  expect(await newer.sites()).toEqual([site]);
  expect(await newer.photo('0'.repeat(64))).toBeUndefined();
});

it('drops the photos that nothing names, and no other', async () => {
  const bytes = new ArrayBuffer(1);
  const photo = (digit: string) => ({
    hash: digit.repeat(64),
    name: 'a.jpg',
    type: 'image/jpeg',
    bytes,
    small: bytes,
  });
  for (const digit of ['1', '2', '3', '4', '5', '6']) await record.keepPhoto(photo(digit));
  const named = (digit: string) => ({ photos: [digit.repeat(64)] });
  await record.append('s', { ...next('r2'), changes: [{ set: '/looks/a', to: named('1') }] });
  await record.append('s', { ...next('r3'), changes: [{ remove: '/looks/a' }] });
  const draft = { id: 'd', site: 's', kind: 'stone count', begun: 'now' } as const;
  await record.keepDraft({ ...draft, about: named('2') });
  await record.keepTap('d', named('3'));
  expect(await record.dropUnnamedPhotos(`typed: ${'4'.repeat(64)}`)).toBe(2);
  for (const digit of ['1', '2', '3', '4']) {
    expect(await record.photo(digit.repeat(64))).toBeDefined();
  }
  expect(await record.photo('5'.repeat(64))).toBeUndefined();
  expect(await record.dropUnnamedPhotos(`typed: ${'4'.repeat(64)}`)).toBe(0);
});
