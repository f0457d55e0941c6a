// What may be taken down in the field: counts, quick looks, loads, walks.

export const when = '2026-11-30T09:00:00Z';
const who = 'R. Salas';
export const set = (pointer, to) => ({ set: pointer, to });

/** So many stones into so many sizes, most of them into those about the middle. */
function binsWith(bins, stones, leaning) {
  const middle = leaning * (bins.length - 1);
  const shares = bins.map((_, index) => 1 / (1 + (index - middle) ** 2));
  const all = shares.reduce((sum, share) => sum + share, 0);
  return bins.map(({ larger_than, not_larger_than }, index) => ({
    ...(larger_than === undefined ? {} : { larger_than }),
    not_larger_than,
    stones: Math.round((stones * shares[index]) / all),
  }));
}

/** Counts as they grow, of rock that is too fine, right and too coarse. */
export function countsOf(lot, bins) {
  return [0.2, 0.5, 0.8].flatMap((leaning) =>
    [4, 25, 100, 400].map((stones) => [
      set('/looks/tried', {
        name: 'Stone count',
        kind: 'stone count',
        lot,
        picking: 'grid',
        when,
        stones: { bins: binsWith(bins, stones, leaning) },
      }),
    ]),
  );
}

export function quickLooksOf(lot) {
  const about = { name: 'Quick look', kind: 'quick look', lot, when };
  return [
    { largest: '30 in', smallest: '3 in', most_common: '15 in', shape: 'blocky', fines: 'none' },
    { largest: '10 in', smallest: '1 in', most_common: '4 in', shape: 'mixed', fines: 'little' },
    { largest: '50 in', smallest: '10 in', shape: 'flat or long', fines: 'much' },
  ].map((seen) => [set('/looks/tried', { ...about, ...seen })]);
}

export function loadsOf(lot) {
  return [3, 12].map((number) =>
    Array.from({ length: number }, (_, index) =>
      set(`/loads/tried-${index}`, {
        lot,
        who,
        when: `2026-11-30T1${index % 10}:00:00Z`,
        mass: '18 ton',
        median_size: `${10 + index} in`,
      }),
    ),
  );
}

export function walksOf(zone, checks) {
  const results = ['pass', 'fail', 'not yet known'];
  const walk = (entries) =>
    set('/placing_walks/tried', { name: 'Walk', zone, who, when, checks: entries });
  const byResult = results.map((result) => [
    walk(
      Object.fromEntries(checks.map(({ id, takes }) => [id, takes === 'loads' ? {} : { result }])),
    ),
  ]);
  const measured = checks
    .filter(({ takes }) => takes === 'lengths')
    .flatMap(({ id, fewest_points: fewest }) =>
      ['0.05 ft', '3 ft', '0.4 ft'].flatMap((length) => [
        [walk({ [id]: { measured: Array(Math.max(fewest, 1)).fill(length) } })],
        [walk({ [id]: { measured: [length] } })],
      ]),
    );
  const surveyed = ['1 ft', '2.5 ft', '4 ft'].map((thickness) => [
    set('/layer_surveys/tried', {
      name: 'Survey',
      zone,
      who,
      when,
      thicknesses: Array(12).fill(thickness),
    }),
  ]);
  const problems = [
    {},
    { disposition: { kind: 'rework', who, when } },
    { disposition: { kind: 'use as is', approved_by: 'M. Okafor', who, when } },
    { disposition: { kind: 'measure further', who, when }, closed: { who, when } },
  ].map((more) => [
    set('/nonconformances/tried', { name: 'Voids are open', zone, opened: { who, when }, ...more }),
  ]);
  return [...byResult, ...measured, ...surveyed, ...problems];
}

/** Axes of stones: blocky ones, and many that are long. */
export function shapesOf(lot) {
  const stone = (longest) => ({ longest, intermediate: '12 in', shortest: '9 in' });
  const axes = [Array(50).fill(stone('15 in')), Array(50).fill(stone('40 in')), [stone('15 in')]];
  return axes.map((stones) => [
    set('/looks/tried', { name: 'Axes', kind: 'shape count', lot, who, when, stones }),
  ]);
}
