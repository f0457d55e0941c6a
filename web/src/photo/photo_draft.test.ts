import { describe, expect, it } from 'vitest';
import { gridOf, measured, type PhotoDraft, type PhotoTap, type TakenPhoto } from './photo_draft';
import { lookChanges } from './photo_look';
import type { Outline } from './vision_messages';

const box = (left: number): Outline => [
  [left, 0],
  [left + 10, 0],
  [left + 10, 10],
];

const photo = (file: string): TakenPhoto => ({
  file,
  width: 800,
  height: 600,
  focal_length: 26,
  found: {
    outlines: [box(0), box(20), box(40)],
    balls: [{ middle: [300, 200], radius: 40 }],
    smallest_drawn: 8,
    working_pixel: 1,
    rock_share: 0.9,
    cautions: [],
  },
});

const about: PhotoDraft = { lot: 'a', look: 'photo-1', by: 'outlines', lies: 'heap', place: 'top' };
const seen = { when: '2026-05-19T16:05:00Z' };
const stonesOf = (taps: PhotoTap[]) =>
  measured(taps).photos[0]?.outlines.filter((outline) => outline !== undefined).length;

interface Look {
  pictures: Record<string, unknown>[];
  photos: string[];
  largest?: unknown;
}

const lookOf = (taps: PhotoTap[], draft = about) =>
  (lookChanges(draft, measured(taps), seen)[0] as { to: Look } | undefined)?.to;

describe('what the taps on photos make', () => {
  it('keeps the outlines that stand, and takes steps back one by one', () => {
    const taps: PhotoTap[] = [{ add: photo('a') }];
    expect(stonesOf(taps)).toBe(3);
    taps.push({ of: 'a', gone: [0, 1], come: [box(5)] });
    expect(stonesOf(taps)).toBe(2);
    taps.push({ of: 'a', gone: [3], come: [] });
    expect(stonesOf(taps)).toBe(1);
    expect(measured(taps).photos[0]?.steps).toBe(2);
    taps.push({ of: 'a', undo: true });
    expect(stonesOf(taps)).toBe(2);
    taps.push({ of: 'a', undo: true }, { of: 'a', undo: true });
    expect(stonesOf(taps)).toBe(3);
    expect(measured(taps).photos[0]?.steps).toBe(0);
  });

  it('leaves no trace of a photo that was left out, and measures none twice', () => {
    const taps: PhotoTap[] = [{ add: photo('a') }, { add: photo('b') }, { add: photo('a') }];
    expect(measured(taps).photos).toHaveLength(2);
    taps.push({ leave: 'a' }, { of: 'a', gone: [0], come: [] });
    expect(lookOf(taps)?.photos).toEqual(['b']);
    expect(measured([{ leave: 'x' }]).photos).toEqual([]);
  });

  it('puts into the look what the engine takes, and only marks whose length is stated', () => {
    const scale = {
      view: 'oblique' as const,
      balls: [
        { middle: [1, 2] as [number, number], radius: 30, diameter: '12 in' },
        { middle: [9, 9] as [number, number], radius: 30, diameter: '' },
      ],
      staffs: [],
      scale_error: '5 %',
    };
    const look = lookOf([{ add: photo('a') }, { of: 'a', scale }, { largest: '26 in' }]);
    expect(look).toMatchObject({
      kind: 'photo',
      lot: 'a',
      lies: 'heap',
      where: 'top',
      largest: { tape: '26 in' },
    });
    expect(look?.pictures[0]).toEqual({
      file: 'a',
      width: 800,
      height: 600,
      view: 'oblique',
      focal_length: '26 mm',
      balls: [{ middle: [1, 2], radius: 30, diameter: '12 in' }],
      smallest_drawn: 8,
      outlines: [box(0), box(20), box(40)],
    });
  });

  it('begins with the balls that were found, which count once their size is stated', () => {
    const taps: PhotoTap[] = [{ add: photo('a') }];
    const [first] = measured(taps).photos;
    expect(first?.scale.balls).toEqual([{ middle: [300, 200], radius: 40, diameter: '' }]);
    expect(lookOf(taps)?.pictures[0]).not.toHaveProperty('balls');
  });

  it('takes boards in once their edge is stated, and knows none of an earlier version', () => {
    const board = {
      number: 2,
      marker_numbers: [6, 7, 8, 9, 10, 11],
      markers: [{ number: 7, corners: box(50) }],
    };
    const taken = photo('a');
    const add = { ...taken, found: { ...taken.found!, balls: [], boards: [board] } };
    const [first] = measured([{ add }]).photos;
    expect(first?.scale.boards).toEqual([{ ...board, edge: '' }]);
    expect(lookOf([{ add }])?.pictures[0]).not.toHaveProperty('boards');
    const scale = { ...first!.scale, boards: [{ ...board, edge: '65 mm' }], scale_error: '5 %' };
    expect(lookOf([{ add }, { of: 'a', scale }])?.pictures[0]).toMatchObject({
      boards: [{ edge: '65 mm', markers: board.markers }],
      scale_error: '5 %',
    });
    const { boards: _, ...earlier } = scale;
    const [older] = measured([{ add }, { of: 'a', scale: earlier }]).photos;
    expect(older?.scale.boards).toEqual([]);
  });

  it('puts the largest stone into the look while its photo is there', () => {
    const ends: [[number, number], [number, number]] = [
      [10, 10],
      [90, 40],
    ];
    const taps: PhotoTap[] = [
      { add: photo('a') },
      { add: photo('b') },
      { largestEnds: { of: 'b', ends } },
    ];
    expect(lookOf(taps)?.largest).toEqual({ picture: 2, ends });
    expect(lookOf([...taps, { largest: '26 in' }])?.largest).toEqual({
      tape: '26 in',
      picture: 2,
      ends,
    });
    expect(lookOf([...taps, { leave: 'a' }])?.largest).toEqual({ picture: 1, ends });
    expect(lookOf([...taps, { leave: 'b' }])?.largest).toBeUndefined();
    expect(lookOf([...taps, { largestEnds: null }])?.largest).toBeUndefined();
  });

  it('keeps what was said of outlines that are still there', () => {
    const axes: {
      long: [[number, number], [number, number]];
      short: [[number, number], [number, number]];
    } = {
      long: [
        [20, 0],
        [30, 10],
      ],
      short: [
        [24, 6],
        [28, 2],
      ],
    };
    const taps: PhotoTap[] = [
      { add: photo('a') },
      {
        check: [
          { of: 'a', at: [7, 3] },
          { of: 'a', at: [27, 3] },
          { of: 'a', at: [47, 3] },
        ],
      },
      { checked: 0, outline: 0, finding: 'as outlined' },
      { checked: 1, outline: 1, finding: axes },
      { checked: 2, outline: 2, finding: 'not rock' },
    ];
    const look = (more: PhotoTap[]) =>
      lookOf([...taps, ...more]) as { check?: object[] } | undefined;
    expect(look([])?.check).toEqual([
      { picture: 1, at: [7, 3], found: 'as outlined' },
      { picture: 1, at: [27, 3], ...axes },
      { picture: 1, at: [47, 3], found: 'not rock' },
    ]);
    expect(look([{ uncheck: true }])?.check).toHaveLength(2);
    // An outline that was mended is to be looked at again.
    expect(look([{ of: 'a', gone: [1], come: [box(22)] }])?.check).toHaveLength(2);
    expect(look([{ leave: 'a' }, { add: photo('b') }])?.check).toBeUndefined();
    expect(look([{ check: [] }])?.check).toBeUndefined();
  });

  it('makes no look of photos without stones', () => {
    expect(lookOf([])).toBeUndefined();
    const taps: PhotoTap[] = [{ add: photo('a') }, { of: 'a', gone: [0, 1, 2], come: [] }];
    expect(lookOf(taps)).toBeUndefined();
  });

  it('holds the stones under the nodes of a grid, apart from those that are no rock', () => {
    const { found: _, ...plain } = photo('a');
    const ends: [[number, number], [number, number]] = [
      [1, 1],
      [5, 5],
    ];
    const taps: PhotoTap[] = [
      { add: plain },
      { of: 'a', node: 0, stone: { long: ends, short: ends } },
      { of: 'a', node: 1, stone: 'mostly hidden' },
      { of: 'a', node: 2, stone: 'no rock' },
    ];
    const [at0, at1] = gridOf(plain);
    expect(lookOf(taps, { ...about, by: 'taps' })?.pictures[0]?.nodes).toEqual([
      { at: at0, long: ends, short: ends },
      { at: at1, skip: 'mostly hidden' },
    ]);
  });
});

describe('the grid over a photo', () => {
  it('lies evenly within it, longer side the more', () => {
    for (const size of [
      { width: 4000, height: 3000 },
      { width: 3000, height: 4000 },
    ]) {
      const grid = gridOf(size);
      expect(new Set(grid.map(String)).size).toBe(35);
      for (const [x, y] of grid) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(size.width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(size.height);
      }
      const columns = new Set(grid.map(([x]) => x)).size;
      expect(columns).toBe(size.width > size.height ? 7 : 5);
    }
  });
});
