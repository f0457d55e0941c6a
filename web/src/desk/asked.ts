/** What the engine answers when a page of the desk asks about the open site. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { LatestQuestion } from '../latest_question';
import type { Change } from '../record/revision';
import { documentWith, openedSite } from '../record/site_record';
import { units } from '../settings';
import { pictureWidth } from '../site_assessment';

/** The engine is asked once nothing was chosen or typed for so long. */
const stillMs = 200;

export interface Asked<Answer> {
  answer: Answer | undefined;
  /** Another answer is on the way. */
  looking: boolean;
}

/**
 * Asks whenever the question, the site, the units or the width are other ones; nothing where there is no
 * question. `changes` are asked about as if they were kept.
 */
export function useAsked<Answer>(
  question: object | undefined,
  changes: readonly Change[] = [],
): Asked<Answer> {
  const [answered, setAnswered] = useState<{ to: string; answer: Answer } | undefined>(undefined);
  const asking = useRef<LatestQuestion<{ request: object; key: string }, Answer> | undefined>(
    undefined,
  );
  const site = openedSite.value;
  const width = pictureWidth.value;
  const system = units.value;
  const key = JSON.stringify([question, changes, system, width, site?.document]);

  useEffect(() => {
    asking.current = new LatestQuestion(
      ({ request }) => request,
      (answer, { key: to }) => setAnswered({ to, answer }),
    );
    return () => asking.current?.stop();
  }, []);

  useEffect(() => {
    if (!site || question === undefined || width === 0) return undefined;
    const request = {
      ...question,
      document: changes.length > 0 ? documentWith(site, [...changes]) : site.document,
      files: site.files,
      units: system,
    };
    const waiting = setTimeout(() => asking.current?.ask({ request, key }), stillMs);
    return () => clearTimeout(waiting);
  }, [key]);

  if (question === undefined) return { answer: undefined, looking: false };
  return { answer: answered?.answer, looking: answered?.to !== key };
}
