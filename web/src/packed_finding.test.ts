import { expect, it } from 'vitest';
import answer from '../test_fixtures/assess_answer.json';
import type { Finding } from './findings';
import { isFinding, isPacked, packed, unpacked } from './packed_finding';

const findings = answer.findings.findings as unknown as Finding[];

it('reads the same once it is packed and unpacked', () => {
  expect(findings.length).toBeGreaterThan(0);
  for (const finding of findings) {
    expect(isFinding(finding)).toBe(true);
    const sent = structuredClone(packed(finding));
    expect(isPacked(sent)).toBe(true);
    const again = unpacked(sent);
    for (const key of Object.keys(finding) as (keyof Finding)[]) {
      expect(again[key]).toEqual(finding[key]);
    }
    expect(again.steps).toBe(again.steps);
    expect(JSON.parse(JSON.stringify(again))).toEqual(finding);
  }
});

it('takes nothing else for a finding', () => {
  for (const other of [null, 'text', [], {}, { steps: [] }]) expect(isFinding(other)).toBe(false);
});
