import { expect, it } from 'vitest';
import { draftOf, mixChanges, mixOf } from './mix_draft';

const materials = ['loam', 'pit-run', 'stock'];
const stands = {
  name: 'Fill',
  kind: 'soil-filled',
  rock_voids: '0.40',
  rock_parts: '65',
  parts: [{ material: 'loam', parts: '35' }],
  on_offer: ['pit-run'],
  class: 'fhwa-3',
};

it('begins with what the mix says, and with everything where it says nothing', () => {
  const draft = draftOf(stands, materials);
  expect(draft).toMatchObject({ kind: 'soil-filled', rock_voids: '0.40', most_buckets: '' });
  expect([...draft.left]).toEqual(['stock']);
  expect(draftOf(undefined, materials).left.size).toBe(0);
});

it('is asked about without proportions and keeps what the page does not ask for', () => {
  const draft = { ...draftOf(stands, materials), rock_voids: '0,42', most_buckets: '9' };
  const asked = mixOf(draft, stands, 'Fill', materials, undefined);
  expect(asked).toEqual({
    name: 'Fill',
    class: 'fhwa-3',
    kind: 'soil-filled',
    placing: 'mixed before placing',
    rock_voids: '0.42',
    most_buckets: 9,
    on_offer: ['loam', 'pit-run'],
  });
  const parts = [{ material: 'loam', parts: '4' }];
  expect(mixOf(draft, stands, 'Fill', materials, { rock_parts: '7', parts })).toMatchObject({
    rock_parts: '7',
    parts,
  });
});

it('is named by the zone where the zone named none', () => {
  const mix = { name: 'Fill of the bank' };
  expect(mixChanges('bank', 'fill', ['fill'], mix)).toEqual([{ set: '/mixes/fill', to: mix }]);
  expect(mixChanges('bank', undefined, ['fill'], mix)).toEqual([
    { set: '/mixes/fill-of-the-bank', to: mix },
    { set: '/zones/bank/mix', to: 'fill-of-the-bank' },
  ]);
});
