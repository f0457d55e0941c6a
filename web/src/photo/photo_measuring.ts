/** The taps of a draft of photos, and what the engine says of them: each is kept before it counts. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { LiveLot } from '../field/live_lot';
import { sentenceOf } from '../field/begin_count';
import { observer } from '../field/observer';
import { engine } from '../engine';
import type { AssessAnswer, Problem } from '../findings';
import type { Draft, Tap } from '../record/record_database';
import { keepTap } from '../record/drafts';
import { recordDatabase } from '../record/record_access';
import { change, openedSite } from '../record/site_record';
import { documentWith } from '../record/site_text';
import { units } from '../settings';
import { pictureWidth } from '../site_assessment';
import { type Measured, measured, type PhotoDraft, type PhotoTap } from './photo_draft';
import { lookChanges } from './photo_look';
import { photoWords as words } from '../strings';

async function keptTaps(draft: Draft): Promise<Tap[]> {
  return (await recordDatabase()).taps(draft.id);
}

function tapsIn(kept: readonly { what: unknown }[]): PhotoTap[] {
  return kept.map(({ what }) => what as PhotoTap);
}

function changesOf(draft: Draft, now: Measured) {
  return lookChanges(draft.about as PhotoDraft, now, { when: draft.begun, ...observer() });
}

/**
 * Puts all that is on the device into the record, unless the engine would not take it; resolves with
 * what it says then.
 */
export async function finish(draft: Draft): Promise<Problem[]> {
  const site = openedSite.peek();
  const now = measured(tapsIn(await keptTaps(draft)));
  const changes = changesOf(draft, now);
  if (!site || changes.length === 0) return [];
  const judged = await engine.ask<{ problems?: Problem[] }>({
    ask: 'validate',
    document: documentWith(site, changes),
    files: site.files,
  });
  if (judged.problems?.length) return judged.problems;
  await change(changes, words.note(now.photos.length), { done: draft.id });
  return [];
}

export function useMeasuring(draft: Draft) {
  const [taps, setTaps] = useState<{ what: unknown }[] | undefined>(undefined);
  const [answer, setAnswer] = useState<AssessAnswer | undefined>(undefined);
  const [trouble, setTrouble] = useState('');
  const kept = useRef<{ what: unknown }[]>([]);
  const live = useRef<LiveLot | undefined>(undefined);
  const now = taps && measured(tapsIn(taps));
  const { lot } = draft.about as PhotoDraft;

  useEffect(() => {
    live.current = new LiveLot(setAnswer);
    void keptTaps(draft).then((all) => {
      kept.current = all;
      setTaps(all);
    });
    return () => live.current?.stop();
  }, [draft.id]);

  useEffect(() => {
    const site = openedSite.value;
    const changes = now ? changesOf(draft, now) : [];
    if (!site || changes.length === 0) {
      setAnswer(undefined);
      return;
    }
    live.current?.ask({ site, lot, changes, units: units.value, width: pictureWidth.value });
  }, [taps, units.value, pictureWidth.value, openedSite.value]);

  /** Whether it is on the device now. */
  const tap = async (what: PhotoTap): Promise<boolean> => {
    try {
      const one = await keepTap(draft.id, what);
      // Another window may measure along: then its taps are read as well.
      const alone = one.number === kept.current.length;
      kept.current = alone ? [...kept.current, one] : await keptTaps(draft);
      setTaps(kept.current);
      setTrouble('');
      return true;
    } catch (error) {
      setTrouble(sentenceOf(error));
      return false;
    }
  };
  return { now, answer, tap, trouble };
}
