import { describe, expect, it } from 'vitest';
import { statedEdges } from './board_edges';
import type { Board, MeasuredPhoto } from './photo_draft';

const board = (number: number, edge: string): Board => ({
  number,
  marker_numbers: [0, 1, 2, 3, 4, 5].map((marker) => marker + 6 * (number - 1)),
  markers: [],
  edge,
});

const photoWith = (boards: Board[]) => ({ scale: { boards } }) as unknown as MeasuredPhoto;

const look = (edge: string, number: number) => ({
  name: 'Photos',
  kind: 'photo',
  lot: 'a',
  pictures: [{ boards: [{ edge, markers: [{ number }] }] }],
});

describe('what is known of a board that is found', () => {
  it('is what looks of the site and other photos state of the same board', () => {
    const looks = { one: look('65 mm', 8), two: look('120 mm', 3), three: look('65 mm', 6) };
    expect(statedEdges(looks, [], board(2, ''))).toEqual(['65 mm']);
    expect(
      statedEdges(looks, [photoWith([board(2, '4 in'), board(1, '5 in')])], board(2, '')),
    ).toEqual(['4 in', '65 mm']);
    expect(statedEdges(looks, [photoWith([board(3, '')])], board(3, ''))).toEqual([]);
    expect(statedEdges(undefined, [], board(1, ''))).toEqual([]);
    expect(
      statedEdges({ count: { name: 'n', kind: 'stone count', lot: 'a' } }, [], board(1, '')),
    ).toEqual([]);
  });
});
