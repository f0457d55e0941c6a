/** What the engine answers to a question about an item of the open site, for a screen to draw. */
import { useEffect, useState } from 'preact/hooks';
import { engine } from './engine';
import type { Problem } from './findings';
import { openedSite } from './record/site_record';
import { units } from './settings';
import { strings } from './strings';

/** Without what was asked for and without problems the engine is at work. */
export interface SiteAnswer<Told> {
  told?: Told | undefined;
  problems: Problem[];
}

/**
 * The answer to `ask` about an item, which the engine gives under `named`; asked anew whenever site
 * or units change. Until the new one is there the last one stands; one that comes too late is dropped.
 */
export function useSiteAnswer<Told>(
  ask: string,
  named: string,
  about: 'lot' | 'zone',
  id: string,
): SiteAnswer<Told> {
  const [answer, setAnswer] = useState<SiteAnswer<Told>>({ problems: [] });
  const site = openedSite.value;
  const system = units.value;
  useEffect(() => {
    if (!site) return undefined;
    let wanted = true;
    engine
      .ask<Record<string, unknown>>({
        ask,
        document: site.document,
        files: site.files,
        units: system,
        [about]: id,
      })
      .then(
        ({ problems = [], ...rest }) => ({
          told: rest[named] as Told | undefined,
          problems: problems as Problem[],
        }),
        () => ({ problems: [strings.problems.engineSilent()] }),
      )
      .then((next) => {
        if (wanted) setAnswer(next);
      });
    return () => {
      wanted = false;
    };
  }, [site, ask, named, about, id, system]);
  return answer;
}
