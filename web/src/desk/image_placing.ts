/**
 * Where an image lies under a plan: two points of the image and the same two on the plan say it. The image is turned,
 * enlarged and moved, never bent.
 */
import type { Point } from './map_view_box';

/** One point: in pixels of the image, and on the ground in metres east and north, as the plan has it. */
export interface ControlPoint {
  image: Point;
  ground: Point;
}

/** Where the picture of a plan lies on the ground, as the engine says it. */
export interface PlanFrame {
  /** Metres east of its left edge, north of its top edge. */
  left: number;
  top: number;
  metres_per_pixel: number;
}

export function onGround(frame: PlanFrame, { x, y }: Point): Point {
  return { x: frame.left + x * frame.metres_per_pixel, y: frame.top - y * frame.metres_per_pixel };
}

export function onPicture(frame: PlanFrame, { x, y }: Point): Point {
  return {
    x: (x - frame.left) / frame.metres_per_pixel,
    y: (frame.top - y) / frame.metres_per_pixel,
  };
}

/** The six numbers of an SVG matrix from pixels of the image to those of the picture. */
export type Matrix = [number, number, number, number, number, number];

/** Undefined where the two points of either are one. */
export function placed(
  [first, second]: readonly [ControlPoint, ControlPoint],
  frame: PlanFrame,
): Matrix | undefined {
  const from = first.image;
  const to = onPicture(frame, first.ground);
  const end = onPicture(frame, second.ground);
  const across = { x: second.image.x - from.x, y: second.image.y - from.y };
  const there = { x: end.x - to.x, y: end.y - to.y };
  const square = across.x * across.x + across.y * across.y;
  if (square < 1e-9 || there.x * there.x + there.y * there.y < 1e-9) return undefined;
  const a = (there.x * across.x + there.y * across.y) / square;
  const b = (there.y * across.x - there.x * across.y) / square;
  return [a, b, -b, a, to.x - a * from.x + b * from.y, to.y - b * from.x - a * from.y];
}

export function through([a, b, c, d, e, f]: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}
