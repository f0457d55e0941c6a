/**
 * What was put into the record on this screen, to be taken back step by step and made again. The
 * record only grows: taking back and making again are revisions of their own.
 */
import { computed, signal } from '@preact/signals';
import { engine } from '../engine';
import { strings } from '../strings';
import type { Revision } from './revision';
import { change, openedSite } from './site_record';
import { documentBefore, revisionsOf } from './site_text';
import { inverseOf } from './undoing';

interface History {
  site: string;
  /** Made and standing, the last at the end. */
  past: Revision[];
  /** Taken back, the last at the end. */
  future: Revision[];
  /** Every revision this screen appended, those that take back too. */
  own: ReadonlySet<string>;
}

const history = signal<History | undefined>(undefined);

/** The last revision appended on this screen, whatever it did. */
export const lastMade = signal<Revision | undefined>(undefined);

function historyOf(site: string): History {
  const known = history.peek();
  return known?.site === site ? known : { site, past: [], future: [], own: new Set() };
}

function appended(site: string, revision: Revision, past: Revision[], future: Revision[]): void {
  const own = new Set([...historyOf(site).own, revision.id]);
  history.value = { site, past, future, own };
  lastMade.value = revision;
}

/** Notes a revision that this screen has made; what was taken back before cannot be made again. */
export function noteMade(site: string, revision: Revision): void {
  appended(site, revision, [...historyOf(site).past, revision], []);
}

/** Nobody else has gone on since this screen's `from` was appended. */
function stillAlone({ own, site }: History, from: Revision): boolean {
  const open = openedSite.value;
  if (open?.kept !== site) return false;
  const revisions = revisionsOf(open);
  const place = revisions.findIndex(({ id }) => id === from.id);
  return place >= 0 && revisions.slice(place).every(({ id }) => own.has(id));
}

/** What the next undoing takes back; none where another tab or person has gone on meanwhile. */
export const undoable = computed(() => {
  const last = history.value?.past.at(-1);
  return history.value && last && stillAlone(history.value, last) ? last : undefined;
});

/** What the next making again makes. */
export const redoable = computed(() => {
  const last = history.value?.future.at(-1);
  return history.value && last && stillAlone(history.value, last) ? last : undefined;
});

export async function undo(): Promise<void> {
  const revision = undoable.peek();
  const site = openedSite.peek();
  if (!revision || site?.kept === undefined) return;
  const revisions = revisionsOf(site);
  const place = revisions.findIndex(({ id }) => id === revision.id);
  const document = documentBefore(site, place);
  const answer = await engine.ask<{ state?: unknown }>({ ask: 'state', document });
  if (answer.state === undefined) return;
  const { past, future } = historyOf(site.kept);
  await change(inverseOf(revision.changes, answer.state), strings.record.undone(revision.note), {
    made: (kept, back) => appended(kept, back, past.slice(0, -1), [...future, revision]),
  });
}

export async function redo(): Promise<void> {
  const revision = redoable.peek();
  const site = openedSite.peek();
  if (!revision || site?.kept === undefined) return;
  const { past, future } = historyOf(site.kept);
  await change(revision.changes, strings.record.redone(revision.note), {
    made: (kept, again) => appended(kept, again, [...past, again], future.slice(0, -1)),
  });
}
