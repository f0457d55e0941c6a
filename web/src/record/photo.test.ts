import { afterEach, describe, expect, it, vi } from 'vitest';
import { readPhoto } from './photo';
import { isHeif } from './picture_file';

/** The head of a file of a HEIF container. */
const heif = (brand: string) =>
  new Uint8Array([0, 0, 0, 24, ...[...`ftyp${brand}`].map((letter) => letter.charCodeAt(0)), 0, 0]);

const fileOf = (bytes: Uint8Array<ArrayBuffer>, name: string) =>
  ({
    size: bytes.length,
    name,
    type: '',
    arrayBuffer: () => Promise.resolve(bytes.buffer),
  }) as File;

afterEach(() => vi.unstubAllGlobals());

describe('a HEIC photo', () => {
  it('is told by its first bytes', () => {
    expect(isHeif(heif('heic'))).toBe(true);
    expect(isHeif(heif('mif1'))).toBe(true);
    expect(isHeif(heif('avif'))).toBe(false);
    expect(isHeif(new Uint8Array([0xff, 0xd8, 0xff, 0xe0]))).toBe(false);
    expect(isHeif(new Uint8Array())).toBe(false);
  });

  it('is refused in a sentence of its own where the browser cannot read it', async () => {
    vi.stubGlobal('createImageBitmap', () => Promise.reject(new Error('no decoder')));
    const refused = (bytes: Uint8Array<ArrayBuffer>) =>
      readPhoto(fileOf(bytes, 'a'), { keepsLocation: true });
    expect(await refused(heif('heic'))).toBe('heic not readable');
    expect(await refused(new Uint8Array([1, 2, 3]))).toBe('not readable');
  });

  it('of too many pixels is refused once they are known', async () => {
    const close = vi.fn();
    vi.stubGlobal('createImageBitmap', () =>
      Promise.resolve({ width: 10_000, height: 7_000, close }),
    );
    const refused = await readPhoto(fileOf(heif('heic'), 'a'), { keepsLocation: false });
    expect(refused).toBe('too many pixels');
    expect(close).toHaveBeenCalled();
  });
});
