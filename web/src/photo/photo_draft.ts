/**
 * What is measured on photos before it is a look of the record: each step is a tap on the device, and
 * what stands is what the taps make, in their order. Nothing is computed here; sizes are the engine's.
 */
import { type Change, pointerTo } from '../record/revision';
import { photoWords as words } from '../strings';
import type { FoundStones, Outline } from './vision_messages';

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

export interface PhotoScale {
  view: View;
  balls: Ball[];
  staffs: Staff[];
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
}

/** The stone under a node of the grid; "no rock" where there is none. */
export type NodeStone = { long: [Spot, Spot]; short: [Spot, Spot] } | 'mostly hidden' | 'no rock';

export type PhotoTap =
  | { add: TakenPhoto }
  | { leave: string }
  | { of: string; scale: PhotoScale }
  /** Outlines by their number go, others come. */
  | { of: string; gone: number[]; come: Outline[] }
  | { of: string; node: number; stone: NodeStone }
  | { of: string; undo: true }
  | { largest: string };

export interface MeasuredPhoto {
  taken: TakenPhoto;
  scale: PhotoScale;
  /** Outlines by number; those that went are undefined. */
  outlines: (Outline | undefined)[];
  nodes: Map<number, NodeStone>;
  /** Steps that can be taken back. */
  steps: number;
}

export interface Measured {
  photos: MeasuredPhoto[];
  largest: string;
}

/** Before anybody marks anything: the balls that were found, until somebody states their size. */
function firstScale({ found }: TakenPhoto): PhotoScale {
  const balls = (found?.balls ?? []).map((ball) => ({ ...ball, diameter: '' }));
  return { view: 'straight on', balls, staffs: [], scale_error: '' };
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

/** What stands after these taps. */
export function measured(taps: readonly PhotoTap[]): Measured {
  const taken: { photo: TakenPhoto; scale: PhotoScale; steps: Step[] }[] = [];
  let largest = '';
  const of = (file: string) => taken.find(({ photo }) => photo.file === file);
  for (const tap of taps) {
    if ('add' in tap) {
      if (!of(tap.add.file)) taken.push({ photo: tap.add, scale: firstScale(tap.add), steps: [] });
    } else if ('leave' in tap) {
      const at = taken.findIndex(({ photo }) => photo.file === tap.leave);
      if (at >= 0) taken.splice(at, 1);
    } else if ('largest' in tap) {
      largest = tap.largest;
    } else {
      const one = of(tap.of);
      if (!one) continue;
      if ('scale' in tap) one.scale = tap.scale;
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
  return { photos, largest };
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

function pictureOf({ taken, scale, outlines, nodes }: MeasuredPhoto): object {
  const balls = scale.balls.filter(({ diameter }) => diameter !== '');
  const staffs = scale.staffs.filter(({ length }) => length !== '');
  const grid = gridOf(taken);
  const tapped = [...nodes].flatMap(([node, stone]) => {
    if (stone === 'no rock') return [];
    const at = grid[node];
    return [stone === 'mostly hidden' ? { at, skip: stone } : { at, ...stone }];
  });
  return {
    file: taken.file,
    width: taken.width,
    height: taken.height,
    view: scale.view,
    ...(taken.focal_length > 0 ? { focal_length: `${taken.focal_length} mm` } : {}),
    ...(balls.length > 0 ? { balls } : {}),
    ...(staffs.length > 0 ? { staffs } : {}),
    ...(staffs.length > 0 && scale.scale_error !== '' ? { scale_error: scale.scale_error } : {}),
    ...(taken.found
      ? {
          smallest_drawn: taken.found.smallest_drawn,
          outlines: outlines.filter((outline) => outline !== undefined),
        }
      : { nodes: tapped }),
  };
}

function hasStones({ outlines, nodes }: MeasuredPhoto): boolean {
  return outlines.some((outline) => outline !== undefined) || nodes.size > 0;
}

/** The look that it makes; nothing while no stone is drawn. */
export function lookChanges(
  about: PhotoDraft,
  { photos, largest }: Measured,
  seen: { when: string; who?: string },
): Change[] {
  const used = photos.filter(hasStones);
  if (used.length === 0) return [];
  return [
    {
      set: pointerTo('looks', about.look),
      to: {
        name: about.place ? words.nameAt(about.place) : words.name,
        kind: 'photo',
        lot: about.lot,
        ...seen,
        ...(about.place ? { where: about.place } : {}),
        lies: about.lies,
        pictures: used.map(pictureOf),
        photos: used.map(({ taken }) => taken.file),
        ...(largest === '' ? {} : { largest: { tape: largest } }),
      },
    },
  ];
}
