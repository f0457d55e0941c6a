import { expect, it } from 'vitest';
import { otherSide } from './conflicts';
import type { Conflict, ConflictSide } from './site_state';

const signed = { revision: 'r', author: 'A', time: '2026-05-04T15:10:00Z' };

function crossing(other: ConflictSide): Conflict {
  return {
    pointer: '/lots/pile/name',
    stands: { ...signed, remove: '/lots/pile' },
    passed_over: other,
  };
}

it('takes the other side where there is something to change', () => {
  const edit = { ...signed, set: '/lots/pile/name', to: 'Heap' };
  expect(otherSide(crossing(edit), { lots: { pile: {} } })).toEqual({
    set: '/lots/pile/name',
    to: 'Heap',
  });
  expect(otherSide(crossing(edit), { lots: {} })).toBeUndefined();
  const whole = { ...signed, set: '/lots/pile', to: { name: 'Heap' } };
  expect(otherSide(crossing(whole), {})).toEqual({ set: '/lots/pile', to: { name: 'Heap' } });
  const gone = { ...signed, remove: '/lots/pile' };
  expect(otherSide(crossing(gone), { lots: { pile: {} } })).toEqual({ remove: '/lots/pile' });
});
