/** What of a drawing is seen: moved and enlarged without ever losing it. */

export interface Point {
  x: number;
  y: number;
}

export interface Size {
  width: number;
  height: number;
}

/** A rectangle of the drawing, as an SVG takes it. */
export interface ViewBox extends Point, Size {}

/** How far it can be enlarged. */
const mostEnlarged = 40;

export function wholeOf({ width, height }: Size): ViewBox {
  return { x: 0, y: 0, width, height };
}

/** Keeps the middle of what is seen upon the drawing, and its size within reason. */
function within(box: ViewBox, whole: Size): ViewBox {
  const width = Math.min(Math.max(box.width, whole.width / mostEnlarged), whole.width);
  const height = (width / whole.width) * whole.height;
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const clamped = (value: number, most: number) => Math.min(Math.max(value, 0), most);
  return {
    x: clamped(middle.x, whole.width) - width / 2,
    y: clamped(middle.y, whole.height) - height / 2,
    width,
    height,
  };
}

/** Enlarged by `factor` about a place that stays where it is. */
export function enlarged(box: ViewBox, factor: number, about: Point, whole: Size): ViewBox {
  const width = Math.min(Math.max(box.width / factor, whole.width / mostEnlarged), whole.width);
  const share = width / box.width;
  return within(
    {
      x: about.x - (about.x - box.x) * share,
      y: about.y - (about.y - box.y) * share,
      width,
      height: box.height * share,
    },
    whole,
  );
}

/** Moved by shares of what is seen. */
export function moved(box: ViewBox, across: number, down: number, whole: Size): ViewBox {
  return within({ ...box, x: box.x + across * box.width, y: box.y + down * box.height }, whole);
}

export function middleOf({ x, y, width, height }: ViewBox): Point {
  return { x: x + width / 2, y: y + height / 2 };
}
