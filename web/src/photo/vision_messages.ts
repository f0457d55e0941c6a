/** What the page and the worker that finds stones on photos say to each other. */
import type { FailureKind } from '../engine_messages';
import type { Problem } from '../findings';

/** The corners of a stone on a photo, in its pixels. */
export type Outline = [number, number][];

/** What was found on a photo; the pixels are those of the photo upright. */
export interface FoundStones {
  width: number;
  height: number;
  outlines: Outline[];
  /** What is round and of a colour that the rock does not have. */
  balls: { middle: [number, number]; radius: number }[];
  smallest_drawn: number;
  working_pixel: number;
  rock_share: number;
  cautions: string[];
}

/** A change to outlines, worked out where they were found. */
export type OutlineEdit = { pixel: number } & (
  | { ask: 'join'; outlines: Outline[] }
  | { ask: 'cut'; outlines: [Outline]; line: [[number, number], [number, number]] }
  | { ask: 'draw'; path: Outline; outlines: Outline[]; width: number; height: number }
);

export interface Refused {
  problems: Problem[];
}

export type ToVision = { id: number; module: string } & (
  | { ask: 'outline'; weights: string; photo: Blob; name: string }
  | { ask: 'edit'; edit: OutlineEdit }
  /** The focal length in Exif notes. */
  | { ask: 'camera'; exif: Uint8Array }
);

export type FromVision =
  | { id: number; done: number }
  | { id: number; answer: unknown }
  | { id: number; failure: FailureKind; detail: string };
