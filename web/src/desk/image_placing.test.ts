import { expect, it } from 'vitest';
import { type ControlPoint, onGround, onPicture, placed, through } from './image_placing';

const frame = { left: 1000, top: 5000, metres_per_pixel: 0.5 };

it('leads from the picture to the ground and back', () => {
  expect(onGround(frame, { x: 20, y: 10 })).toEqual({ x: 1010, y: 4995 });
  expect(onPicture(frame, { x: 1010, y: 4995 })).toEqual({ x: 20, y: 10 });
});

it('lays both points of the image where they are on the ground, turned and enlarged', () => {
  const points: [ControlPoint, ControlPoint] = [
    { image: { x: 100, y: 100 }, ground: { x: 1010, y: 4990 } },
    { image: { x: 300, y: 100 }, ground: { x: 1010, y: 4940 } },
  ];
  const matrix = placed(points, frame);
  if (!matrix) throw new Error('not placed');
  for (const { image, ground } of points) {
    const there = through(matrix, image);
    const wanted = onPicture(frame, ground);
    expect(there.x).toBeCloseTo(wanted.x);
    expect(there.y).toBeCloseTo(wanted.y);
  }
  // The image lies a quarter turned: what is below in it lies to the west.
  const below = through(matrix, { x: 100, y: 300 });
  expect(below.x).toBeLessThan(through(matrix, { x: 100, y: 100 }).x);
});

it('lays nothing where two points are one', () => {
  const one = { image: { x: 1, y: 1 }, ground: { x: 1010, y: 4990 } };
  expect(placed([one, { ...one, ground: { x: 1020, y: 4990 } }], frame)).toBeUndefined();
  expect(placed([one, { ...one, image: { x: 9, y: 9 } }], frame)).toBeUndefined();
});
