/** What is drawn upon a photo: light lines with a dark rim, to be seen on any rock. */
import type { Board, LargestEnds, NodeStone, PhotoScale, Spot } from './photo_draft';
import type { Outline } from './vision_messages';

export type Paint = (context: CanvasRenderingContext2D, pixel: number) => void;

const rim = '#15181a';
const light = '#fdfcfa';
const chosen = '#ffd479';
const chosenWash = 'rgb(255 212 121 / 40%)';
const done = '#9fd3f5';

const paths = new WeakMap<Outline, Path2D>();

/** The path of an outline, made once. */
export function pathOf(outline: Outline): Path2D {
  const known = paths.get(outline);
  if (known) return known;
  const path = new Path2D();
  outline.forEach(([x, y], index) => (index === 0 ? path.moveTo(x, y) : path.lineTo(x, y)));
  path.closePath();
  paths.set(outline, path);
  return path;
}

let measure: CanvasRenderingContext2D | undefined;

/** Whether a place lies within an outline. */
export function isWithin(outline: Outline, [x, y]: Spot): boolean {
  measure ??= document.createElement('canvas').getContext('2d') ?? undefined;
  return measure?.isPointInPath(pathOf(outline), x, y) ?? false;
}

/** Outlines by number; those that went are undefined. */
export type Outlines = readonly (Outline | undefined)[];

/** The number of the outline round a place; of two the one that came last. */
export function stoneAt(outlines: Outlines, at: Spot): number | undefined {
  const number = outlines.findLastIndex((outline) => outline && isWithin(outline, at));
  return number < 0 ? undefined : number;
}

function rimmed(
  context: CanvasRenderingContext2D,
  path: Path2D,
  colour: string,
  pixel: number,
  wide = 1.5,
): void {
  context.lineWidth = (wide + 2) * pixel;
  context.strokeStyle = rim;
  context.stroke(path);
  context.lineWidth = wide * pixel;
  context.strokeStyle = colour;
  context.stroke(path);
}

export function paintOutlines(
  context: CanvasRenderingContext2D,
  pixel: number,
  outlines: Outlines,
  selected: ReadonlySet<number>,
): void {
  const all = new Path2D();
  const marked = new Path2D();
  outlines.forEach((outline, number) => {
    if (outline) (selected.has(number) ? marked : all).addPath(pathOf(outline));
  });
  rimmed(context, all, light, pixel);
  context.fillStyle = chosenWash;
  context.fill(marked);
  rimmed(context, marked, chosen, pixel, 2.5);
}

function line(from: Spot, to: Spot): Path2D {
  const path = new Path2D();
  path.moveTo(...from);
  path.lineTo(...to);
  return path;
}

function circle([x, y]: Spot, radius: number): Path2D {
  const path = new Path2D();
  path.arc(x, y, radius, 0, 2 * Math.PI);
  return path;
}

function paintText(
  context: CanvasRenderingContext2D,
  pixel: number,
  text: string,
  [x, y]: Spot,
): void {
  context.font = `600 ${16 * pixel}px system-ui, sans-serif`;
  context.lineWidth = 4 * pixel;
  context.strokeStyle = rim;
  context.fillStyle = light;
  context.strokeText(text, x, y);
  context.fillText(text, x, y);
}

export function paintHandle(context: CanvasRenderingContext2D, pixel: number, at: Spot): void {
  const knob = circle(at, 8 * pixel);
  context.fillStyle = 'rgb(255 212 121 / 35%)';
  context.fill(knob);
  rimmed(context, knob, chosen, pixel, 2);
  const dot = circle(at, 1.5 * pixel);
  context.fillStyle = chosen;
  context.fill(dot);
}

export function paintScale(
  context: CanvasRenderingContext2D,
  pixel: number,
  { balls, staffs, boards }: Pick<PhotoScale, 'balls' | 'staffs' | 'boards'>,
  nameOf: (board: Board) => string,
): void {
  balls.forEach(({ middle, radius }, index) => {
    rimmed(context, circle(middle, radius), chosen, pixel, 2.5);
    paintText(context, pixel, String(index + 1), [middle[0] + 10 * pixel, middle[1] - 10 * pixel]);
  });
  staffs.forEach(({ from, to }, index) => {
    rimmed(context, line(from, to), chosen, pixel, 2.5);
    paintText(context, pixel, String(index + 1), [
      (from[0] + to[0]) / 2 + 10 * pixel,
      (from[1] + to[1]) / 2 - 10 * pixel,
    ]);
  });
  for (const board of boards) paintBoard(context, pixel, board, nameOf(board));
}

/** A board by the rims of its markers, with its name over them. */
function paintBoard(
  context: CanvasRenderingContext2D,
  pixel: number,
  { markers }: Board,
  name: string,
): void {
  const rims = new Path2D();
  for (const { corners } of markers) rims.addPath(pathOf(corners));
  rimmed(context, rims, chosen, pixel, 2.5);
  const corners = markers.flatMap((marker) => marker.corners);
  const left = Math.min(...corners.map(([x]) => x));
  const top = Math.min(...corners.map(([, y]) => y));
  paintText(context, pixel, name, [left, top - 8 * pixel]);
}

/** The nodes of the grid: those that are done by their axes, the present one by a ring. */
export function paintNodes(
  context: CanvasRenderingContext2D,
  pixel: number,
  grid: readonly Spot[],
  stones: ReadonlyMap<number, NodeStone>,
  present: number | undefined,
): void {
  grid.forEach((at, node) => {
    const stone = stones.get(node);
    if (typeof stone === 'object') {
      rimmed(context, line(...stone.long), done, pixel, 2);
      rimmed(context, line(...stone.short), done, pixel, 2);
    } else if (stone !== undefined) {
      const [x, y] = at;
      const arm = 6 * pixel;
      rimmed(context, line([x - arm, y - arm], [x + arm, y + arm]), done, pixel, 2);
    } else {
      const colour = node === present ? chosen : light;
      rimmed(context, circle(at, (node === present ? 16 : 5) * pixel), colour, pixel, 2);
      rimmed(context, circle(at, pixel), colour, pixel, 1);
    }
  });
}

/** The ends tapped so far of the axes of a stone. */
export function paintEnds(
  context: CanvasRenderingContext2D,
  pixel: number,
  ends: readonly Spot[],
): void {
  const [a, b, c, d] = ends;
  if (a && b) rimmed(context, line(a, b), chosen, pixel, 2);
  if (c && d) rimmed(context, line(c, d), chosen, pixel, 2);
  for (const end of ends) paintHandle(context, pixel, end);
}

/** The largest stone by its two ends. */
export function paintLargest(
  context: CanvasRenderingContext2D,
  pixel: number,
  ends: LargestEnds['ends'],
): void {
  rimmed(context, line(...ends), chosen, pixel, 2.5);
}

/** A node of a check: a cross with a ring round it, over the outline that is looked at. */
export function paintLooked(
  context: CanvasRenderingContext2D,
  pixel: number,
  outline: Outline | undefined,
  at: Spot,
): void {
  if (outline) rimmed(context, pathOf(outline), chosen, pixel, 2.5);
  rimmed(context, circle(at, 12 * pixel), light, pixel, 1.5);
  rimmed(context, circle(at, pixel), light, pixel, 1);
}
