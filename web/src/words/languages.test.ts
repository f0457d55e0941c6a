import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import schema from '../../../schema/site.schema.json';
import findingsSchema from '../../../schema/findings.schema.json';
import { english } from './english';
import { spanish } from './spanish';
import { sameChoices } from './spanish/same_choices';
import { sameInSpanish } from './spanish/same_in_both';
import { kinds, sentences } from './spanish/all_sentences';
import * as first from './spanish/sentences';
import { avoided, terms } from './spanish/terms';

type Table = { [key: string]: unknown };

/** Tables that a language fills with what the engine and the schema say; English leaves them empty. */
const filled = new Set([
  'help.groups',
  'readEngine',
  'asWritten',
  'desk.words',
  'desk.fieldHelp',
  'desk.fields',
]);

function isTable(value: unknown): value is Table {
  return value !== null && typeof value === 'object';
}

/** Every path of a table, with the kind of what stands there. */
function shape(table: Table, path = ''): string[] {
  return Object.entries(table).flatMap(([key, value]) => {
    const here = path === '' ? key : `${path}.${key}`;
    if (filled.has(here)) return [];
    return isTable(value) ? shape(value, here) : [`${here}: ${typeof value}`];
  });
}

/** What a word says, and a sentence that is made, with something put in. */
function said(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'function') return [];
  const make = value as (...given: unknown[]) => unknown;
  return [1, 5].map((number) => {
    for (const given of [
      [number, number, number],
      [[number, number], ['x']],
      ['level', 'x'],
    ]) {
      try {
        const made = make(...given);
        return isTable(made) ? `${String(made.what)} ${String(made.allowed)}` : String(made);
      } catch {
        // It wants other things to be put in.
      }
    }
    throw new Error('This sentence takes something that the test does not give.');
  });
}

function sayings(table: Table, path = ''): [path: string, saying: string][] {
  return Object.entries(table).flatMap(([key, value]): [string, string][] => {
    const here = path === '' ? key : `${path}.${key}`;
    if (filled.has(here)) return [];
    return isTable(value) ? sayings(value, here) : said(value).map((one) => [here, one]);
  });
}

describe('Spanish', () => {
  it('has every word that English has, and no other', () => {
    expect(shape(spanish)).toEqual(shape(english));
  });

  it('leaves nothing in English but what is the same in both', () => {
    const own = sayings(spanish);
    const same = sayings(english)
      .filter(([, saying], index) => saying !== '' && own[index]?.[1] === saying)
      .map(([path]) => path);
    expect([...new Set(same)].sort()).toEqual([...sameInSpanish.words].sort());
  });

  it('opens and closes what it asks and quotes', () => {
    // The key ? is none of them.
    const asked = sayings(spanish).filter(([path]) => !path.startsWith('desk.keys'));
    for (const [path, saying] of asked) {
      expect(saying.split('¿').length, path).toBe(saying.split('?').length);
      expect(saying.split('«').length, path).toBe(saying.split('»').length);
    }
  });
});

describe('the terms chosen in Spanish', () => {
  const screens = [
    ...sayings(spanish).map(([, saying]) => saying),
    ...[
      sentences,
      ...Object.values(kinds),
      spanish.desk.words,
      spanish.desk.fields,
      spanish.desk.fieldHelp,
    ].flatMap((table) => Object.values(table)),
  ]
    .join(' ')
    .toLowerCase();

  it.each(terms)('$english is called $spanish', ({ spanish: term }) => {
    expect(screens).toContain(term.split(/[:,]/)[0]);
  });

  it('has no second name for any', () => {
    const pages = ['field', 'words'].map((page) =>
      readFileSync(join(import.meta.dirname, `../../../docs/spanish/${page}.md`), 'utf8'),
    );
    const words = new Set(
      [screens, ...pages]
        .join(' ')
        .toLowerCase()
        .match(/\p{L}+/gu),
    );
    expect(avoided.filter((word) => words.has(word))).toEqual([]);
    expect(words.has('obra')).toBe(true);
  });

  it('has each term once', () => {
    const all = terms.map((term) => term.english);
    expect(all).toEqual([...new Set(all)]);
  });
});

/** All that the schema of the document may put on a screen. */
function wordsOfSchema(): Record<'keys' | 'choices' | 'help', Set<string>> {
  const found = { keys: new Set<string>(), choices: new Set<string>(), help: new Set<string>() };
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) node.forEach(walk);
    if (!isTable(node) || Array.isArray(node)) return;
    if (isTable(node.properties))
      Object.keys(node.properties).forEach((key) => found.keys.add(key));
    if (typeof node.description === 'string') found.help.add(node.description);
    const choices = [
      node.title,
      node.const,
      node.default,
      ...(Array.isArray(node.enum) ? node.enum : []),
    ];
    for (const word of choices) if (typeof word === 'string') found.choices.add(word);
    Object.values(node).forEach(walk);
  };
  walk({ $defs: schema.$defs });
  return found;
}

const missing = (asked: Iterable<string>, known: object, same: readonly string[]) =>
  [...asked].filter((word) => !(word in known) && !same.includes(word) && !/^\d/.test(word));

describe('what the schema of the document says', () => {
  const { keys, choices, help } = wordsOfSchema();
  const { fields, words, fieldHelp } = spanish.desk;

  it('is there to be read', () => {
    expect(keys.size).toBeGreaterThan(300);
    expect(choices.size).toBeGreaterThan(150);
    expect(help.size).toBeGreaterThan(150);
  });

  it('has Spanish for every field', () => {
    expect(missing(keys, fields, [])).toEqual([]);
  });

  it('has Spanish for every word to choose', () => {
    expect(missing(choices, words, Object.keys(sameChoices))).toEqual([]);
  });

  it('has Spanish for every sentence below a field', () => {
    expect(missing(help, fieldHelp, [])).toEqual([]);
  });

  it('has no Spanish for what the schema no longer says', () => {
    expect(Object.keys(words).filter((word) => !choices.has(word))).toEqual([]);
    expect(Object.keys(fieldHelp).filter((sentence) => !help.has(sentence))).toEqual([]);
  });
});

describe('what the engine says by itself', () => {
  const { outcome, finding } = findingsSchema.$defs;

  it('has Spanish for every outcome, topic and standing of a source', () => {
    expect(Object.keys(spanish.outcomes)).toEqual(outcome.enum);
    const standings = finding.properties.sources.items.properties.standing.enum;
    const asked = [...finding.properties.topic.enum, ...standings];
    expect(missing(asked, sentences, [])).toEqual([]);
  });

  /** The texts of a piece of the engine, those that go over several lines in one. */
  const textsIn = (file: string, from: string, until: string): string[] => {
    const source = readFileSync(join(import.meta.dirname, '../../..', file), 'utf8');
    const piece = source.slice(source.indexOf(from), source.indexOf(until, source.indexOf(from)));
    return [...piece.replaceAll(/"\s*\n\s*"/g, '').matchAll(/"([^"]+)"/g)].map(
      ([, text]) => text ?? '',
    );
  };

  it('has Spanish for the cautions of every screen and of every walk', () => {
    const usual = textsIn('engine/site/assess.cc', 'usual_cautions() {', '\n}');
    const walk = textsIn('engine/site/placing_findings.cc', 'stay_clear =', ';\n\n');
    expect([usual.length, walk.length]).toEqual([3, 1]);
    expect(missing([...usual, ...walk], first.sentences, [])).toEqual([]);
  });

  it('has Spanish for every way of picking stones', () => {
    const texts = textsIn('report/count_sheet_answer.cc', 'json pickings_json() {', '}) {');
    const meanings = texts.filter((text) => text.includes(' '));
    expect(meanings.length).toBe(Object.keys(spanish.count.pickings).length);
    expect(missing(meanings, sentences, [])).toEqual([]);
  });

  it('has Spanish for the title of every check of placing that names nothing of the site', () => {
    const sources = ['cover', 'filter', 'ground', 'rock'].map((matter) =>
      readFileSync(
        join(import.meta.dirname, `../../../engine/placing/${matter}_checks.cc`),
        'utf8',
      ),
    );
    const titles = sources.flatMap((source) =>
      [...source.matchAll(/(?:title = |measured\("[\w-]+", )"([^"]+)"/g)].map(
        ([, title]) => title ?? '',
      ),
    );
    expect(titles.length).toBeGreaterThan(20);
    expect(missing(titles, sentences, [])).toEqual([]);
  });
});
