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
