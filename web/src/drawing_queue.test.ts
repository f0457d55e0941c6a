import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { drawAllNow, drawInTurn } from './drawing_queue';

const drawn: number[] = [];
let clock = 0;

/** A picture that takes 5 ms. */
const picture = (number: number) => () => {
  clock += 5;
  drawn.push(number);
};

beforeEach(() => {
  vi.useFakeTimers();
  vi.spyOn(performance, 'now').mockImplementation(() => clock);
  drawn.length = 0;
});
afterEach(() => {
  vi.runAllTimers();
  vi.restoreAllMocks();
  vi.useRealTimers();
});

it('draws some at once, the rest in turn, and none that was taken back', () => {
  const takeBack = [1, 2, 3, 4, 5, 6].map((number) => drawInTurn(picture(number)));
  expect(drawn).toEqual([1, 2]);
  takeBack[3]?.();
  vi.runOnlyPendingTimers();
  expect(drawn).toEqual([1, 2, 3, 5]);
  vi.runOnlyPendingTimers();
  expect(drawn).toEqual([1, 2, 3, 5, 6]);
});

it('draws the rest before the page is printed', () => {
  for (const number of [1, 2, 3, 4]) drawInTurn(picture(number));
  drawAllNow();
  expect(drawn).toEqual([1, 2, 3, 4]);
});
