/** What part of a photo is shown: moving and zooming, in pixels of the photo and of the page. */
import type { Spot } from './photo_draft';

export interface PhotoView {
  /** Pixels of the page to one of the photo. */
  scale: number;
  /** The place of the photo in the upper left corner. */
  left: number;
  top: number;
}

export interface Area {
  width: number;
  height: number;
}

/** Nobody sees more by pixels larger than this. */
const largestPixel = 8;

export function wholePhoto(photo: Area, page: Area): PhotoView {
  const scale = Math.min(page.width / photo.width, page.height / photo.height);
  return within({ scale, left: 0, top: 0 }, photo, page);
}

/** The nearest view that shows no more beside the photo than it must. */
export function within(view: PhotoView, photo: Area, page: Area): PhotoView {
  const least = Math.min(page.width / photo.width, page.height / photo.height);
  const scale = Math.min(Math.max(view.scale, least), Math.max(least, largestPixel));
  const place = (at: number, whole: number, room: number) =>
    whole <= room ? (whole - room) / 2 : Math.min(Math.max(at, 0), whole - room);
  return {
    scale,
    left: place(view.left, photo.width, page.width / scale),
    top: place(view.top, photo.height, page.height / scale),
  };
}

export function onPhoto(view: PhotoView, [x, y]: Spot): Spot {
  return [view.left + x / view.scale, view.top + y / view.scale];
}

export function onPage(view: PhotoView, [x, y]: Spot): Spot {
  return [(x - view.left) * view.scale, (y - view.top) * view.scale];
}

/** Zoomed so that what was at `from` on the page comes to lie at `to`. */
export function zoomed(view: PhotoView, factor: number, from: Spot, to: Spot = from): PhotoView {
  const [x, y] = onPhoto(view, from);
  const scale = view.scale * factor;
  return { scale, left: x - to[0] / scale, top: y - to[1] / scale };
}

/** A view of `across` pixels of the photo about a place. */
export function about([x, y]: Spot, across: number, page: Area): PhotoView {
  const scale = Math.min(page.width, page.height) / across;
  return { scale, left: x - page.width / scale / 2, top: y - page.height / scale / 2 };
}
