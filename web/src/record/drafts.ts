/** What is begun and put into the record later: its taps, and the photos that were taken for it. */
import type { Photo } from './photo';
import { holdPhotos } from './photo_sweep';
import { recordDatabase, writing } from './record_access';
import type { Draft, Tap } from './record_database';
import { freshId, utcNow } from './revision';
import { keptOpenSite } from './site_record';

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

export function dropDraft(draft: string): Promise<void> {
  return writing((record) => record.dropDraft(draft));
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
