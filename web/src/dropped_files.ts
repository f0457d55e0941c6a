/** Turns what the user picked or dropped into a list of files, folders included. */
import type { PickedFile } from './site_files';

/** A dropped folder of more files than this is not a site; the rest is not looked at. */
const mostFiles = 2000;

/** Files of an <input type="file">; a chosen folder brings the paths inside it. */
export function pickedFiles(list: FileList): PickedFile[] {
  return [...list]
    .slice(0, mostFiles)
    .map((file) => ({ path: file.webkitRelativePath || file.name, file }));
}

function fileOf(entry: FileSystemFileEntry): Promise<File> {
  return new Promise((resolve, reject) => entry.file(resolve, reject));
}

function someEntries(reader: FileSystemDirectoryReader): Promise<FileSystemEntry[]> {
  return new Promise((resolve, reject) => reader.readEntries(resolve, reject));
}

async function collect(entry: FileSystemEntry, into: PickedFile[]): Promise<void> {
  if (into.length >= mostFiles) return;
  if (entry.isFile) {
    into.push({
      path: entry.fullPath.replace(/^\//, ''),
      file: await fileOf(entry as FileSystemFileEntry),
    });
  } else if (entry.isDirectory) {
    const reader = (entry as FileSystemDirectoryEntry).createReader();
    // A reader hands out its entries in portions and ends with an empty one.
    for (
      let portion = await someEntries(reader);
      portion.length > 0;
      portion = await someEntries(reader)
    ) {
      for (const inner of portion) await collect(inner, into);
    }
  }
}

/** Files and folders of a drop. Entries must be taken before the event is over, so call it at once. */
export async function droppedFiles(transfer: DataTransfer): Promise<PickedFile[]> {
  const entries = [...transfer.items]
    .filter((item) => item.kind === 'file')
    .map((item) => item.webkitGetAsEntry())
    .filter((entry) => entry !== null);
  if (entries.length === 0) return pickedFiles(transfer.files);
  const files: PickedFile[] = [];
  for (const entry of entries) await collect(entry, files);
  return files;
}
