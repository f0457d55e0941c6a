import { beforeEach, describe, expect, it } from 'vitest';
import type { Spot } from './photo_draft';
import { PhotoGestures } from './photo_gestures';

let heard: unknown[];
let draws: boolean;
let gestures: PhotoGestures;

beforeEach(() => {
  heard = [];
  draws = false;
  gestures = new PhotoGestures({
    handleAt: ([x]: Spot) => (x > 900 ? 3 : undefined),
    draws: () => draws,
    tap: (at) => heard.push(['tap', at]),
    handle: (index, by, done) => heard.push(['handle', index, by, done]),
    stroke: (path, done) => heard.push(['stroke', path.length, done]),
    giveUp: () => heard.push(['give up']),
    move: (by) => heard.push(['move', by]),
    zoom: (factor) => heard.push(['zoom', factor]),
  });
});

describe('fingers on a photo', () => {
  it('tap where the hand is not quite still', () => {
    gestures.down(1, [10, 10]);
    gestures.move(1, [13, 12]);
    gestures.up(1, [13, 12]);
    expect(heard).toEqual([['tap', [13, 12]]]);
  });

  it('move the photo once they go far enough', () => {
    gestures.down(1, [10, 10]);
    gestures.move(1, [30, 10]);
    gestures.move(1, [35, 12]);
    gestures.up(1, [35, 12]);
    expect(heard).toEqual([
      ['move', [20, 0]],
      ['move', [5, 2]],
    ]);
  });

  it('draw with a tool that draws; a stroke that becomes a zoom is given up', () => {
    draws = true;
    gestures.down(1, [10, 10]);
    gestures.move(1, [40, 10]);
    gestures.down(2, [100, 10]);
    gestures.move(2, [160, 10]);
    gestures.up(1, [40, 10]);
    gestures.up(2, [160, 10]);
    expect(heard).toEqual([['stroke', 2, false], ['give up'], ['zoom', 2]]);
    heard = [];
    gestures.down(1, [10, 10]);
    gestures.move(1, [40, 10]);
    gestures.up(1, [50, 10]);
    expect(heard).toEqual([
      ['stroke', 2, false],
      ['stroke', 3, true],
    ]);
    heard = [];
    gestures.down(1, [10, 10]);
    gestures.up(1, [11, 10]);
    expect(heard).toEqual([['give up']]);
  });

  it('drag a handle by what they went, and leave it where it was when they are taken away', () => {
    gestures.down(1, [910, 10]);
    gestures.move(1, [930, 20]);
    gestures.up(1, [940, 20]);
    expect(heard).toEqual([
      ['handle', 3, [20, 10], false],
      ['handle', 3, [30, 10], true],
    ]);
    heard = [];
    gestures.down(1, [910, 10]);
    gestures.lose(1);
    expect(heard).toEqual([['handle', 3, [0, 0], true]]);
    gestures.down(1, [10, 10]);
    gestures.up(1, [10, 10]);
    expect(heard.at(-1)).toEqual(['tap', [10, 10]]);
  });
});
