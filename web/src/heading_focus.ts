/** Takes keyboard and screen reader to the heading of what has just replaced the page's content. */
import { useLayoutEffect, useRef } from 'preact/hooks';

/**
 * For a heading with tabIndex -1. It gets the focus when it appears because the user opened or
 * retried something, which took the control with the focus away. On the first load nothing had it.
 */
export function useHeadingFocus(answersTheUser: boolean) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    const lost = document.activeElement === null || document.activeElement === document.body;
    if (answersTheUser && lost) heading.current?.focus();
  }, [answersTheUser]);
  return heading;
}

/**
 * On the way from one screen to another: where the control that led there is gone, keyboard and
 * screen reader go on at the heading of the new screen, or at its content where that comes later.
 */
export function usePlaceFocus(address: string): void {
  const before = useRef(address);
  // In one go with the drawing: who presses Tab at once goes on from the heading, not from the top.
  useLayoutEffect(() => {
    if (before.current === address) return;
    before.current = address;
    const lost = document.activeElement === null || document.activeElement === document.body;
    if (!lost) return;
    const content = document.getElementById('content');
    const heading = content?.querySelector('h1');
    heading?.setAttribute('tabindex', '-1');
    (heading ?? content)?.focus({ preventScroll: true });
  }, [address]);
}
