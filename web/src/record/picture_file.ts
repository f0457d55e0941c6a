/**
 * What the first bytes of a picture tell before a browser unpacks it: a file of some kilobytes may
 * claim more pixels than a device has memory for, and one that was cut off may still be shown in part.
 *
 * Sources: JPEG, ITU-T T.81 annex B; PNG, ISO/IEC 15948, 5 and 11.2.2.
 */

export interface PictureFile {
  width: number;
  height: number;
  /** The file goes on to its end. */
  whole: boolean;
}

/** Kept photos have up to so many pixels. */
export const mostPixels = 60_000_000;

const pngStart = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

function beginsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

/** A part of a JPEG file: its marker, and where its content lies. */
export interface JpegSegment {
  marker: number;
  from: number;
  to: number;
}

/** The segments before the first scan; fewer where the file breaks off. */
export function jpegSegments(bytes: Uint8Array): JpegSegment[] {
  const segments: JpegSegment[] = [];
  if (!beginsWith(bytes, [0xff, 0xd8])) return segments;
  let at = 2;
  while (at + 3 < bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    const to = at + 2 + length;
    if (length < 2 || to > bytes.length) break;
    segments.push({ marker, from: at + 4, to });
    if (marker === 0xda) break;
    at = to;
  }
  return segments;
}

/** A frame header: C0 to CF, apart from three that stand for tables. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

function jpegFile(bytes: Uint8Array): PictureFile | undefined {
  const frame = jpegSegments(bytes).find(({ marker }) => isFrame(marker));
  if (!frame || frame.to - frame.from < 5) return undefined;
  const two = (at: number) => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
  // Some cameras write more behind the end; the end itself must be there.
  let whole = false;
  for (let at = bytes.length - 2; at > frame.to && !whole; at -= 1) {
    whole = bytes[at] === 0xff && bytes[at + 1] === 0xd9;
  }
  return { width: two(frame.from + 3), height: two(frame.from + 1), whole };
}

function pngFile(bytes: Uint8Array): PictureFile | undefined {
  if (bytes.length < 33) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let whole = false;
  for (let at = 8; at + 12 <= bytes.length && !whole;) {
    const end = at + 12 + view.getUint32(at);
    whole = end <= bytes.length && view.getUint32(at + 4) === 0x49454e44; // IEND
    at = end;
  }
  return { width: view.getUint32(16), height: view.getUint32(20), whole };
}

/** What a JPEG or PNG file says of itself; undefined of any other, and of one without a head. */
export function pictureFile(bytes: Uint8Array): PictureFile | undefined {
  if (beginsWith(bytes, pngStart)) return pngFile(bytes);
  if (beginsWith(bytes, [0xff, 0xd8])) return jpegFile(bytes);
  return undefined;
}

/** Brands of pictures in a HEIF container (ISO/IEC 23008-12) that phones take. */
const heifBrands = ['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1'];

/** Whether a file begins as a HEIC photo does. */
export function isHeif(bytes: Uint8Array): boolean {
  const letters = (from: number) => String.fromCharCode(...bytes.subarray(from, from + 4));
  return letters(4) === 'ftyp' && heifBrands.includes(letters(8));
}

/** The content of the first Exif segment after its mark; undefined where there is none. */
export function exifNotes(bytes: Uint8Array): Uint8Array | undefined {
  const mark = [0x45, 0x78, 0x69, 0x66, 0, 0]; // "Exif", 0, 0
  const found = jpegSegments(bytes).find(
    ({ marker, from, to }) => marker === 0xe1 && beginsWith(bytes.subarray(from, to), mark),
  );
  return found && bytes.subarray(found.from + mark.length, found.to);
}
