/**
 * A whole site as one file: a plain ZIP of site.json, the files it names, and its photos under
 * photos/. Unpacked, it is the folder that the command line reads.
 */
import { strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import type { Problem } from './findings';
import type { Photo } from './record/photo';
import type { PickedFile, SiteFiles } from './site_files';
import { strings } from './strings';

/** The same site gives the same bytes: the ZIP's own times say nothing. */
const fixedTime = '1980-01-01T00:00:00';
const mostFiles = 2000;
/** Of document and tables, unpacked; and of photos beside them. */
const largestSizeBytes = 64 * 1024 * 1024;
const largestPhotosBytes = 256 * 1024 * 1024;

const photoFolder = 'photos/';

/** The hashes of the photos that a document names as evidence. */
export function photosNamedIn(document: string): string[] {
  const hashes = new Set<string>();
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(visit);
    else if (value !== null && typeof value === 'object') {
      for (const [key, inner] of Object.entries(value)) {
        if (key === 'photos' && Array.isArray(inner)) {
          for (const hash of inner) if (typeof hash === 'string') hashes.add(hash);
        } else visit(inner);
      }
    }
  };
  visit(JSON.parse(document));
  return [...hashes];
}

/** The hash that the name of a packed photo states; undefined for any other file. */
export function photoHashIn(path: string): string | undefined {
  return /(?:^|\/)photos\/([0-9a-f]{64})\.\w{1,5}$/.exec(path)?.[1];
}

export function archiveOf(site: SiteFiles, photos: readonly Photo[] = []): Uint8Array {
  const document = `${JSON.stringify(JSON.parse(site.document), null, 2)}\n`;
  const entries: Zippable = { 'site.json': strToU8(document) };
  for (const { hash, type, bytes } of photos) {
    // A photo is packed already.
    const ending = /^image\/(\w{1,5})/.exec(type)?.[1] ?? 'bin';
    entries[`${photoFolder}${hash}.${ending}`] = [new Uint8Array(bytes), { level: 0 }];
  }
  for (const { name, text } of [...site.files].sort((a, b) => (a.name < b.name ? -1 : 1))) {
    entries[name] = strToU8(text);
  }
  return zipSync(entries, { mtime: new Date(fixedTime), level: 6 });
}

export function isArchive({ path }: PickedFile): boolean {
  return /\.zip$/i.test(path);
}

/** A name that leads out of its folder is no name of a site's file. */
function leadsOut(name: string): boolean {
  return name.includes('\\') || name.startsWith('/') || name.split('/').includes('..');
}

/** The files of an archive; a problem where it is none, or is made to do harm. */
export async function filesInArchive(archive: PickedFile): Promise<PickedFile[] | Problem> {
  const { path, file } = archive;
  if (file.size > largestSizeBytes + largestPhotosBytes) return strings.problems.tooLarge(path);
  let refused: Problem | undefined;
  let number = 0;
  let bytes = 0;
  let photoBytes = 0;
  try {
    const packed = new Uint8Array(await file.arrayBuffer());
    const entries = unzipSync(packed, {
      filter: ({ name, originalSize }) => {
        number += 1;
        if (photoHashIn(name) === undefined) bytes += originalSize;
        else photoBytes += originalSize;
        if (leadsOut(name)) refused ??= strings.problems.archiveLeadsOut(path);
        const tooMuch = bytes > largestSizeBytes || photoBytes > largestPhotosBytes;
        if (number > mostFiles || tooMuch) {
          refused ??= strings.problems.archiveTooLarge(path);
        }
        return refused === undefined && !name.endsWith('/');
      },
    });
    if (refused) return refused;
    return Object.entries(entries).map(([name, content]) => ({
      path: name,
      file: new File([content as Uint8Array<ArrayBuffer>], name.slice(name.lastIndexOf('/') + 1)),
    }));
  } catch {
    return strings.problems.noArchive(path);
  }
}
