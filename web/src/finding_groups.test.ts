import { expect, it } from 'vitest';
import answer from '../test_fixtures/assess_answer.json';
import { countOutcomes, groupFindings } from './finding_groups';
import type { Findings } from './findings';

const { findings } = answer.findings as unknown as Findings;

it('keeps every finding, in the order of the engine', () => {
  const groups = groupFindings(findings);
  expect(groups.flatMap((group) => group.findings)).toEqual(findings);
});

it('puts neighbours on one matter under one heading', () => {
  const headings = groupFindings(findings).map(({ heading }) => heading);
  expect(headings[0]).toBe('Water · zone outer bank');
  expect(headings.at(-1)).toBe('Remedy · zone outer bank · lot first deliveries');
  expect(groupFindings(findings).at(-1)?.findings.length).toBe(3);
});

it('heads what is said of a reach with the reach', () => {
  const water = findings[0] as Findings['findings'][number];
  const profile = { ...water, about: { reach: 'road-crossing' } };
  expect(groupFindings([profile])[0]?.heading).toBe('Water · reach road crossing');
});

it('counts each outcome once and leaves out what does not occur', () => {
  const counts = countOutcomes(findings);
  expect(counts.reduce((sum, { number }) => sum + number, 0)).toBe(findings.length);
  expect(counts[0]).toEqual({ outcome: 'falls short', number: 1 });
  expect(countOutcomes(findings.filter(({ outcome }) => outcome === 'meets')).length).toBe(1);
});
