/** What can be named in a field: items of the site, classes and methods of the engine. */
import { useEffect, useState } from 'preact/hooks';
import { engine } from '../engine';
import { siteState } from '../site_state';
import type { Choice } from './form_context';

interface Described {
  id: string;
  name?: string;
  title?: string;
  family?: string;
}

let told: Promise<{ classes: Choice[]; methods: Choice[] }> | undefined;

async function describe(ask: 'classes' | 'methods'): Promise<Choice[]> {
  const answer = await engine.ask<Record<string, Described[] | undefined>>({ ask });
  return (answer[ask] ?? []).map(({ id, name, title, family }) => ({
    value: id,
    label: [name ?? title ?? id, family].filter((part) => part).join(' · '),
  }));
}

/** The classes and methods of the engine, asked for once. */
function engineChoices() {
  told ??= Promise.all([describe('classes'), describe('methods')]).then(([classes, methods]) => ({
    classes,
    methods,
  }));
  told.catch(() => (told = undefined));
  return told;
}

function itemsOf(collection: string): Choice[] {
  const items = (siteState.value as Record<string, unknown>)[collection];
  if (items === null || typeof items !== 'object') return [];
  return Object.entries(items as Record<string, { name?: string; ticket?: string }>).map(
    ([value, { name, ticket }]) => ({ value, label: name ?? ticket ?? value }),
  );
}

export function useChoices(): (collection: string) => Choice[] {
  const [known, setKnown] = useState<{ classes: Choice[]; methods: Choice[] } | undefined>();
  useEffect(() => {
    let wanted = true;
    engineChoices().then(
      (next) => {
        if (wanted) setKnown(next);
      },
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, []);
  return (collection) => {
    if (collection === 'methods') return known?.methods ?? [];
    return [...itemsOf(collection), ...(collection === 'classes' ? (known?.classes ?? []) : [])];
  };
}
