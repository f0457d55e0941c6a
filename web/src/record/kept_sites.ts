/** The sites that this device keeps: which there are, which was open last, taking one in. */
import { signal } from '@preact/signals';
import type { NamedText } from '../findings';
import type { SiteFiles } from '../site_files';
import { noteTrouble, recordDatabase, RecordFailure, writing } from './record_access';
import type { KeptSite, RecordDatabase } from './record_database';
import { freshId, type Revision, siteIdOf, utcNow } from './revision';
import { documentIn, siteOf } from './site_text';

/** The sites kept on this device, the last opened first. */
export const keptSites = signal<KeptSite[]>([]);

const lastSiteKey = 'proofstone.site';

/** Lists anew what this device keeps. */
export async function listSites(): Promise<void> {
  try {
    const sites = await (await recordDatabase()).sites();
    keptSites.value = sites.sort((a, b) => (a.opened < b.opened ? 1 : -1));
  } catch (error) {
    noteTrouble(error);
  }
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

/** Leaves a site on the device, but opens something else next time. */
export function forgetOpenSite(): void {
  rememberOpen(undefined);
}

/** A kept site as it stands now. */
export async function readKeptSite(id: string): Promise<SiteFiles | undefined> {
  const record = await recordDatabase();
  const kept = await record.site(id);
  if (!kept) return undefined;
  await record.noteOpened(id, utcNow());
  rememberOpen(id);
  void listSites();
  return siteOf(kept, await record.revisions(id), await record.files(id));
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
  const both = await writing((record) => takenIn(record, kept, document.revisions, site.files));
  rememberOpen(kept.id);
  void navigator.storage?.persist?.();
  void listSites();
  return siteOf(kept, both.revisions, both.files);
}

async function takenIn(
  record: RecordDatabase,
  kept: KeptSite,
  revisions: Revision[],
  files: NamedText[],
) {
  const taken = await record.takeIn(kept, { revisions, files });
  if ('kind' in taken) throw new RecordFailure('reads otherwise', taken.name);
  return taken;
}
