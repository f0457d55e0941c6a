/** What the page and the worker that finds stones on photos say to each other. */
import type { FailureKind } from '../engine_messages';
import type { Problem } from '../findings';

/** The corners of a stone on a photo, in its pixels. */
export type Outline = [number, number][];

/** A ball in sight: what is round and of a colour that the rock does not have. */
export interface FoundBall {
  middle: [number, number];
  radius: number;
}

/** A marker board in sight. */
export interface FoundBoard {
  number: number;
  /** All that the board has, in sight or not. */
  marker_numbers: number[];
  markers: { number: number; corners: Outline }[];
}

/** What may tell the scale of a photo, and what makes it hard to measure. */
export interface FoundMarks {
  balls: FoundBall[];
  /** Absent of photos that were taken in by an earlier version. */
  boards?: FoundBoard[];
  cautions: string[];
}

/** What was found on a photo; the pixels are those of the photo upright. */
export interface FoundStones extends FoundMarks {
  width: number;
  height: number;
  outlines: Outline[];
  smallest_drawn: number;
  working_pixel: number;
  rock_share: number;
}

/** A change to outlines, worked out where they were found. */
export type OutlineEdit = { pixel: number } & (
  | { ask: 'join'; outlines: Outline[] }
  | { ask: 'cut'; outlines: [Outline]; line: [[number, number], [number, number]] }
  | { ask: 'draw'; path: Outline; outlines: Outline[]; width: number; height: number }
);

export type PhotoQuestion = { lies: string; pictures: object[] } & (
  { ask: 'scale'; first: number } | { ask: 'check' }
);

export interface Refused {
  problems: Problem[];
}

export type ToVision = { id: number; module: string } & (
  | { ask: 'outline'; weights: string; photo: Blob; name: string }
  /** What tells the scale of a photo whose stones nobody looks for. */
  | { ask: 'marks'; photo: Blob; name: string }
  | { ask: 'edit'; edit: OutlineEdit }
  /** Of pictures as a photo look of the document has them. */
  | { ask: 'question'; question: PhotoQuestion }
  /** The focal length in Exif notes. */
  | { ask: 'camera'; exif: Uint8Array }
);

export type FromVision =
  | { id: number; done: number }
  | { id: number; answer: unknown }
  | { id: number; failure: FailureKind; detail: string };
