/** What would be with changes that are not kept yet, as the engine tells it. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { AssessAnswer, NamedText, Problem } from '../findings';
import type { SiteRequest } from '../engine';
import { LatestQuestion } from '../latest_question';
import { openedSite } from '../record/site_record';
import { documentWith } from '../record/site_text';
import type { Change } from '../record/revision';
import { units } from '../settings';
import { pictureWidth } from '../site_assessment';
import type { SiteFiles } from '../site_files';

export interface Trial {
  /** The changes that the answer is about. */
  changes: readonly Change[];
  answer: AssessAnswer;
}

interface TrialQuestion {
  site: SiteFiles;
  changes: Change[];
  files: NamedText[];
}

/** The engine is asked once nothing was typed for so long. */
const stillMs = 250;

export function trialRequest(ask: string, { site, changes, files }: TrialQuestion): SiteRequest {
  return { ask, document: documentWith(site, changes), files: [...site.files, ...files] };
}

/** Problems with the places of the site in the place of those in the trial revision. */
export function placedProblems(
  problems: readonly Problem[],
  changes: readonly Change[],
): Problem[] {
  return problems.map((problem) => {
    const found = /^\/revisions\/\d+\/changes\/(\d+)\/to(.*)$/.exec(problem.where);
    const change = changes[Number(found?.[1] ?? -1)];
    return found && change && 'set' in change
      ? { ...problem, where: `${change.set}${found[2] ?? ''}` }
      : problem;
  });
}

/** Asks anew whenever changes, units or width are other ones; nothing without changes. */
export function useTrial(changes: Change[], files: NamedText[]): Trial | undefined {
  const [trial, setTrial] = useState<Trial | undefined>(undefined);
  const asking = useRef<LatestQuestion<TrialQuestion, AssessAnswer> | undefined>(undefined);
  const site = openedSite.value;
  const system = units.value;
  const width = pictureWidth.value;
  const text = JSON.stringify(changes);

  useEffect(() => {
    asking.current = new LatestQuestion(
      (question) => ({
        ...trialRequest('assess', question),
        units: units.peek(),
        pictures: { width: pictureWidth.peek() },
      }),
      (answer, question) => setTrial({ changes: question.changes, answer }),
    );
    return () => asking.current?.stop();
  }, []);

  useEffect(() => {
    if (!site || changes.length === 0 || width === 0) {
      setTrial(undefined);
      return undefined;
    }
    const waiting = setTimeout(() => asking.current?.ask({ site, changes, files }), stillMs);
    return () => clearTimeout(waiting);
  }, [site, system, width, text, files]);

  return changes.length === 0 ? undefined : trial;
}
