import { expect, it } from 'vitest';
import { joined, type SiteCopy } from './joined_records';
import type { Revision } from './revision';

const revision = (id: string, after: string[] = [], note = ''): Revision => ({
  id,
  after,
  time: 't',
  author: 'A',
  note,
  changes: [{ set: '/name', to: { b: 1, a: 2 } }],
});
const copy = (revisions: Revision[], files: Record<string, string> = {}): SiteCopy => ({
  revisions,
  files: Object.entries(files).map(([name, text]) => ({ name, text })),
});
const ids = (result: ReturnType<typeof joined>) =>
  'revisions' in result ? result.revisions.map(({ id }) => id) : result;

const first = revision('r1');

it('loses nothing of an older copy that is opened again', () => {
  const kept = copy([first, revision('mine', ['r1'])]);
  expect(joined(kept, copy([first]))).toEqual(kept);
});

it('takes what a newer copy has more', () => {
  expect(ids(joined(copy([first]), copy([first, revision('r2', ['r1'])])))).toEqual(['r1', 'r2']);
});

it('keeps what two people did, each behind what it stands upon', () => {
  const mine = copy([first, revision('mine', ['r1'])], { 'a.csv': '1' });
  const theirs = copy([first, revision('theirs', ['r1']), revision('later', ['theirs'])], {
    'a.csv': '1',
    'b.csv': '2',
  });
  const both = joined(mine, theirs);
  expect(ids(both)).toEqual(['r1', 'mine', 'theirs', 'later']);
  expect('files' in both && both.files.map(({ name }) => name)).toEqual(['a.csv', 'b.csv']);
  expect(joined(both as SiteCopy, theirs)).toEqual(both);
});

it('does not mind in which order fields are written', () => {
  const turned = { ...first, changes: [{ to: { a: 2, b: 1 }, set: '/name' }] };
  expect(ids(joined(copy([first]), copy([turned])))).toEqual(['r1']);
});

it('names what stands in both and differs', () => {
  expect(joined(copy([first]), copy([revision('r1', [], 'other')]))).toEqual({
    kind: 'revision',
    name: 'r1',
  });
  expect(joined(copy([first], { 'a.csv': '1' }), copy([first], { 'a.csv': '2' }))).toEqual({
    kind: 'file',
    name: 'a.csv',
  });
});
