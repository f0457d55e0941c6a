/**
 * The open site and its record on this device. Everything a user changes goes through `change`:
 * it is on the device before the screen shows it.
 */
import { signal } from '@preact/signals';
import type { NamedText } from '../findings';
import { author } from '../settings';
import type { SiteFiles } from '../site_files';
import type { Photo } from './photo';
import { holdPhotos, sweepPhotos } from './photo_sweep';
import { withoutPositions } from './position';
import { type Draft, DraftEnded, type KeptSite, RecordDatabase, type Tap } from './record_database';
import {
  type Change,
  documentOf,
  freshId,
  headsOf,
  type Revision,
  type SiteDocument,
  siteIdOf,
  utcNow,
  withParents,
} from './revision';

/** The site that is open; its `document` is what the engine is asked about. */
export const openedSite = signal<SiteFiles | undefined>(undefined);

/** The sites kept on this device, the last opened first. */
export const keptSites = signal<KeptSite[]>([]);

/** Why the record cannot be kept on this device, where it cannot. */
export type RecordTrouble =
  'not available' | 'no room' | 'not written' | 'reads otherwise' | 'ended elsewhere';
export const recordTrouble = signal<RecordTrouble | undefined>(undefined);

/** What was tapped or filled in could not be kept. */
export class RecordFailure extends Error {
  constructor(
    readonly trouble: RecordTrouble,
    readonly detail: string,
  ) {
    super(`${trouble}: ${detail}`);
  }
}

const lastSiteKey = 'proofstone.site';

let opening: Promise<RecordDatabase> | undefined;

/** The record of this device; opened when it is first asked for. */
export function recordDatabase(): Promise<RecordDatabase> {
  opening ??= RecordDatabase.open();
  opening.catch(() => (opening = undefined));
  return opening;
}

/** Another tab wrote to the record of a site. */
const otherTabs =
  typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('proofstone.record');

function failureOf(error: unknown): RecordFailure {
  if (error instanceof RecordFailure) return error;
  if (error instanceof DraftEnded) return new RecordFailure('ended elsewhere', error.message);
  const name = error instanceof DOMException ? error.name : '';
  const trouble: RecordTrouble =
    name === 'QuotaExceededError' ? 'no room' : name === '' ? 'not written' : 'not available';
  return new RecordFailure(trouble, String(error));
}

/** Does what writes to the record; where it fails, the screen says so and nothing is pretended. */
async function writing<Result>(work: (record: RecordDatabase) => Promise<Result>): Promise<Result> {
  try {
    const result = await work(await recordDatabase());
    recordTrouble.value = undefined;
    return result;
  } catch (error) {
    const failure = failureOf(error);
    recordTrouble.value = failure.trouble;
    throw failure;
  }
}

async function listSites(): Promise<void> {
  try {
    const sites = await (await recordDatabase()).sites();
    keptSites.value = sites.sort((a, b) => (a.opened < b.opened ? 1 : -1));
  } catch (error) {
    recordTrouble.value = failureOf(error).trouble;
  }
}

function siteFiles(
  kept: Pick<KeptSite, 'id' | 'name' | 'origin'>,
  revisions: Revision[],
  files: NamedText[],
): SiteFiles {
  return {
    label: kept.name,
    origin: kept.origin,
    kept: kept.id,
    document: JSON.stringify(documentOf(revisions)),
    files,
  };
}

function rememberOpen(id: string | undefined): void {
  try {
    if (id === undefined) localStorage.removeItem(lastSiteKey);
    else localStorage.setItem(lastSiteKey, id);
  } catch {
    // Then the example opens next time.
  }
}

/** The site that was open last on this device, if it is kept. */
export function lastOpenSite(): string | undefined {
  try {
    return localStorage.getItem(lastSiteKey) ?? undefined;
  } catch {
    return undefined;
  }
}

/** A kept site as it stands now. */
export async function readKeptSite(id: string): Promise<SiteFiles | undefined> {
  const record = await recordDatabase();
  const kept = await record.site(id);
  if (!kept) return undefined;
  await record.noteOpened(id, utcNow());
  rememberOpen(id);
  void listSites();
  return siteFiles(kept, await record.revisions(id), await record.files(id));
}

/** The document as the record holds it; undefined where the text is not one. */
function documentIn(text: string): SiteDocument | undefined {
  try {
    const document = JSON.parse(text) as Partial<SiteDocument>;
    const revisions = document.revisions;
    const whole =
      document.proofstone === 'site' && Array.isArray(revisions) && revisions.length > 0;
    return whole ? documentOf(withParents(revisions)) : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Keeps a site on this device, together with what is kept of it already. Rejects with RecordFailure,
 * "reads otherwise" where the two cannot be one.
 */
export async function keepSite(site: SiteFiles, name: string): Promise<SiteFiles> {
  const document = documentIn(site.document);
  const first = document?.revisions[0];
  if (!document || !first) return site;
  const id = await siteIdOf(first);
  const kept: KeptSite = {
    // An example is begun upon again and again, and each time it is a record of its own.
    id: site.origin === 'example' ? freshId(id) : id,
    name,
    origin: site.origin,
    opened: utcNow(),
    heads: [],
  };
  const both = await writing(async (record) => {
    const taken = await record.takeIn(kept, { revisions: document.revisions, files: site.files });
    if ('kind' in taken) throw new RecordFailure('reads otherwise', taken.name);
    return taken;
  });
  rememberOpen(kept.id);
  void navigator.storage?.persist?.();
  void listSites();
  return siteFiles(kept, both.revisions, both.files);
}

/** Leaves a site on the device, but opens something else next time. */
export function forgetOpenSite(): void {
  rememberOpen(undefined);
}

let keeping: { site: SiteFiles; kept: Promise<SiteFiles> } | undefined;

/** The open site on this device. The first change of an example begins a record, once. */
async function keptOpenSite(): Promise<SiteFiles & { kept: string }> {
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

/** Reads the open site anew: this tab or another has appended to it. */
async function readAnew(id: string): Promise<void> {
  const record = await recordDatabase();
  const [kept, revisions, files] = await Promise.all([
    record.site(id),
    record.revisions(id),
    record.files(id),
  ]);
  if (kept && openedSite.peek()?.kept === id) openedSite.value = siteFiles(kept, revisions, files);
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
  await readAnew(site.kept);
  made(site.kept, revision);
  otherTabs?.postMessage(site.kept);
  return revision;
}

/** The revisions of a site in the order in which this device has them. */
export function revisionsOf(site: SiteFiles): Revision[] {
  return documentIn(site.document)?.revisions ?? [];
}

/** The document of a site without the places where things were taken down, now or before. */
export function withoutPlaces(site: SiteFiles): string {
  const document = documentIn(site.document);
  if (!document) return site.document;
  const revisions = document.revisions.map(withoutPositions);
  const told = revisions.some((revision, index) => revision !== document.revisions[index]);
  return told ? JSON.stringify(documentOf(revisions)) : site.document;
}

/** The document of the open site with changes that are not in the record yet: what would be. */
export function documentWith(site: SiteFiles, changes: Change[]): string {
  const document = documentIn(site.document);
  if (!document) return site.document;
  const trial: Revision = {
    id: freshId('trial'),
    after: headsOf(document.revisions),
    time: utcNow(),
    author: 'trial',
    note: 'trial',
    changes,
  };
  return JSON.stringify(documentOf([...document.revisions, trial]));
}

/** Begins something that is put into the record later. */
export async function beginDraft(kind: Draft['kind'], about: unknown): Promise<Draft> {
  const site = await keptOpenSite();
  const draft = { id: freshId('draft'), site: site.kept, kind, begun: utcNow(), about };
  await writing((record) => record.keepDraft(draft));
  return draft;
}

export function keepTap(draft: string, what: unknown): Promise<Tap> {
  return writing((record) => record.keepTap(draft, what));
}

/** Keeps a photo on the device before anything names it. */
export async function keepPhoto(photo: Photo): Promise<void> {
  await holdPhotos();
  return writing((record) => record.keepPhoto(photo));
}

/** The photos with these hashes that this device has. */
export async function photosOnDevice(hashes: readonly string[]): Promise<Photo[]> {
  try {
    const record = await recordDatabase();
    const found = await Promise.all(hashes.map((hash) => record.photo(hash)));
    return found.filter((photo) => photo !== undefined);
  } catch {
    return [];
  }
}

export function dropDraft(draft: string): Promise<void> {
  return writing((record) => record.dropDraft(draft));
}

/** Follows what other tabs write, and lists what this device keeps. */
export function startRecord(): void {
  void listSites();
  // What is left over hurts nobody if it stays.
  void recordDatabase()
    .then(sweepPhotos)
    .catch(() => undefined);
  otherTabs?.addEventListener('message', ({ data }) => {
    if (openedSite.peek()?.kept === data) void readAnew(data as string);
    void listSites();
  });
}
