/** The marks of a scale, set by two places each and mended by dragging one. */
import type { PhotoScale, Spot } from './photo_draft';
import { inTenths } from './tapped_ends';

export type Marks = 'balls' | 'staffs';

const apart = ([a, b]: Spot, [c, d]: Spot): number => Math.hypot(a - c, b - d);
const tenth = (value: number) => Math.round(value * 10) / 10;

/** Two points for each mark: middle and edge of a ball, both ends of a staff. */
export function handlesOf({ balls, staffs }: PhotoScale): Spot[] {
  return [
    ...balls.flatMap(({ middle: [x, y], radius }): Spot[] => [
      [x, y],
      [x + radius, y],
    ]),
    ...staffs.flatMap(({ from, to }): Spot[] => [from, to]),
  ];
}

/** The scale once one of those points lies elsewhere. */
export function withHandle(scale: PhotoScale, index: number, at: Spot): PhotoScale {
  const ballPoints = 2 * scale.balls.length;
  const mark = Math.floor((index < ballPoints ? index : index - ballPoints) / 2);
  const second = index % 2 === 1;
  if (index < ballPoints) {
    const balls = scale.balls.map((ball, number) =>
      number !== mark
        ? ball
        : second
          ? { ...ball, radius: tenth(apart(ball.middle, at)) }
          : { ...ball, middle: inTenths(at) },
    );
    return { ...scale, balls };
  }
  const staffs = scale.staffs.map((staff, number) =>
    number !== mark ? staff : { ...staff, [second ? 'to' : 'from']: inTenths(at) },
  );
  return { ...scale, staffs };
}

/** The scale with one mark more; its length is that of the mark before, until another is stated. */
export function withMark(scale: PhotoScale, marks: Marks, first: Spot, second: Spot): PhotoScale {
  if (marks === 'balls') {
    const diameter = scale.balls.at(-1)?.diameter ?? '';
    const ball = { middle: inTenths(first), radius: tenth(apart(first, second)), diameter };
    return { ...scale, balls: [...scale.balls, ball] };
  }
  const length = scale.staffs.at(-1)?.length ?? '';
  const staff = { from: inTenths(first), to: inTenths(second), length };
  return { ...scale, staffs: [...scale.staffs, staff] };
}

/** The scale with the diameter of a ball stated; balls of no stated diameter are taken to be alike. */
export function withDiameter(scale: PhotoScale, index: number, diameter: string): PhotoScale {
  const balls = scale.balls.map((ball, at) =>
    at === index || ball.diameter === '' ? { ...ball, diameter } : ball,
  );
  return { ...scale, balls };
}

/** The scale with the edge of a board stated; boards of no stated edge are taken to be alike. */
export function withEdge(scale: PhotoScale, index: number, edge: string): PhotoScale {
  const boards = scale.boards.map((board, at) =>
    at === index || board.edge === '' ? { ...board, edge } : board,
  );
  return { ...scale, boards };
}
