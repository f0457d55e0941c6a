import { expect, it } from 'vitest';
import { singly } from './single_tap';

it('does its work once for a double tap, and again for a tap of its own or a key', () => {
  let done = 0;
  const button = document.createElement('button');
  button.addEventListener(
    'click',
    singly(() => (done += 1)),
  );
  const tap = (detail: number) => button.dispatchEvent(new MouseEvent('click', { detail }));
  tap(1);
  tap(2);
  expect(done).toBe(1);
  tap(1);
  tap(0);
  expect(done).toBe(3);
});
