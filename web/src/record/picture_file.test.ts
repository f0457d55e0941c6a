// @vitest-environment node
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exifNotes, pictureFile } from './picture_file';

const picture = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../photography/pictures/${name}`, import.meta.url)));

describe('what a picture file says of itself', () => {
  it('reads the size of a JPEG and of a PNG', () => {
    expect(pictureFile(picture('rendered.jpg'))).toEqual({ width: 768, height: 576, whole: true });
    expect(pictureFile(picture('gravel.png'))).toEqual({ width: 512, height: 512, whole: true });
  });

  it('sees that a file is cut off, wherever that is', () => {
    for (const name of ['rendered.jpg', 'gravel.png']) {
      const whole = picture(name);
      for (const share of [0.9, 0.5, 0.1]) {
        const cut = whole.subarray(0, Math.floor(whole.length * share));
        expect(pictureFile(cut)?.whole).toBe(false);
      }
      for (let length = 0; length < 700; length += 1) {
        expect(pictureFile(whole.subarray(0, length))?.whole ?? false).toBe(false);
      }
    }
  });

  it('knows nothing of what is no picture', () => {
    expect(pictureFile(new Uint8Array())).toBeUndefined();
    expect(pictureFile(new TextEncoder().encode('a page of text'))).toBeUndefined();
    expect(pictureFile(new Uint8Array(100).fill(0xff))).toBeUndefined();
  });

  it('finds the notes of a camera behind other segments', () => {
    const exif = [0xff, 0xe1, 0, 10, 0x45, 0x78, 0x69, 0x66, 0, 0, 7, 8];
    const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, ...exif, 0xff, 0xda, 0, 2]);
    expect([...(exifNotes(bytes) ?? [])]).toEqual([7, 8]);
    expect(exifNotes(picture('rendered.jpg'))).toBeUndefined();
  });
});
