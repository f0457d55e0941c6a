/**
 * The open site and its record on this device. Everything a user changes goes through `change`:
 * it is on the device before the screen shows it.
 */
import { signal } from '@preact/signals';
import type { NamedText } from '../findings';
import { author } from '../settings';
import type { SiteFiles } from '../site_files';
import { keepSite, listSites } from './kept_sites';
import { sweepPhotos } from './photo_sweep';
import { recordDatabase, RecordFailure, writing } from './record_access';
import { type Change, freshId, type Revision, utcNow } from './revision';
import { revisionsOf, siteWithMore } from './site_text';

/** The site that is open; its `document` is what the engine is asked about. */
export const openedSite = signal<SiteFiles | undefined>(undefined);

/** Another tab wrote to the record of a site. */
const otherTabs =
  typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('proofstone.record');

let keeping: { site: SiteFiles; kept: Promise<SiteFiles> } | undefined;

/** The open site on this device. The first change of an example begins a record, once. */
export async function keptOpenSite(): Promise<SiteFiles & { kept: string }> {
  const site = openedSite.peek();
  if (!site) throw new RecordFailure('not written', 'no site is open');
  if (site.kept === undefined && keeping?.site !== site) {
    keeping = { site, kept: keepSite(site, site.label) };
    keeping.kept.catch(() => (keeping = undefined));
  }
  const found = site.kept === undefined && keeping ? await keeping.kept : site;
  if (found.kept === undefined) throw new RecordFailure('not written', 'this is no site document');
  if (openedSite.peek() === site && found !== site) openedSite.value = found;
  return { ...found, kept: found.kept };
}

/** Reads on in the record of the open site: this tab or another has appended to it. */
async function readOn(id: string): Promise<void> {
  const record = await recordDatabase();
  const open = openedSite.peek();
  if (open?.kept !== id) return;
  const [more, files] = await Promise.all([
    record.revisions(id, revisionsOf(open).length),
    record.files(id),
  ]);
  if (more.length === 0 && files.length === open.files.length) return;
  if (openedSite.peek() === open) openedSite.value = siteWithMore(open, more, files);
  // Another reading came first, and may have missed what this one is about.
  else await readOn(id);
}

/** What may come along with a change. */
export interface ChangeOptions {
  /** Pointers of crossing entries that the change settles. */
  settles?: string[];
  /** A draft that the revision takes the place of. */
  done?: string;
  /** Files that the changes name and the site does not have yet. */
  files?: NamedText[];
  /** Hears of the revision once it is kept, in the place of those who note what can be undone. */
  made?: (site: string, revision: Revision) => void;
}

let heard: (site: string, revision: Revision) => void = () => undefined;

/** `hear` is told of every revision made on this screen, unless its change says otherwise. */
export function whenMade(hear: (site: string, revision: Revision) => void): void {
  heard = hear;
}

/**
 * Appends one revision to the open site and shows what follows from it. Resolves once it is on the
 * device; rejects with RecordFailure, and then nothing was changed.
 */
export async function change(
  changes: Change[],
  note: string,
  { settles, done, files = [], made = heard }: ChangeOptions = {},
): Promise<Revision> {
  const site = await keptOpenSite();
  const revision = await writing((record) =>
    record.append(
      site.kept,
      {
        id: freshId('r'),
        time: utcNow(),
        author: author.peek() || 'not named',
        note,
        changes,
        ...(settles ? { settles } : {}),
      },
      { done, files },
    ),
  );
  await readOn(site.kept);
  made(site.kept, revision);
  otherTabs?.postMessage(site.kept);
  return revision;
}

/** Follows what other tabs write, and lists what this device keeps. */
export function startRecord(): void {
  void listSites();
  // What is left over hurts nobody if it stays.
  void recordDatabase()
    .then(sweepPhotos)
    .catch(() => undefined);
  otherTabs?.addEventListener('message', ({ data }) => {
    if (openedSite.peek()?.kept === data) void readOn(data as string);
    void listSites();
  });
}
