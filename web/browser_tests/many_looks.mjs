// A site as it stands after years of deliveries: the example's design, and beside it lots with a
// thousand loads and ten thousand looks, each put into the record by a revision of its own.

const sizes = [6, 9, 12, 15, 18, 21];

/** Numbers between 0 and 1 that are the same each time. */
function chances(seed) {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

/** One moment after the other, each two minutes on. */
function clock() {
  let now = Date.UTC(2027, 2, 1, 12, 0, 0);
  return () => {
    now += 120_000;
    return new Date(now).toISOString().replace(/\.\d+Z$/, 'Z');
  };
}

function stoneCount(chance) {
  const shares = [0.1, 0.2, 0.27, 0.24, 0.13, 0.06];
  return sizes.map((size, index) => ({
    ...(index === 0 ? {} : { larger_than: `${sizes[index - 1]} in` }),
    not_larger_than: `${size} in`,
    stones: Math.round(100 * shares[index] * (0.8 + 0.4 * chance())),
  }));
}

function quickLook(chance) {
  const inches = (from, to) => `${(from + (to - from) * chance()).toFixed(1)} in`;
  return {
    largest: inches(16, 22),
    smallest: inches(3, 6),
    most_common: inches(9, 14),
    shape: 'blocky',
    fines: 'little',
  };
}

/**
 * The revisions that follow upon those of `document`. Each lot has `loads` loads with a count on
 * each, a count for every two of them beside that, and quick looks up to `looks`.
 */
export function manyLooks(document, { lots = 20, loads = 50, looks = 500 } = {}) {
  const chance = chances(7);
  const next = clock();
  const revisions = [];
  let last = document.revisions.at(-1).id;
  const append = (note, changes) => {
    const id = `many-${revisions.length + 1}`;
    revisions.push({ id, after: [last], time: next(), author: 'L. Brandt', note, changes });
    last = id;
  };
  for (let lot = 1; lot <= lots; lot += 1) {
    const name = `delivery-${String(lot).padStart(3, '0')}`;
    append('A lot', [
      {
        set: `/lots/${name}`,
        to: {
          name: `Delivery ${lot}`,
          source: 'granite-knob',
          class: 'fhwa-3',
          zones: ['outer-bank'],
        },
      },
    ]);
    const look = (number, to) =>
      append('A look', [{ set: `/looks/${name}-look-${number}`, to: { lot: name, ...to } }]);
    for (let number = 1; number <= looks; number += 1) {
      const load = number <= loads ? `${name}-load-${number}` : undefined;
      const seen = { who: 'L. Brandt', when: next() };
      if (load !== undefined) {
        const to = { lot: name, ...seen, ticket: `${lot * 1000 + number}`, mass: '21.6 ton' };
        append('Load', [{ set: `/loads/${load}`, to: { ...to, median_size: '11.5 in' } }]);
      }
      if (number <= 1.5 * loads) {
        look(number, {
          name: `Count ${number}`,
          kind: 'stone count',
          picking: 'grid',
          ...seen,
          ...(load === undefined ? {} : { load }),
          stones: { bins: stoneCount(chance) },
        });
      } else {
        look(number, { name: `Look ${number}`, kind: 'quick look', ...seen, ...quickLook(chance) });
      }
    }
  }
  return { ...document, revisions: [...document.revisions, ...revisions] };
}
