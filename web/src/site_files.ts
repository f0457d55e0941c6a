/** Gets the files of a site: from the examples that come along, or from what the user picks. */
import type { NamedText, Problem } from './findings';
import { filesInArchive, isArchive, photoHashIn } from './site_archive';
import { strings } from './strings';

/** A site document as text, and the texts of the files it names. */
export interface SiteFiles {
  /** What the screen calls it until the engine has read its name. */
  label: string;
  origin: 'example' | 'device';
  /** The id under which this device keeps it; undefined while it is only looked at. */
  kept?: string | undefined;
  document: string;
  files: NamedText[];
}

/** A site with the photos that came along, or what is wrong with the files. */
export type SiteReading =
  { site: SiteFiles; photos?: PickedFile[] } | { label: string; problems: Problem[] };

/** An example as the index of the examples lists it. */
export interface ExampleEntry {
  folder: string;
  files: string[];
}

/** A file the user picked; `path` is its name with the folders above it as far as they are known. */
export interface PickedFile {
  path: string;
  file: File;
}

const documentName = 'site.json';
/** Larger files are not read into the page's memory. */
const largestFileBytes = 64 * 1024 * 1024;

function baseName(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1);
}

function folderOf(path: string): string {
  return path.slice(0, path.lastIndexOf('/') + 1);
}

/** Names of the files a document refers to as {"file": "…"}; none where the text is not JSON. */
export function namedFiles(document: string): string[] {
  const names = new Set<string>();
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(visit);
    else if (value !== null && typeof value === 'object') {
      for (const [key, inner] of Object.entries(value)) {
        if (key === 'file' && typeof inner === 'string') names.add(inner);
        else visit(inner);
      }
    }
  };
  try {
    visit(JSON.parse(document));
  } catch {
    return [];
  }
  return [...names];
}

async function fetchText(url: string): Promise<string> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${response.status} ${url}`);
  return response.text();
}

/** The examples that come with the application. */
export async function listExamples(): Promise<ExampleEntry[]> {
  return JSON.parse(await fetchText('examples/index.json')) as ExampleEntry[];
}

export async function readExample(example: ExampleEntry): Promise<SiteReading> {
  const label = example.folder.replaceAll('-', ' ');
  const address = (name: string) =>
    `examples/${encodeURIComponent(example.folder)}/${name.split('/').map(encodeURIComponent).join('/')}`;
  try {
    const document = await fetchText(address(documentName));
    const wanted = namedFiles(document).filter((name) => example.files.includes(name));
    const files = await Promise.all(
      wanted.map(async (name) => ({ name, text: await fetchText(address(name)) })),
    );
    return { site: { label, origin: 'example', document, files } };
  } catch {
    return { label, problems: [strings.problems.exampleNotReached(example.folder)] };
  }
}

/** The text of a picked file; a problem where it is too large or not UTF-8, never a guess. */
async function readText({ path, file }: PickedFile): Promise<string | Problem> {
  if (file.size > largestFileBytes) return strings.problems.tooLarge(path);
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return strings.problems.notReadable(path);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return strings.problems.notUtf8(path);
  }
}

/** The one file that is the document: site.json nearest the top, or else the only .json file. */
function findDocument(picked: PickedFile[]): PickedFile | Problem {
  const depth = ({ path }: PickedFile) => path.split('/').length;
  const named = picked.filter(({ path }) => baseName(path).toLowerCase() === documentName);
  const candidates = named.length > 0 ? named : picked.filter(({ path }) => /\.json$/i.test(path));
  const top = Math.min(...candidates.map(depth));
  const nearest = candidates.filter((file) => depth(file) === top);
  const [first, second] = nearest;
  if (!first) return strings.problems.noDocument(picked.length);
  if (second) return strings.problems.severalDocuments(nearest.map(({ path }) => path));
  return first;
}

/** Reads a site from files of this device: its document and the files that the document names. */
export async function readPickedFiles(chosen: PickedFile[]): Promise<SiteReading> {
  const [only] = chosen;
  const unpacked =
    chosen.length === 1 && only && isArchive(only) ? await filesInArchive(only) : chosen;
  if ('code' in unpacked) return { label: strings.open.yourFiles, problems: [unpacked] };
  const picked = unpacked;
  const found = findDocument(picked);
  if ('code' in found) return { label: strings.open.yourFiles, problems: [found] };
  const label = found.path;
  const document = await readText(found);
  if (typeof document !== 'string') return { label, problems: [document] };

  const above = folderOf(found.path);
  const files: NamedText[] = [];
  const problems: Problem[] = [];
  for (const name of namedFiles(document)) {
    // Files picked one by one come without their folders: then the bare name must do.
    const match =
      picked.find(({ path }) => path === above + name) ??
      picked.find(({ path }) => !path.includes('/') && path === baseName(name));
    if (!match) continue; // the engine names the file that is missing, and where it is asked for
    const text = await readText(match);
    if (typeof text === 'string') files.push({ name, text });
    else problems.push(text);
  }
  return problems.length > 0
    ? { label, problems }
    : {
        site: { label, origin: 'device', document, files },
        photos: picked.filter(({ path }) => photoHashIn(path) !== undefined),
      };
}

/** The same for a drop, whose files are still being listed; a folder may vanish meanwhile. */
export async function readDroppedFiles(listing: Promise<PickedFile[]>): Promise<SiteReading> {
  const label = strings.open.yourFiles;
  try {
    return await readPickedFiles(await listing);
  } catch {
    return { label, problems: [strings.problems.notReadable(label)] };
  }
}
