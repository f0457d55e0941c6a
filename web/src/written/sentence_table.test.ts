import { describe, expect, it } from 'vitest';
import { SentenceTable } from './sentence_table';

const table = new SentenceTable(
  {
    'Nothing to do.': 'Nada que hacer.',
    'Measure {n#} stones more.': 'Mida {n} piedras más.',
    '{lot} is broken: {limits*limit}.': 'No se cumple {lot}: {limits}.',
    '{size#} in {zone}: {state!}': 'En {zone}, {size}: {state}',
    'Look: {how!}.': 'Mire: {how}.',
    'rod and level, or a straight edge': 'mira y nivel, o una regla recta',
    'Seen {when@}; {note_}': 'Visto {when}; {note}',
    'Suspicion: {what;doubt}.': 'Sospecha: {what}.',
    pass: 'cumple',
  },
  {
    limit: { 'D{p#} at least {size#}': 'D{p} de al menos {size}', fines: 'finos' },
    doubt: { 'flat or long': 'planas o largas', 'much {what!limit}': 'mucho: {what}' },
  },
);

const shown = (text: string) => table.known(text);

describe('a sentence of the engine', () => {
  it('is shown whole, with numbers and names as they are', () => {
    expect(shown('Nothing to do.')).toBe('Nada que hacer.');
    expect(shown('Measure 12 stones more.')).toBe('Mida 12 piedras más.');
    expect(shown('24.0 in in Outer bank: pass')).toBe('En Outer bank, 24.0 in: cumple');
  });

  it('is not guessed', () => {
    expect(shown('Nothing to do')).toBeUndefined();
    expect(shown('Nothing to do. ')).toBeUndefined();
    expect(shown('Measure some stones more.')).toBeUndefined();
    expect(shown('Measure 12 stones more')).toBeUndefined();
    expect(shown('Measure 12 furlongs stones more.')).toBeUndefined();
    expect(shown('24.0 in in Outer bank: perhaps')).toBeUndefined();
    expect(shown('')).toBeUndefined();
  });

  it('looks up what stands in its gaps, lists too', () => {
    expect(shown('Class III is broken: D15 at least 7.3 in, D50 at least 9 in and fines.')).toBe(
      'No se cumple Class III: D15 de al menos 7.3 in, D50 de al menos 9 in y finos.',
    );
    expect(shown('Class III is broken: D15 at least 7.3 in and dust.')).toBeUndefined();
    expect(shown('Look: rod and level, or a straight edge.')).toBe(
      'Mire: mira y nivel, o una regla recta.',
    );
    expect(shown('Suspicion: flat or long; much fines.')).toBe(
      'Sospecha: planas o largas; mucho: finos.',
    );
  });

  it('keeps words of one kind to their gaps', () => {
    expect(shown('fines')).toBeUndefined();
    expect(shown('Class III is broken: pass.')).toBeUndefined();
  });

  it('keeps what somebody wrote, whatever it is', () => {
    const note = 'it {lot} $& ¿? "x": 3.5 in. Nothing to do.';
    expect(shown(`Seen 2026-06-01T15:00:00Z; ${note}`)).toBe(`Visto 2026-06-01T15:00:00Z; ${note}`);
    expect(shown('Seen at noon; well')).toBeUndefined();
  });

  it('takes no sentence, and no article, for a name', () => {
    expect(shown('Nothing to do. Class III is broken: fines.')).toBeUndefined();
    expect(shown('the rock is broken: fines.')).toBeUndefined();
    expect(shown('M. Okafor is broken: fines.')).toBe('No se cumple M. Okafor: finos.');
  });
});

describe('a text of several sentences', () => {
  it('is shown sentence by sentence', () => {
    expect(table.pieces('Measure 3 stones more. Nothing to do.')).toEqual([
      { text: 'Mida 3 piedras más.', asWritten: false },
      { text: 'Nada que hacer.', asWritten: false },
    ]);
  });

  it('keeps as written what is not known, and says so', () => {
    expect(
      table.pieces('Fig. 3 of St. John says 2.5 ft. Is it so? Nothing to do. No more.'),
    ).toEqual([
      { text: 'Fig. 3 of St. John says 2.5 ft. Is it so?', asWritten: true },
      { text: 'Nada que hacer.', asWritten: false },
      { text: 'No more.', asWritten: true },
    ]);
  });

  it('loses no letter of what is not known', () => {
    for (const text of ['', ' ', 'a', ' A. B. C', 'x. Y.  Z', 'Ends. ', '1. 2. 3.']) {
      const pieces = table.pieces(text);
      expect(pieces.map((piece) => piece.text).join(' ')).toBe(text);
      expect(pieces.every(({ asWritten }) => asWritten)).toBe(true);
    }
  });
});

it('tells of patterns that read one text in two ways', () => {
  const doubtful = new SentenceTable({
    '{a} of {b}': '{a} de {b}',
    'Size of {b}': 'Tamaño de {b}',
  });
  expect(doubtful.readings('Size of rock').map(({ shown: one }) => one)).toEqual([
    'Tamaño de rock',
    'Size de rock',
  ]);
  expect(doubtful.known('Size of rock')).toBe('Tamaño de rock');
  expect(table.readings('Nothing to do.')).toHaveLength(1);
});

it('takes long and hostile texts in good time', () => {
  const long = `Class III is broken: ${'D15 at least 7 in, '.repeat(400)}dust.`;
  const begun = performance.now();
  expect(table.known(long)).toBeUndefined();
  expect(table.pieces('A. '.repeat(2000)).length).toBe(1);
  expect(performance.now() - begun).toBeLessThan(2000);
});
