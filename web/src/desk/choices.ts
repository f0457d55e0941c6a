/** What can be named in a field: items of the site, classes and methods of the engine. */
import { useEffect, useState } from 'preact/hooks';
import { engine } from '../engine';
import { engineText } from '../engine_text';
import { siteState } from '../site_state';
import { capitalised } from './field_words';
import type { Choice } from './form_context';

interface Described {
  id: string;
  name?: string;
  title?: string;
  family?: string;
  inputs?: { key: string; meaning: string }[];
}

/** Its label is read when it is shown: the words for it may come later. */
interface EngineChoice {
  value: string;
  label: () => string;
}

/** What the engine knows by id: classes, methods, the inputs of each method. */
type EngineChoices = Record<string, EngineChoice[]>;

let told: Promise<EngineChoices> | undefined;

async function describe(ask: 'classes' | 'methods'): Promise<Described[]> {
  return (await engine.ask<Record<string, Described[] | undefined>>({ ask }))[ask] ?? [];
}

function choiceOf({ id, name, title, family }: Described): EngineChoice {
  const called = () => name ?? engineText(title ?? id, 'title');
  return { value: id, label: () => [called(), family].filter((part) => part).join(' · ') };
}

/** The collection of the inputs of a method, as the schema of the document names it. */
export function inputsOf(method: string): string {
  return `inputs of ${method}`;
}

/** The classes and methods of the engine, asked for once. */
function engineChoices(): Promise<EngineChoices> {
  told ??= Promise.all([describe('classes'), describe('methods')]).then(([classes, methods]) => ({
    classes: classes.map(choiceOf),
    methods: methods.map(choiceOf),
    ...Object.fromEntries(
      methods.map(({ id, inputs = [] }) => [
        inputsOf(id),
        inputs.map(({ key, meaning }) => ({
          value: key,
          label: () => capitalised(engineText(meaning, 'meaning')),
        })),
      ]),
    ),
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
  const [known, setKnown] = useState<EngineChoices>({});
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
  return (collection) => [
    ...itemsOf(collection),
    ...(known[collection] ?? []).map(({ value, label }) => ({ value, label: label() })),
  ];
}
