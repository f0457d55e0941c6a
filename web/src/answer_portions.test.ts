import { expect, it } from 'vitest';
import { inPortions, putPortion, rowsInPortion } from './answer_portions';

function takenIn(answer: unknown): unknown {
  const { frame, portions } = inPortions(answer);
  const whole = structuredClone(frame);
  for (const portion of portions) putPortion(whole, structuredClone(portion));
  return whole;
}

it('puts together what was taken apart, in its order', () => {
  const many = Array.from({ length: 2.5 * rowsInPortion }, (_, row) => ({ row }));
  const answer = {
    findings: { headline: { outcome: 'meets' }, findings: many },
    state: { looks: Object.fromEntries(many.map(({ row }) => [`look-${row}`, { row }])), lots: {} },
    few: [1, 2, 3],
    none: null,
  };
  expect(takenIn(answer)).toEqual(answer);
  expect(JSON.stringify(takenIn(answer))).toBe(JSON.stringify(answer));
  const { portions } = inPortions(answer);
  expect(portions).toHaveLength(6);
  expect(Math.max(...portions.map(({ rows }) => rows.length))).toBe(rowsInPortion);
});

it('leaves what is short as it is', () => {
  for (const answer of [{}, [], { problems: [{ what: 'no' }] }, 'text', null]) {
    expect(inPortions(answer)).toEqual({ frame: answer, portions: [] });
  }
});

it('holds a record whose keys are numbers or names of the language', () => {
  const keys = ['2', '1', 'toString', 'constructor', ...Array(rowsInPortion).keys()].map(String);
  const answer = { state: Object.fromEntries([...keys, '__proto__'].map((key) => [key, key])) };
  const whole = takenIn(answer) as typeof answer;
  expect(Object.entries(whole.state)).toEqual(Object.entries(answer.state));
});
