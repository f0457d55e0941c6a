import { expect, it } from 'vitest';
import type { Change } from './revision';
import { inverseOf, standingAt } from './undoing';

const before = { name: 'Site', lots: { pile: { name: 'Pile', class: 'fhwa-3' } }, 'a/b': 1 };

it('finds what stands at a pointer', () => {
  expect(standingAt(before, '/lots/pile/class')).toBe('fhwa-3');
  expect(standingAt(before, '/a~1b')).toBe(1);
  expect(standingAt(before, '/lots/none/class')).toBeUndefined();
  expect(standingAt(before, '/name/length')).toBeUndefined();
  expect(standingAt(before, '/toString')).toBeUndefined();
});

it('puts back what was replaced and removes what was new, the last first', () => {
  const changes: Change[] = [
    { set: '/lots/new', to: { name: 'New' } },
    { set: '/lots/new/name', to: 'Newer' },
    { set: '/name', to: 'Other' },
    { remove: '/lots/pile' },
  ];
  expect(inverseOf(changes, before)).toEqual([
    { set: '/lots/pile', to: before.lots.pile },
    { set: '/name', to: 'Site' },
    { remove: '/lots/new/name' },
    { remove: '/lots/new' },
  ]);
});

it('sets a place that was set twice back once', () => {
  const changes: Change[] = [
    { set: '/name', to: 'A' },
    { set: '/name', to: 'B' },
  ];
  expect(inverseOf(changes, before)).toEqual([{ set: '/name', to: 'Site' }]);
});
