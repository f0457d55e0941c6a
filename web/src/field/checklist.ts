/** The checks that the design of a zone asks for, as the engine tells them of the open site. */
import type { Outcome } from '../findings';
import { type SiteAnswer, useSiteAnswer } from '../site_answer';

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

/** The checklist of a zone; empty while the engine is at work. */
export function useChecklist(zone: string): SiteAnswer<Checklist> {
  return useSiteAnswer('checklist', 'checklist', 'zone', zone);
}
