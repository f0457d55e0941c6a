/** A photo as this device keeps it: once, under the hash of its bytes, with a small copy to show. */
import { withoutLocation } from './photo_location';
import { isHeif, mostPixels, pictureFile } from './picture_file';

export interface Photo {
  /** SHA-256 of `bytes`, as the document names it. */
  hash: string;
  name: string;
  type: string;
  bytes: ArrayBuffer;
  /** A JPEG to be shown. */
  small: ArrayBuffer;
}

export type PhotoRefusal =
  'too large' | 'too many pixels' | 'cut off' | 'not readable' | 'heic not readable';

const largestBytes = 40 * 1024 * 1024;
/** The longer edge of the copy that is shown. */
const smallEdge = 960;
const smallQuality = 0.8;
/** What is written anew to lose its place keeps its size. */
const fullQuality = 0.92;

async function drawn(image: ImageBitmap, longest: number, quality: number): Promise<ArrayBuffer> {
  const scale = Math.min(1, longest / Math.max(image.width, image.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(image.width * scale));
  canvas.height = Math.max(1, Math.round(image.height * scale));
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((settle) =>
    canvas.toBlob(settle, 'image/jpeg', quality),
  );
  if (!blob) throw new Error('the picture could not be drawn');
  return blob.arrayBuffer();
}

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Whether a photo may tell where it was taken; only of a JPEG that says nothing is it known. */
export function mayTellPlace({ bytes }: Photo): boolean {
  const whole = new Uint8Array(bytes);
  const plain = withoutLocation(whole);
  return plain?.length !== whole.length || plain.some((byte, index) => byte !== whole[index]);
}

/**
 * Reads a picture of the device. Where its place is not to be kept, a JPEG loses what tells of it
 * and keeps its pixels; anything else is written anew. A HEIC photo is always written anew, upright:
 * other devices could not show it.
 */
export async function readPhoto(
  file: File,
  { keepsLocation }: { keepsLocation: boolean },
): Promise<Photo | PhotoRefusal> {
  if (file.size > largestBytes) return 'too large';
  let heif = false;
  try {
    const asTaken = await file.arrayBuffer();
    heif = isHeif(new Uint8Array(asTaken));
    const head = pictureFile(new Uint8Array(asTaken));
    if (head && head.width * head.height > mostPixels) return 'too many pixels';
    if (head && !head.whole) return 'cut off';
    const image = await createImageBitmap(file);
    if (image.width * image.height > mostPixels) {
      image.close();
      return 'too many pixels';
    }
    const plain = keepsLocation ? undefined : withoutLocation(new Uint8Array(asTaken));
    const anew = heif || (!keepsLocation && plain === undefined);
    const bytes = anew ? await drawn(image, Infinity, fullQuality) : (plain?.buffer ?? asTaken);
    const small = await drawn(image, smallEdge, smallQuality);
    image.close();
    return {
      hash: await hashOf(bytes),
      name: file.name,
      type: anew ? 'image/jpeg' : file.type,
      bytes,
      small,
    };
  } catch {
    return heif ? 'heic not readable' : 'not readable';
  }
}
