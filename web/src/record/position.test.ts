import { expect, it } from 'vitest';
import { joined } from './joined_records';
import { positionsIn, withoutPositions } from './position';
import { type Change, type Revision, siteIdOf } from './revision';

const position = { latitude: '39.7°', longitude: '-104.9°' };

function revision(changes: Change[], id = 'r1'): Revision {
  return { id, after: [], time: '2026-05-04T15:10:00Z', author: 'A', note: 'N', changes };
}

const look = (more: object = {}): Change => ({ set: '/looks/a', to: { name: 'A', ...more } });

it('leaves out what tells a place, and nothing else', () => {
  const opened = { who: 'A', position };
  const full = revision([
    look({ position }),
    { set: '/nonconformances/a', to: { name: 'A', opened } },
    { set: '/loads/a/position', to: position },
    { set: '/loads/a/position/latitude', to: '1°' },
    { remove: '/looks/b/position' },
    { set: '/zones/a', to: { position: 'left of the weir' } },
  ]);
  expect(withoutPositions(full).changes).toEqual([
    look(),
    { set: '/nonconformances/a', to: { name: 'A', opened: { who: 'A' } } },
    { set: '/zones/a', to: { position: 'left of the weir' } },
  ]);
  const plain = revision([look(), { remove: '/looks/b' }]);
  expect(withoutPositions(plain)).toBe(plain);
});

it('finds every position of a state', () => {
  const state = {
    looks: { a: { position }, b: {} },
    nonconformances: { p: { closed: { position } } },
  };
  expect(positionsIn(state)).toEqual(['/looks/a/position', '/nonconformances/p/closed/position']);
});

it('is the same site and the same revision with and without its positions', async () => {
  const full = revision([look({ position })]);
  const bare = withoutPositions(full);
  expect(await siteIdOf(full)).toBe(await siteIdOf(bare));
  const copy = (one: Revision) => ({ revisions: [one], files: [] });
  expect(joined(copy(full), copy(bare))).toEqual(copy(full));
  expect(joined(copy(bare), copy(full))).toEqual(copy(bare));
  const other = revision([look({ position, name: 'B' })]);
  expect(joined(copy(full), copy(other))).toEqual({ kind: 'revision', name: 'r1' });
});
