// What may be typed wrong in the forms of the screens.
import { set, when } from './field_looks.mjs';

const wrongNumbers = [
  '',
  'twelve',
  '12',
  '12 furlongs',
  '12 lb',
  '-3 in',
  '0 in',
  '1e9 m',
  '1,5 m',
  '5 %',
];

/** Each entry by itself, so that every one is told of. */
export function wrongEntries(state) {
  const [lot] = Object.keys(state.lots ?? {});
  const [zone] = Object.keys(state.zones ?? {});
  const [source] = Object.keys(state.sources ?? {});
  const signed = { who: 'R. Salas', when };
  const look = {
    name: 'Quick look',
    kind: 'quick look',
    lot,
    when,
    largest: '20 in',
    smallest: '3 in',
  };
  const count = { name: 'Count', kind: 'stone count', lot, picking: 'grid', when };
  const bin = { larger_than: '3 in', not_larger_than: '6 in', stones: 5 };
  const weighed = { name: 'Weighed', kind: 'weighed sample', lot, when };
  const group = { larger_than: '3 in', not_larger_than: '6 in', mass: '400 lb', stones: 5 };
  const load = { lot, ticket: '1', ...signed, mass: '18 ton' };
  const walk = { name: 'Walk', zone, ...signed };
  const problem = { name: 'Voids are open', zone, opened: signed };
  const at = (pointer) => (value) => [set(pointer, value)];
  return [
    ...wrongNumbers.map((largest) => ({ ...look, largest })).map(at('/looks/wrong')),
    ...[
      { ...look, smallest: '30 in' },
      { ...look, shape: 'round' },
      { ...look, fines: 3 },
      { ...look, lot: 'none' },
      { ...look, name: '' },
      { ...look, name: 7 },
      { ...look, when: 'yesterday' },
      { ...look, kind: 'glance' },
      { ...look, colour: 'grey' },
      { ...look, photos: ['a'] },
      { ...look, position: { latitude: 100, longitude: 0 } },
      'a look',
      [],
      { ...count },
      { ...count, picking: 'heap', stones: { axes: ['3 in'] } },
      { ...count, stones: { axes: [] } },
      { ...count, stones: { axes: ['3 in', '0 in', '-1 in', '900 ft'] } },
      { ...count, stones: { axes: ['3 in'], bins: [bin] } },
      { ...count, stones: { bins: [{ ...bin, stones: -1 }] } },
      { ...count, stones: { bins: [{ ...bin, stones: 1.5 }] } },
      { ...count, stones: { bins: [{ ...bin, stones: 0 }] } },
      { ...count, stones: { bins: [bin, bin] } },
      { ...count, stones: { bins: [{ ...bin, larger_than: '9 in' }] } },
      { ...count, stones: { file: 'nowhere.csv' } },
      { ...weighed, groups: [] },
      { ...weighed, groups: [{ ...group, mass: '0 lb' }] },
      { ...weighed, groups: [{ ...group, mass: '-5 lb' }] },
      { ...weighed, groups: [{ ...group, mass: '5 ft' }] },
      { ...weighed, groups: [{ ...group, mass: '400000 ton' }] },
      { ...weighed, groups: [{ ...group, stones: 9, mass: '1 lb' }] },
    ].map(at('/looks/wrong')),
    ...[
      { ...load, mass: '18' },
      { ...load, mass: '-18 ton' },
      { ...load, mass: '9000 ton' },
      { ...load, median_size: '12' },
      { ...load, median_size: '-1 in' },
      { ...load, lot: 'none' },
      { ...load, who: undefined },
      { ...load, when: '2026-13-45T00:00:00Z' },
    ].map(at('/loads/wrong')),
    ...[
      walk,
      { ...walk, checks: {} },
      { ...walk, checks: { subgrade: {} } },
      { ...walk, checks: { subgrade: { result: 'fine' } } },
      { ...walk, checks: { subgrade: { measured: ['3'] } } },
      { ...walk, checks: { subgrade: { loads: { rock: -1 } } } },
      { ...walk, checks: { unheard: { result: 'pass' } } },
      { ...walk, zone: 'none', checks: { subgrade: { result: 'pass' } } },
    ].map(at('/placing_walks/wrong')),
    ...[
      { ...problem, lot },
      { ...problem, zone: undefined },
      { ...problem, disposition: { kind: 'use as is', ...signed } },
      { ...problem, disposition: { kind: 'forget', ...signed } },
      { ...problem, closed: signed },
      { ...problem, check: 'unheard' },
      {
        ...problem,
        opened: { who: 'R. Salas', when: '2020-01-01T00:00:00Z' },
        disposition: { kind: 'rework', who: 'R. Salas', when: '2019-01-01T00:00:00Z' },
      },
    ].map(at('/nonconformances/wrong')),
    ...[
      { name: 'Survey', zone, ...signed, thicknesses: [] },
      { name: 'Survey', zone, ...signed, thicknesses: ['2'] },
      { name: 'Survey', zone, ...signed, thicknesses: ['-1 ft', '900 ft'] },
    ].map(at('/layer_surveys/wrong')),
    ...[
      { name: 'New', class: 'no-such-class', source },
      { name: 'New', class: 'fhwa-3', source: 'none' },
      { name: 'New', class: 'fhwa-3', source, zones: ['none'] },
      { class: 'fhwa-3', source },
    ].map(at('/lots/wrong')),
    ...['0.5', '9', 'heavy', '-2', '165 lb'].map((specific_gravity) => [
      set('/sources/wrong', { name: 'Pit', specific_gravity }),
    ]),
    ...[
      { name: 'Flood' },
      { name: 'Flood', purpose: 'some', discharge: '5 ft' },
      { name: 'Flood', purpose: 'design', discharge: '-5 ft³/s', return_period_years: '0' },
    ].map(at('/flow_cases/wrong')),
    ...[
      [set('no-pointer', 1)],
      [set('/nothing/here', 1)],
      [{ remove: '/lots/none' }],
      [{ remove: `/lots/${lot}` }],
      [{ remove: `/zones/${zone}` }],
      [set(`/zones/${zone}/layer_thickness`, '2')],
      [set(`/zones/${zone}/layer_thickness`, '-2 ft')],
      [set(`/zones/${zone}/slope`, 'steep')],
      [set(`/zones/${zone}/class`, 'none')],
      [set(`/zones/${zone}/layer_thickness`, '2,5 ft')],
    ],
  ];
}
