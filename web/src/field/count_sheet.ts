/** What a count or a weighing of a lot begins with, as the engine tells it: sizes to sort by, ways of picking. */
import { type SiteAnswer, useSiteAnswer } from '../site_answer';
import type { CountBin } from './count_tally';

export interface CountSheet {
  lot: string;
  name: string;
  class: string;
  bins: CountBin[];
  pickings: { word: string; meaning: string }[];
}

/** The sheet of a lot; without one and without problems the engine is at work. */
export function useCountSheet(lot: string): SiteAnswer<CountSheet> {
  return useSiteAnswer('count-sheet', 'count_sheet', 'lot', lot);
}
