/** What the engine answers when a page of the desk asks about the open site. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Asking, SiteRequest } from '../engine';
import { LatestQuestion } from '../latest_question';
import type { Change } from '../record/revision';
import { openedSite } from '../record/site_record';
import { documentWith } from '../record/site_text';
import { units } from '../settings';
import { pictureWidth } from '../site_assessment';
import type { SiteFiles } from '../site_files';

/** The engine is asked once nothing was chosen or typed for so long. */
const stillMs = 200;

export interface Asked<Answer> {
  answer: Answer | undefined;
  /** Another answer is on the way. */
  looking: boolean;
}

interface Question {
  /** Tells one question from the next. */
  key: object;
  site: SiteFiles;
  question: Asking;
  changes: Change[];
}

function requestOf({ site, question, changes }: Question): SiteRequest {
  return {
    ...question,
    document: changes.length > 0 ? documentWith(site, changes) : site.document,
    files: site.files,
    units: units.peek(),
  };
}

/**
 * Asks whenever the question, the site, the units or the width are other ones; nothing where there is no
 * question. `changes` are asked about as if they were kept.
 */
export function useAsked<Answer>(
  question: Asking | undefined,
  changes: readonly Change[] = [],
): Asked<Answer> {
  const [answered, setAnswered] = useState<{ to: object; answer: Answer } | undefined>(undefined);
  const asking = useRef<LatestQuestion<Question, Answer> | undefined>(undefined);
  const site = openedSite.value;
  const width = pictureWidth.value;
  const system = units.value;
  const text = JSON.stringify([question, changes, system, width]);
  const key = useMemo(() => ({}), [text, site]);

  useEffect(() => {
    asking.current = new LatestQuestion(requestOf, (answer, { key: to }) =>
      setAnswered({ to, answer }),
    );
    return () => asking.current?.stop();
  }, []);

  useEffect(() => {
    if (!site || question === undefined || width === 0) return undefined;
    const next = { key, site, question, changes: [...changes] };
    const waiting = setTimeout(() => asking.current?.ask(next), stillMs);
    return () => clearTimeout(waiting);
  }, [key]);

  if (question === undefined) return { answer: undefined, looking: false };
  return { answer: answered?.answer, looking: answered?.to !== key };
}
