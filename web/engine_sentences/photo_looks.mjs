// Photos that may have been measured on: stones in rows, outlined or tapped.
import { set, when } from './field_looks.mjs';

const size = { width: 4000, height: 3000 };

/** Sizes that spread, the same each time. */
function sizeOf(stone, median) {
  return median * Math.exp(0.32 * Math.sin(stone * 12.9898) * 1.4);
}

function outlineRound([x, y], diameter) {
  return Array.from({ length: 12 }, (_, corner) => {
    const turn = (2 * Math.PI * corner) / 12;
    return [x + (diameter / 2) * Math.cos(turn), y + (diameter / 2) * Math.sin(turn)];
  });
}

function placesOf(rows, columns) {
  return Array.from({ length: rows * columns }, (_, stone) => [
    ((stone % columns) + 0.5) * (size.width / columns),
    (Math.floor(stone / columns) + 0.5) * (size.height / rows),
  ]);
}

const staff = {
  staffs: [{ from: [100, 1500], to: [900, 1500], length: '4 m' }],
  scale_error: '4 %',
};
const ball = { balls: [{ middle: [2000, 1500], radius: 40, diameter: '400 mm' }] };

function outlined(median, scale, view = 'straight on', seed = 0) {
  const outlines = placesOf(15, 20).map((place, stone) =>
    outlineRound(place, Math.min(185, sizeOf(stone + seed, median))),
  );
  return { ...size, view, ...scale, outlines };
}

function tapped(median, scale, seed) {
  const nodes = placesOf(9, 12).map(([x, y], stone) => {
    const half = sizeOf(stone + seed, median) / 2;
    const long = [
      [x - half * 1.2, y],
      [x + half * 1.2, y],
    ];
    const short = [
      [x, y - half],
      [x, y + half],
    ];
    return stone % 4 === 0 ? { at: [x, y], skip: 'mostly hidden' } : { at: [x, y], long, short };
  });
  return { ...size, view: 'straight on', ...scale, nodes };
}

function checkOf(found) {
  return placesOf(5, 6).map((at) => ({ picture: 1, at, found }));
}

/** Looks by photos: enough, too few, oblique, checked, with what tells the largest stone. */
export function photoLooksOf(lot) {
  const two = (median, scale, view) => [
    outlined(median, scale, view),
    outlined(median, scale, view, 1000),
  ];
  const ten = Array.from({ length: 10 }, (_, photo) => tapped(64, staff, photo * 200));
  return [
    { pictures: two(55, staff) },
    { pictures: two(22, staff), largest: { tape: '40 in' } },
    { pictures: two(120, staff), largest: { tape: '2 in' } },
    { pictures: [outlined(55, ball, 'oblique')] },
    { pictures: two(55, { ...staff, ...ball }), check: checkOf('as outlined') },
    { pictures: two(55, staff), check: checkOf('not rock').slice(0, 8) },
    { pictures: ten },
    { pictures: [tapped(30, staff, 0)], largest: { tape: '20 in' } },
    { pictures: [outlined(55, {})] },
  ].map((measured) => [
    set('/looks/tried', { name: 'Photos', kind: 'photo', lot, lies: 'heap', when, ...measured }),
  ]);
}
