/** A long list in portions: so many are shown at first, and so many more each time. */
import type { ComponentChild } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { strings } from './strings';

interface PortionOptions {
  atLeast?: number;
  last?: boolean;
  step?: number;
}

export interface Portioned<Item> {
  shown: readonly Item[];
  /** More of the portion follows by itself. */
  growing: boolean;
  /** Shows the next ones; nothing where all are shown. */
  more: ComponentChild;
}

/**
 * The first ones of a list, or with `last` the last ones. `atLeast` are shown whatever the portion.
 * Where `step` is given, no more than so many are added to the page at once: the rest of a portion
 * follows by itself.
 */
export function usePortion<Item>(
  items: readonly Item[],
  portion: number,
  { atLeast = 0, last = false, step = portion }: PortionOptions = {},
): Portioned<Item> {
  const [wanted, setWanted] = useState(portion);
  const [drawn, setDrawn] = useState(step);
  const many = Math.max(wanted, atLeast);
  const now = Math.max(Math.min(many, drawn), atLeast);
  const growing = now < many && now < items.length;
  useEffect(() => {
    if (!growing) return undefined;
    const next = setTimeout(() => setDrawn(now + step));
    return () => clearTimeout(next);
  }, [growing, now]);
  const shown = last ? items.slice(-now) : items.slice(0, now);
  if (growing || items.length <= many) return { shown, growing, more: null };
  return {
    shown,
    growing,
    more: (
      <p class="more">
        <button type="button" class="button quiet" onClick={() => setWanted(many + portion)}>
          {strings.portions.more(Math.min(portion, items.length - many))}
        </button>{' '}
        <span class="muted">{strings.portions.shown(many, items.length)}</span>
      </p>
    ),
  };
}
