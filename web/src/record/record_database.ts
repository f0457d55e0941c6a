/**
 * The record of sites on this device, in IndexedDB. What a function here has resolved is on the
 * device: each write is one transaction that the browser is asked to bring to the disk before it
 * says so. What could not be kept rejects, and nothing half-kept stays behind.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { NamedText } from '../findings';
import { type Clash, joined, type SiteCopy } from './joined_records';
import type { Photo } from './photo';
import { headsOf, type Revision } from './revision';

/** A site that is kept on this device. */
export interface KeptSite {
  id: string;
  name: string;
  /** Where it came from: an example it was begun upon, or a site of the user's own. */
  origin: 'example' | 'device';
  opened: string;
  heads: string[];
}

/** What was begun and is not yet in the record: a count or photos, whose taps stand by themselves. */
export interface Draft {
  id: string;
  site: string;
  kind: 'stone count' | 'photo';
  begun: string;
  /** What the screen that began it needs to go on. */
  about: unknown;
}

/** One tap of a draft, in the order of `number`. */
export interface Tap {
  draft: string;
  number: number;
  what: unknown;
}

interface RecordSchema extends DBSchema {
  sites: { key: string; value: KeptSite };
  revisions: {
    key: [string, number];
    value: { site: string; place: number; revision: Revision };
  };
  files: { key: [string, string]; value: { site: string } & NamedText };
  drafts: { key: string; value: Draft; indexes: { site: string } };
  taps: { key: [string, number]; value: Tap };
  photos: { key: string; value: Photo };
}

const strict = { durability: 'strict' } as const;

/** So many revisions are read or written at a time, so that a long record holds nobody up. */
const portion = 1000;

/** Everything stored under a first key part. */
function all<Part extends string>(part: Part): IDBKeyRange {
  return IDBKeyRange.bound([part], [part, []]);
}

/** The draft is no more: another tab has put it into the record or thrown it away. */
export class DraftEnded extends Error {}

export class RecordDatabase {
  private constructor(private readonly base: IDBPDatabase<RecordSchema>) {}

  /** Opens the record, making it where there is none. `name` differs in tests. */
  static async open(name = 'proofstone'): Promise<RecordDatabase> {
    const base = await openDB<RecordSchema>(name, 2, {
      upgrade(fresh, before) {
        if (before < 2) fresh.createObjectStore('photos', { keyPath: 'hash' });
        if (before >= 1) return;
        fresh.createObjectStore('sites', { keyPath: 'id' });
        fresh.createObjectStore('revisions', { keyPath: ['site', 'place'] });
        fresh.createObjectStore('files', { keyPath: ['site', 'name'] });
        fresh.createObjectStore('drafts', { keyPath: 'id' }).createIndex('site', 'site');
        fresh.createObjectStore('taps', { keyPath: ['draft', 'number'] });
      },
      // Another tab holds a newer application: let it have the record.
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    });
    return new RecordDatabase(base);
  }

  close(): void {
    this.base.close();
  }

  sites(): Promise<KeptSite[]> {
    return this.base.getAll('sites');
  }

  site(id: string): Promise<KeptSite | undefined> {
    return this.base.get('sites', id);
  }

  /**
   * Takes a copy of a site in: all or nothing, in one transaction. Where the site is kept already,
   * what the copy has more is appended and nothing is taken away. Resolves with what is kept now, or
   * with what stands in both and differs; then nothing was changed.
   */
  async takeIn(site: KeptSite, copy: SiteCopy): Promise<SiteCopy | Clash> {
    const work = this.base.transaction(['sites', 'revisions', 'files'], 'readwrite', strict);
    const [known, entries, kept] = await Promise.all([
      work.objectStore('sites').get(site.id),
      work.objectStore('revisions').getAll(all(site.id)),
      work.objectStore('files').getAll(all(site.id)),
    ]);
    const before: SiteCopy = {
      revisions: entries.map(({ revision }) => revision),
      files: kept.map(({ name, text }) => ({ name, text })),
    };
    const both = joined(before, copy);
    if ('kind' in both) {
      await work.done;
      return both;
    }
    const { revisions, files } = both;
    const addRevisions = async () => {
      const store = work.objectStore('revisions');
      for (let from = before.revisions.length; from < revisions.length; from += portion) {
        const some = revisions.slice(from, from + portion);
        await Promise.all(
          some.map((revision, index) =>
            store.add({ site: site.id, place: from + index, revision }),
          ),
        );
      }
    };
    await Promise.all([
      work.objectStore('sites').put({ ...(known ?? site), heads: headsOf(revisions) }),
      addRevisions(),
      ...files
        .slice(before.files.length)
        .map(({ name, text }) => work.objectStore('files').add({ site: site.id, name, text })),
      work.done,
    ]);
    return both;
  }

  /** Notes when a site was opened, so that the list shows the last one first. */
  async noteOpened(id: string, opened: string): Promise<void> {
    const work = this.base.transaction('sites', 'readwrite');
    const known = await work.store.get(id);
    if (known) await work.store.put({ ...known, opened });
    await work.done;
  }

  /** The revisions of a site in their order, from a place on. */
  async revisions(site: string, from = 0): Promise<Revision[]> {
    const found: Revision[] = [];
    let next = from;
    for (;;) {
      const range = IDBKeyRange.bound([site, next], [site, []]);
      const some = await this.base.getAll('revisions', range, portion);
      found.push(...some.map(({ revision }) => revision));
      const last = some.at(-1);
      if (!last || some.length < portion) return found;
      next = last.place + 1;
    }
  }

  async files(site: string): Promise<NamedText[]> {
    return (await this.base.getAll('files', all(site))).map(({ name, text }) => ({ name, text }));
  }

  /**
   * Appends a revision upon everything that stands, whichever tab wrote it, and resolves with what
   * was written. `done` names a draft that the revision takes the place of; `files` are those that
   * its changes name and the site does not have yet.
   */
  async append(
    site: string,
    revision: Omit<Revision, 'after'>,
    { done, files = [] }: { done?: string | undefined; files?: readonly NamedText[] } = {},
  ): Promise<Revision> {
    const work = this.base.transaction(
      ['sites', 'revisions', 'files', 'drafts', 'taps'],
      'readwrite',
      strict,
    );
    const known = await work.objectStore('sites').get(site);
    if (!known) {
      work.abort();
      await work.done.catch(() => undefined);
      throw new Error(`no site ${site} is kept on this device`);
    }
    const last = await work.objectStore('revisions').openKeyCursor(all(site), 'prev');
    const place = last ? last.key[1] + 1 : 0;
    const { id, ...rest } = revision;
    const whole: Revision = { id, after: known.heads, ...rest };
    await Promise.all([
      work.objectStore('revisions').add({ site, place, revision: whole }),
      work.objectStore('sites').put({ ...known, heads: [whole.id] }),
      ...files.map(({ name, text }) => work.objectStore('files').add({ site, name, text })),
      ...(done === undefined
        ? []
        : [work.objectStore('drafts').delete(done), work.objectStore('taps').delete(all(done))]),
      work.done,
    ]);
    return whole;
  }

  /** Keeps a photo; one that is kept already is the same. */
  async keepPhoto(photo: Photo): Promise<void> {
    const work = this.base.transaction('photos', 'readwrite', strict);
    const known = await work.store.getKey(photo.hash);
    await Promise.all([...(known === undefined ? [work.store.add(photo)] : []), work.done]);
  }

  photo(hash: string): Promise<Photo | undefined> {
    return this.base.get('photos', hash);
  }

  /**
   * Drops the photos that no revision, draft or tap names, nor `alsoNamed`; resolves with how many.
   * All in one transaction, so that nothing names one meanwhile.
   */
  async dropUnnamedPhotos(alsoNamed: string): Promise<number> {
    const work = this.base.transaction(
      ['photos', 'revisions', 'drafts', 'taps'],
      'readwrite',
      strict,
    );
    const hashes = await work.objectStore('photos').getAllKeys();
    const unnamed = new Set(hashes);
    const strike = (text: string) => {
      for (const [hash] of text.matchAll(/[0-9a-f]{64}/g)) unnamed.delete(hash);
    };
    strike(alsoNamed);
    for (const store of ['revisions', 'drafts', 'taps'] as const) {
      let cursor = unnamed.size > 0 ? await work.objectStore(store).openCursor() : null;
      while (cursor && unnamed.size > 0) {
        strike(JSON.stringify(cursor.value));
        cursor = await cursor.continue();
      }
    }
    await Promise.all([
      ...[...unnamed].map((hash) => work.objectStore('photos').delete(hash)),
      work.done,
    ]);
    return unnamed.size;
  }

  drafts(site: string): Promise<Draft[]> {
    return this.base.getAllFromIndex('drafts', 'site', site);
  }

  draft(id: string): Promise<Draft | undefined> {
    return this.base.get('drafts', id);
  }

  async keepDraft(draft: Draft): Promise<void> {
    const work = this.base.transaction('drafts', 'readwrite', strict);
    await Promise.all([work.store.put(draft), work.done]);
  }

  /**
   * Adds the next tap of a draft; two tabs cannot write the same one. Rejects with DraftEnded where
   * the draft has been put into the record, or thrown away, meanwhile.
   */
  async keepTap(draft: string, what: unknown): Promise<Tap> {
    const work = this.base.transaction(['drafts', 'taps'], 'readwrite', strict);
    const [known, last] = await Promise.all([
      work.objectStore('drafts').getKey(draft),
      work.objectStore('taps').openKeyCursor(all(draft), 'prev'),
    ]);
    if (known === undefined) {
      await work.done;
      throw new DraftEnded(draft);
    }
    const tap = { draft, number: last ? last.key[1] + 1 : 0, what };
    await Promise.all([work.objectStore('taps').add(tap), work.done]);
    return tap;
  }

  taps(draft: string): Promise<Tap[]> {
    return this.base.getAll('taps', all(draft));
  }

  async dropDraft(id: string): Promise<void> {
    const work = this.base.transaction(['drafts', 'taps'], 'readwrite', strict);
    await Promise.all([
      work.objectStore('drafts').delete(id),
      work.objectStore('taps').delete(all(id)),
      work.done,
    ]);
  }
}
