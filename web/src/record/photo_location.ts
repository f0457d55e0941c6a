/**
 * Takes out of a JPEG file what says where, when and by whom it was taken, and whatever else stands
 * beside the picture: its pixels stay byte by byte, and how it is turned is kept.
 *
 * Source: JPEG, ITU-T T.81 annex B (markers); Exif 2.32, 4.5 and 4.6.4 (orientation, tag 0x0112).
 */

const startOfImage = 0xd8;
const endOfImage = 0xd9;
const startOfScan = 0xda;
const comment = 0xfe;
const exifSegment = 0xe1;
const orientationTag = 0x0112;

/** Segments that the picture needs to be shown rightly: JFIF, colour profile, colour transform. */
const neededSegments = new Set([0xe0, 0xe2, 0xee]);
const colourProfile = 'ICC_PROFILE\0';

function isApplicationSegment(marker: number): boolean {
  return marker >= 0xe0 && marker <= 0xef;
}

function beginsWith(bytes: Uint8Array, text: string): boolean {
  return [...text].every((letter, index) => bytes[index] === letter.charCodeAt(0));
}

/** How the picture is turned, 1 to 8, of the content of an Exif segment; 1 where it does not say. */
function orientationIn(content: Uint8Array): number {
  if (!beginsWith(content, 'Exif\0\0')) return 1;
  const tiff = new DataView(content.buffer, content.byteOffset + 6, content.byteLength - 6);
  try {
    const little = tiff.getUint16(0) === 0x4949;
    const directory = tiff.getUint32(4, little);
    const entries = tiff.getUint16(directory, little);
    for (let entry = 0; entry < entries; entry += 1) {
      const at = directory + 2 + 12 * entry;
      if (tiff.getUint16(at, little) !== orientationTag) continue;
      const turned = tiff.getUint16(at + 8, little);
      return turned >= 1 && turned <= 8 ? turned : 1;
    }
  } catch {
    // A directory that leads out of its segment says nothing.
  }
  return 1;
}

/** An Exif segment that holds the orientation and nothing else. */
function orientationSegment(turned: number): number[] {
  const header = [...'Exif\0\0MM\0*'].map((letter) => letter.charCodeAt(0));
  const directory = [0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, turned, 0, 0, 0, 0, 0, 0];
  const content = [...header, ...directory];
  const length = content.length + 2;
  return [0xff, exifSegment, length >> 8, length & 0xff, ...content];
}

/** Where the data of a scan end: at the next marker that is no part of them. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at += 1) {
    const next = bytes[at + 1] ?? 0;
    if (bytes[at] === 0xff && next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) {
      return at;
    }
  }
  return bytes.length;
}

/** The file without it; undefined where it is no whole JPEG. What follows its end is left out. */
export function withoutLocation(bytes: Uint8Array): Uint8Array<ArrayBuffer> | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== startOfImage) return undefined;
  const parts: Uint8Array[] = [];
  let turned = 1;
  let at = 2;
  while (at + 1 < bytes.length) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1; // fill bytes may stand before a marker
      continue;
    }
    if (marker === endOfImage) {
      const head = [0xff, startOfImage, ...(turned === 1 ? [] : orientationSegment(turned))];
      const whole = [new Uint8Array(head), ...parts, bytes.subarray(at, at + 2)];
      return joined(whole);
    }
    const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    const end = at + 2 + length;
    if (length < 2 || end > bytes.length) return undefined;
    const content = bytes.subarray(at + 4, end);
    if (marker === exifSegment) turned = Math.max(turned, orientationIn(content));
    const needed =
      marker === 0xe2 ? beginsWith(content, colourProfile) : neededSegments.has(marker);
    const left = marker === comment || (isApplicationSegment(marker) && !needed);
    const next = marker === startOfScan ? endOfScan(bytes, end) : end;
    if (!left) parts.push(bytes.subarray(at, next));
    at = next;
  }
  return undefined;
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
