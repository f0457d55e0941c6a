/** Orders nothing and judges nothing: puts neighbouring findings on one matter under one heading. */
import { engineText } from './engine_text';
import type { Finding, Outcome } from './findings';
import { strings } from './strings';

export interface FindingGroup {
  heading: string;
  findings: Finding[];
}

function capitalised(text: string): string {
  return text.charAt(0).toLocaleUpperCase() + text.slice(1);
}

function readable(id: string): string {
  return id.replaceAll('-', ' ');
}

/** "Rock size · zone outer bank", "Water · reach crossing" */
export function groupHeading({ topic, about }: Finding): string {
  const parts = [capitalised(engineText(topic))];
  if (about.reach) parts.push(strings.findings.reach(readable(about.reach)));
  if (about.zone) parts.push(strings.findings.zone(readable(about.zone)));
  if (about.lot) parts.push(strings.findings.lot(readable(about.lot)));
  return parts.join(' · ');
}

/** Groups in the order of the engine: a new one wherever topic, reach, zone or lot changes. */
export function groupFindings(findings: readonly Finding[]): FindingGroup[] {
  const groups: FindingGroup[] = [];
  for (const finding of findings) {
    const heading = groupHeading(finding);
    const last = groups.at(-1);
    if (last?.heading === heading) last.findings.push(finding);
    else groups.push({ heading, findings: [finding] });
  }
  return groups;
}

/** Outcomes in the order a reader needs them: what must be acted on comes first. */
export const readingOrder: readonly Outcome[] = [
  'falls short',
  'not yet known',
  'ask the designer',
  'meets',
];

/** How many findings came to each outcome; outcomes of which there are none are left out. */
export function countOutcomes(
  findings: readonly Finding[],
): { outcome: Outcome; number: number }[] {
  return readingOrder
    .map((outcome) => ({
      outcome,
      number: findings.filter((finding) => finding.outcome === outcome).length,
    }))
    .filter(({ number }) => number > 0);
}
