/** What a count or a weighing of a lot begins with, as the engine tells it: sizes to sort by, ways of picking. */
import { useEffect, useState } from 'preact/hooks';
import { engine } from '../engine';
import type { Problem } from '../findings';
import { openedSite } from '../record/site_record';
import { units } from '../settings';
import { strings } from '../strings';
import type { CountBin } from './count_tally';

export interface CountSheet {
  lot: string;
  name: string;
  class: string;
  bins: CountBin[];
  pickings: { word: string; meaning: string }[];
}

/** The sheet of a lot; without one and without problems the engine is at work. */
export function useCountSheet(lot: string): { sheet: CountSheet | undefined; problems: Problem[] } {
  const [sheet, setSheet] = useState<CountSheet | undefined>(undefined);
  const [problems, setProblems] = useState<Problem[]>([]);
  const site = openedSite.value;
  const system = units.value;
  useEffect(() => {
    if (!site) return;
    engine
      .ask<{ count_sheet?: CountSheet; problems?: Problem[] }>({
        ask: 'count-sheet',
        document: site.document,
        files: site.files,
        units: system,
        lot,
      })
      .then((answer) => {
        setSheet(answer.count_sheet);
        setProblems(answer.problems ?? []);
      })
      .catch(() => setProblems([strings.problems.engineSilent()]));
  }, [site, lot, system]);
  return { sheet, problems };
}
