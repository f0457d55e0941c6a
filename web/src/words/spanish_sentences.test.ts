import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { partsOf } from '../written/sentence_pattern';
import { type Reading, SentenceTable } from '../written/sentence_table';
import { isName, listsIds } from './called_so_for_tests';
import type { EnginePiece, EngineTextKind } from './sentences';
import { kinds, sentences } from './spanish/all_sentences';
import { readEngine } from './spanish/engine_texts';
import { sameInSpanish } from './spanish/same_in_both';

/** What the engine says of the examples, by where it stands (`engine_sentences/gather.mjs`). */
const said = JSON.parse(
  readFileSync(
    join(import.meta.dirname, '../../engine_sentences/sentences_of_examples.json'),
    'utf8',
  ),
) as Record<string, string[]>;

const table = new SentenceTable(sentences, kinds);

/** Where they stand tells that they may be words of a kind. */
const kindAt: Record<string, EngineTextKind> = {
  headlines: 'headline',
  'titles of findings': 'title',
  'meanings of values': 'meaning',
  'origins of steps': 'origin',
  'origins of limits': 'origin',
  'meanings of steps': 'meaning',
  'inputs and results of methods': 'meaning',
  'heads of tables': 'title',
  'titles of pictures': 'pictureTitle',
  'words in pictures': 'pictureWord',
  'places in sources': 'sourcePlace',
};

const isWhole = (pieces: readonly EnginePiece[]) => pieces.every(({ asWritten }) => !asWritten);

const isShown = (text: string, place: string) => isWhole(table.pieces(text, kindAt[place]));

/** Where every text has Spanish. */
const complete = [
  'bill of quantities',
  'blends',
  'cautions',
  'cautions of methods',
  'checks of placing',
  'confidences',
  'descriptions of pictures',
  'headlines',
  'inputs and results of methods',
  'limits of methods',
  'meanings of steps',
  'meanings of values',
  'places in sources',
  'sentences of findings',
  'sentences of walks',
  'titles of methods',
  'what to do next',
];

const isDocument = (text: string) => sameInSpanish.documents.includes(text);

/** Where every text has Spanish but what is called in every language as it calls itself. */
const completeBut: Record<string, (text: string) => boolean> = {
  'cells of tables': isName,
  'heads of tables': isName,
  'origins of limits': isDocument,
  'origins of steps': (text) => isDocument(text) || isName(text),
  problems: listsIds,
  'titles of findings': isName,
  'titles of pictures': isName,
  'words in pictures': isName,
};

describe('what the engine says of the examples', () => {
  it('is there to be read', () => {
    expect(Object.values(said).flat().length).toBeGreaterThan(4000);
  });

  it.each(complete)('has Spanish for all %s', (place) => {
    expect(said[place]?.filter((text) => !isShown(text, place))).toEqual([]);
  });

  it.each(Object.entries(completeBut))(
    'has Spanish for all %s but what calls itself so',
    (place, isSame) => {
      const open = said[place]?.filter((text) => !isShown(text, place));
      expect(open?.filter((text) => !isSame(text))).toEqual([]);
    },
  );

  it('has Spanish for all but what is listed', async () => {
    const lines = Object.entries(said).flatMap(([place, texts]) => {
      const open = texts.filter((text) => !isShown(text, place));
      const share = `${texts.length - open.length} of ${texts.length}`;
      return [`# ${place}: ${share} in Spanish`, ...open, ''];
    });
    await expect(lines.join('\n')).toMatchFileSnapshot(
      '../../engine_sentences/not_yet_in_spanish.txt',
    );
  });

  const different = (readings: Reading[]) => new Set(readings.map(({ shown }) => shown)).size > 1;

  it('is read in one way only', () => {
    const all = Object.values(said).flat();
    const twice = all.map((text) => table.readings(text)).filter(different);
    expect(twice).toEqual([]);
  });

  it('is read in one way where it stands as a title: names fill most of those, so the more specific wins', () => {
    const twice = Object.entries(said).flatMap(([place, texts]) => {
      const readings = texts.map((text) => table.readings(text, kindAt[place]));
      return readings.filter((of) => different(of.filter(({ fixed }) => fixed === of[0]?.fixed)));
    });
    expect(twice).toEqual([]);
  });
});

/** Where the first screens, and pictures, which are drawn once, have it all before the rest is fetched. */
const fromTheStart = [
  'bill of quantities',
  'blends',
  'checks of placing',
  'confidences',
  'descriptions of pictures',
  'headlines',
  'sentences of findings',
  'sentences of walks',
  'titles of findings',
  'titles of pictures',
  'what to do next',
  'words in pictures',
];

describe('while the rest is being fetched', () => {
  const all = Object.entries(said).flatMap(([place, texts]) =>
    texts.map((text) => [place, text] as const),
  );
  const readAll = () => all.map(([place, text]) => readEngine(text, kindAt[place]));
  const atFirst = readAll();

  it('has Spanish for what the first screens say', () => {
    const open = all.filter(
      ([place, text], at) =>
        fromTheStart.includes(place) && isShown(text, place) && !isWhole(atFirst[at] ?? []),
    );
    expect(open).toEqual([]);
  });

  it('shows nothing that is shown otherwise afterwards', async () => {
    const sign = 'wind speed over water';
    await expect.poll(() => readEngine(sign, 'meaning')[0]?.asWritten).toBe(false);
    const later = readAll();
    const otherwise = all.filter(
      (_, at) =>
        isWhole(atFirst[at] ?? []) && JSON.stringify(atFirst[at]) !== JSON.stringify(later[at]),
    );
    expect(otherwise).toEqual([]);
    expect(
      all.filter(([place, text], at) => isWhole(later[at] ?? []) !== isShown(text, place)),
    ).toEqual([]);
  });
});

describe('the patterns', () => {
  const all = [sentences, ...Object.values(kinds)].flatMap((words) => Object.entries(words));

  it('have the same gaps in both languages', () => {
    const namesIn = (pattern: string) => new Set(partsOf(pattern).gaps.map(({ name }) => name));
    for (const [written, shown] of all) expect(namesIn(shown), written).toEqual(namesIn(written));
  });

  it('have marks of gaps on the left only, and kinds that are there', () => {
    for (const [written, shown] of all) {
      const { gaps } = partsOf(written);
      for (const { of } of gaps) if (of) expect(kinds, written).toHaveProperty(of);
      expect(new Set(gaps.map(({ name }) => name)).size, written).toBe(gaps.length);
      for (const { mark } of partsOf(shown).gaps) expect(mark, shown).toBe('');
    }
  });

  it('have words between their gaps', () => {
    for (const [written] of all) {
      const between = partsOf(written).texts.slice(1, -1);
      expect(between.includes(''), written).toBe(false);
    }
  });
});
