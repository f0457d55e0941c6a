import { describe, expect, it } from 'vitest';
import type { PhotoScale } from './photo_draft';
import { withDiameter, withHandle, withMark } from './scale_marks';

const none: PhotoScale = {
  view: 'straight on',
  balls: [],
  staffs: [],
  boards: [],
  scale_error: '',
};

describe('the marks of a scale', () => {
  it('are set by two places each and take over the length of the one before', () => {
    let scale = withMark(none, 'balls', [100, 100], [130, 140]);
    expect(scale.balls).toEqual([{ middle: [100, 100], radius: 50, diameter: '' }]);
    scale = { ...scale, balls: scale.balls.map((ball) => ({ ...ball, diameter: '12 in' })) };
    scale = withMark(scale, 'balls', [400, 100], [430.04, 100]);
    expect(scale.balls[1]).toEqual({ middle: [400, 100], radius: 30, diameter: '12 in' });
    scale = withMark(scale, 'staffs', [1, 2], [301, 2]);
    expect(scale.staffs).toEqual([{ from: [1, 2], to: [301, 2], length: '' }]);
  });

  it('of balls without a stated size are alike, until another is stated', () => {
    const ball = { middle: [100, 100] as [number, number], radius: 50, diameter: '' };
    const one = withDiameter({ ...none, balls: [ball, ball] }, 1, '12 in');
    expect(one.balls.map(({ diameter }) => diameter)).toEqual(['12 in', '12 in']);
    const other = withDiameter(one, 0, '6 in');
    expect(other.balls.map(({ diameter }) => diameter)).toEqual(['6 in', '12 in']);
  });

  it('are mended by dragging one point', () => {
    const scale = withMark(
      withMark(none, 'balls', [100, 100], [150, 100]),
      'staffs',
      [1, 2],
      [301, 2],
    );
    expect(withHandle(scale, 0, [90, 100]).balls[0]).toMatchObject({
      middle: [90, 100],
      radius: 50,
    });
    expect(withHandle(scale, 1, [100, 160]).balls[0]).toMatchObject({
      middle: [100, 100],
      radius: 60,
    });
    expect(withHandle(scale, 3, [300, 9]).staffs[0]).toMatchObject({ from: [1, 2], to: [300, 9] });
    expect(withHandle(scale, 2, [5, 5]).balls).toEqual(scale.balls);
  });
});
