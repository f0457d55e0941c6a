import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { partsOf } from '../written/sentence_pattern';
import { SentenceTable } from '../written/sentence_table';
import { kinds, sentences } from './spanish/sentences';

/** What the engine says of the examples, by where it stands (`engine_sentences/gather.mjs`). */
const said = JSON.parse(
  readFileSync(
    join(import.meta.dirname, '../../engine_sentences/sentences_of_examples.json'),
    'utf8',
  ),
) as Record<string, string[]>;

const table = new SentenceTable(sentences, kinds);
const isShown = (text: string) => table.pieces(text).every(({ asWritten }) => !asWritten);

/** Where every text has Spanish: what is read at the rock. */
const complete = ['checks of placing', 'sentences of walks'];

describe('what the engine says of the examples', () => {
  it('is there to be read', () => {
    expect(Object.values(said).flat().length).toBeGreaterThan(4000);
  });

  it.each(complete)('has Spanish for all %s', (place) => {
    expect(said[place]?.filter((text) => !isShown(text))).toEqual([]);
  });

  it('has Spanish for all but what is listed', async () => {
    const lines = Object.entries(said).flatMap(([place, texts]) => {
      const open = texts.filter((text) => !isShown(text));
      const share = `${texts.length - open.length} of ${texts.length}`;
      return [`# ${place}: ${share} in Spanish`, ...open, ''];
    });
    await expect(lines.join('\n')).toMatchFileSnapshot(
      '../../engine_sentences/not_yet_in_spanish.txt',
    );
  });

  it('is read in one way only', () => {
    const twice = Object.values(said)
      .flat()
      .map((text) => table.readings(text))
      .filter((readings) => readings.length > 1);
    expect(twice).toEqual([]);
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
