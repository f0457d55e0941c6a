/**
 * What is measured on photos before it is a look of the record: each step is a tap on the device, and
 * what stands is what the taps make, in their order. Nothing is computed here; sizes are the engine's.
 */
import type { FoundBoard, FoundMarks, FoundStones, Outline } from './vision_messages';

export type Spot = [number, number];
export type View = 'straight on' | 'oblique';

/** What a draft of photos holds beside its taps. */
export interface PhotoDraft {
  lot: string;
  look: string;
  by: 'outlines' | 'taps';
  lies: 'heap' | 'layer';
  place: string;
}

export interface Ball {
  middle: Spot;
  radius: number;
  diameter: string;
}

export interface Staff {
  from: Spot;
  to: Spot;
  length: string;
}

/** A marker board in sight; its edge is that of a marker as it was printed, once somebody states it. */
export type Board = FoundBoard & { edge: string };

export interface PhotoScale {
  view: View;
  balls: Ball[];
  staffs: Staff[];
  boards: Board[];
  scale_error: string;
}

/** A photo as it was taken in, with what was found on it; without outlines where stones are tapped. */
export interface TakenPhoto {
  file: string;
  width: number;
  height: number;
  /** Millimetres, as of a camera with a 36 × 24 mm picture; 0 where the file does not say. */
  focal_length: number;
  found?: Omit<FoundStones, 'width' | 'height'>;
  /** What was found where stones are tapped. */
  marks?: FoundMarks;
}

/** The largest stone in sight, by its two ends on a photo. */
export interface LargestEnds {
  of: string;
  ends: [Spot, Spot];
}

/** A place on an outline that is looked at. */
export interface CheckNode {
  of: string;
  at: Spot;
}

/** What somebody found who looked at the outline under a node. */
export type NodeFinding = { long: [Spot, Spot]; short: [Spot, Spot] } | NodeWord;
export type NodeWord = 'as outlined' | 'mostly hidden' | 'not rock';

/** The stone under a node of the grid; "no rock" where there is none. */
export type NodeStone = { long: [Spot, Spot]; short: [Spot, Spot] } | 'mostly hidden' | 'no rock';

export type PhotoTap =
  | { add: TakenPhoto }
  | { leave: string }
  /** One of an earlier version has no boards. */
  | { of: string; scale: Omit<PhotoScale, 'boards'> & { boards?: Board[] } }
  /** Outlines by their number go, others come. */
  | { of: string; gone: number[]; come: Outline[] }
  | { of: string; node: number; stone: NodeStone }
  | { of: string; undo: true }
  | { largest: string }
  | { largestEnds: LargestEnds | null }
  /** A check begins: these are looked at. */
  | { check: CheckNode[] }
  /** A node of the check by its number, and the number of the outline that was looked at. */
  | { checked: number; outline: number; finding: NodeFinding }
  | { uncheck: true };

export interface MeasuredPhoto {
  taken: TakenPhoto;
  scale: PhotoScale;
  /** Outlines by number; those that went are undefined. */
  outlines: (Outline | undefined)[];
  nodes: Map<number, NodeStone>;
  /** Steps that can be taken back. */
  steps: number;
}

/** Outlines that are looked at, node by node, to see whether what was found holds. */
export interface OutlineCheck {
  nodes: CheckNode[];
  /** By node; what was said of an outline that went since does not count. */
  findings: Map<number, NodeFinding>;
}

export interface Measured {
  photos: MeasuredPhoto[];
  largest: string;
  largestEnds?: LargestEnds;
  check?: OutlineCheck;
}

/** Before anybody marks anything: the balls that were found, until somebody states their size. */
function firstScale({ found, marks }: TakenPhoto): PhotoScale {
  const seen = found ?? marks;
  const balls = (seen?.balls ?? []).map((ball) => ({ ...ball, diameter: '' }));
  const boards = (seen?.boards ?? []).map((board) => ({ ...board, edge: '' }));
  return { view: 'straight on', balls, staffs: [], boards, scale_error: '' };
}

type Step = Extract<PhotoTap, { of: string; gone: number[] } | { of: string; node: number }>;

function isStep(tap: PhotoTap): tap is Step {
  return 'gone' in tap || 'node' in tap;
}

function apply(photo: MeasuredPhoto, step: Step): void {
  if ('node' in step) {
    photo.nodes.set(step.node, step.stone);
    return;
  }
  for (const number of step.gone) photo.outlines[number] = undefined;
  photo.outlines.push(...step.come);
}

type Checked = Extract<PhotoTap, { checked: number }>;

/** The check as it stands: what was said last of each outline that still is there. */
function checkAfter(
  nodes: CheckNode[],
  said: readonly Checked[],
  photos: readonly MeasuredPhoto[],
): OutlineCheck {
  const findings = new Map<number, NodeFinding>();
  for (const { checked, outline, finding } of said) {
    const photo = photos.find(({ taken }) => taken.file === nodes[checked]?.of);
    if (photo?.outlines[outline]) findings.set(checked, finding);
  }
  return { nodes, findings };
}

/** What stands after these taps. */
export function measured(taps: readonly PhotoTap[]): Measured {
  const taken: { photo: TakenPhoto; scale: PhotoScale; steps: Step[] }[] = [];
  let largest = '';
  let largestEnds: LargestEnds | undefined;
  let nodes: CheckNode[] | undefined;
  let said: Checked[] = [];
  const of = (file: string) => taken.find(({ photo }) => photo.file === file);
  for (const tap of taps) {
    if ('add' in tap) {
      if (!of(tap.add.file)) taken.push({ photo: tap.add, scale: firstScale(tap.add), steps: [] });
    } else if ('leave' in tap) {
      const at = taken.findIndex(({ photo }) => photo.file === tap.leave);
      if (at >= 0) taken.splice(at, 1);
    } else if ('largest' in tap) {
      largest = tap.largest;
    } else if ('largestEnds' in tap) {
      largestEnds = tap.largestEnds ?? undefined;
    } else if ('check' in tap) {
      nodes = tap.check;
      said = [];
    } else if ('checked' in tap) {
      said.push(tap);
    } else if ('uncheck' in tap) {
      said.pop();
    } else {
      const one = of(tap.of);
      if (!one) continue;
      if ('scale' in tap) one.scale = { boards: [], ...tap.scale };
      else if ('undo' in tap) one.steps.pop();
      else if (isStep(tap)) one.steps.push(tap);
    }
  }
  const photos = taken.map(({ photo, scale, steps }) => {
    const result: MeasuredPhoto = {
      taken: photo,
      scale,
      outlines: [...(photo.found?.outlines ?? [])],
      nodes: new Map(),
      steps: steps.length,
    };
    for (const step of steps) apply(result, step);
    return result;
  });
  return {
    photos,
    largest,
    ...(largestEnds && of(largestEnds.of) ? { largestEnds } : {}),
    ...(nodes ? { check: checkAfter(nodes, said, photos) } : {}),
  };
}

/** Along the longer side and the shorter one. */
const nodesAlong = 7;
const nodesAcross = 5;

/** The nodes of the grid over a photo, row by row. */
export function gridOf({ width, height }: { width: number; height: number }): Spot[] {
  const columns = width >= height ? nodesAlong : nodesAcross;
  const rows = width >= height ? nodesAcross : nodesAlong;
  return Array.from({ length: columns * rows }, (_, node) => [
    Math.round(((node % columns) + 0.5) * (width / columns)),
    Math.round((Math.floor(node / columns) + 0.5) * (height / rows)),
  ]);
}
