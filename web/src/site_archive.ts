/**
 * A whole site as one file: a plain ZIP of site.json and the files it names. Unpacked, it is the
 * folder that the command line reads.
 */
import { strToU8, unzipSync, zipSync } from 'fflate';
import type { Problem } from './findings';
import type { PickedFile, SiteFiles } from './site_files';
import { strings } from './strings';

/** The same site gives the same bytes: the ZIP's own times say nothing. */
const fixedTime = '1980-01-01T00:00:00';
const mostFiles = 2000;
const largestSizeBytes = 64 * 1024 * 1024;

export function archiveOf(site: SiteFiles): Uint8Array {
  const document = `${JSON.stringify(JSON.parse(site.document), null, 2)}\n`;
  const entries: Record<string, Uint8Array> = { 'site.json': strToU8(document) };
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
  if (file.size > largestSizeBytes) return strings.problems.tooLarge(path);
  let refused: Problem | undefined;
  let number = 0;
  let bytes = 0;
  try {
    const packed = new Uint8Array(await file.arrayBuffer());
    const entries = unzipSync(packed, {
      filter: ({ name, originalSize }) => {
        number += 1;
        bytes += originalSize;
        if (leadsOut(name)) refused ??= strings.problems.archiveLeadsOut(path);
        if (number > mostFiles || bytes > largestSizeBytes) {
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
