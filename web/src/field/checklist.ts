/** The checks that the design of a zone asks for, as the engine tells them of the open site. */
import { useEffect, useState } from 'preact/hooks';
import { engine } from '../engine';
import type { Outcome, Problem } from '../findings';
import { openedSite } from '../record/site_record';
import { units } from '../settings';
import { strings } from '../strings';

export interface PlacingCheck {
  id: string;
  title: string;
  hold_point: boolean;
  takes: 'result' | 'lengths' | 'thicknesses' | 'loads';
  unit: string;
  fewest_points: number;
  required: string;
  tolerance: string;
  how: string;
  outcome: Outcome;
  state: string;
  evidence: string[];
  next: string;
  materials: { id: string; name: string }[];
}

export interface Checklist {
  zone: string;
  name: string;
  outcome: Outcome;
  sentence: string;
  next: string;
  cautions: string[];
  checks: PlacingCheck[];
}

export interface ChecklistAnswer {
  checklist?: Checklist;
  problems?: Problem[];
}

/** The checklist of a zone; empty while the engine is at work. */
export function useChecklist(zone: string): ChecklistAnswer {
  const [answer, setAnswer] = useState<ChecklistAnswer>({});
  const site = openedSite.value;
  const system = units.value;
  useEffect(() => {
    if (!site) return undefined;
    let wanted = true;
    engine
      .ask<ChecklistAnswer>({
        ask: 'checklist',
        document: site.document,
        files: site.files,
        units: system,
        zone,
      })
      .catch(() => ({ problems: [strings.problems.engineSilent()] }))
      .then((next) => {
        if (wanted) setAnswer(next);
      });
    return () => {
      wanted = false;
    };
  }, [site, zone, system]);
  return answer;
}
