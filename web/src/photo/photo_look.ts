/** The look of the record that comes of what is measured on photos. */
import { type Change, pointerTo } from '../record/revision';
import { photoWords as words } from '../strings';
import { gridOf, type Measured, type MeasuredPhoto, type PhotoDraft } from './photo_draft';

/** A photo as a picture of the look: what is marked on it without a length does not count. */
export function pictureOf({ taken, scale, outlines, nodes }: MeasuredPhoto): object {
  const balls = scale.balls.filter(({ diameter }) => diameter !== '');
  const staffs = scale.staffs.filter(({ length }) => length !== '');
  const boards = scale.boards
    .filter(({ edge }) => edge !== '')
    .map(({ edge, markers }) => ({ edge, markers }));
  const unsure = staffs.length > 0 || boards.length > 0;
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
    ...(boards.length > 0 ? { boards } : {}),
    ...(unsure && scale.scale_error !== '' ? { scale_error: scale.scale_error } : {}),
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

/** The largest stone as the look has it, by tape and by its ends. */
function largestOf({ largest, largestEnds }: Measured, used: readonly MeasuredPhoto[]): object {
  const picture = used.findIndex(({ taken }) => taken.file === largestEnds?.of) + 1;
  const tape = largest === '' ? {} : { tape: largest };
  const ends = largestEnds && picture > 0 ? { picture, ends: largestEnds.ends } : {};
  const both = { ...tape, ...ends };
  return Object.keys(both).length > 0 ? { largest: both } : {};
}

function checkOf({ check }: Measured, used: readonly MeasuredPhoto[]): object {
  const looked = [...(check?.findings ?? [])].flatMap(([number, finding]) => {
    const node = check?.nodes[number];
    const picture = used.findIndex(({ taken }) => taken.file === node?.of) + 1;
    if (!node || picture === 0) return [];
    const told = typeof finding === 'string' ? { found: finding } : finding;
    return [{ picture, at: node.at, ...told }];
  });
  return looked.length > 0 ? { check: looked } : {};
}

/** The look that it makes; nothing while no stone is drawn. */
export function lookChanges(
  about: PhotoDraft,
  now: Measured,
  seen: { when: string; who?: string },
): Change[] {
  const used = now.photos.filter(hasStones);
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
        ...largestOf(now, used),
        ...checkOf(now, used),
      },
    },
  ];
}
