// @vitest-environment node
import { expect, it } from 'vitest';
import { withoutLocation } from './photo_location';

const text = (words: string) => [...words].map((letter) => letter.charCodeAt(0));

function segment(marker: number, content: number[]): number[] {
  const length = content.length + 2;
  return [0xff, marker, length >> 8, length & 0xff, ...content];
}

/** An Exif segment, little-endian, with an orientation and a pointer to GPS data. */
function exif(turned: number): number[] {
  const entry = (tag: number, type: number, value: number) => [
    tag & 0xff,
    tag >> 8,
    type,
    0,
    1,
    0,
    0,
    0,
    value,
    0,
    0,
    0,
  ];
  return segment(0xe1, [
    ...text('Exif\0\0II*\0'),
    8,
    0,
    0,
    0,
    2,
    0,
    ...entry(0x0112, 3, turned),
    ...entry(0x8825, 4, 40),
    0,
    0,
    0,
    0,
    ...text('GPS 47.1 N'),
  ]);
}

const jfif = segment(0xe0, text('JFIF\0'));
const profile = segment(0xe2, text('ICC_PROFILE\0sRGB'));
const table = segment(0xdb, [1, 2, 3]);
const scan = [...segment(0xda, [1, 1]), 0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56];
const start = [0xff, 0xd8];
const end = [0xff, 0xd9];

const written = (bytes: Uint8Array | undefined) => String.fromCharCode(...(bytes ?? []));

it('leaves the pixels and takes out all that tells of place, maker and comment', () => {
  const file = [
    ...start,
    ...jfif,
    ...exif(1),
    ...segment(0xe1, text('http://ns.adobe.com/xap/1.0/\0GPS')),
    ...segment(0xed, text('Photoshop 3.0 GPS')),
    ...segment(0xe2, text('MPF\0GPS')),
    ...segment(0xfe, text('GPS in a comment')),
    ...profile,
    ...table,
    ...scan,
    ...end,
    ...text('GPS after the end'),
  ];
  const left = withoutLocation(new Uint8Array(file));
  expect([...(left ?? [])]).toEqual([...start, ...jfif, ...profile, ...table, ...scan, ...end]);
  expect(written(left)).not.toContain('GPS');
});

it('keeps how the picture is turned', () => {
  const left = withoutLocation(new Uint8Array([...start, ...exif(6), ...table, ...scan, ...end]));
  expect(written(left)).not.toContain('GPS');
  expect(written(left)).toContain('Exif');
  // What was written is read again.
  expect([...(withoutLocation(left ?? new Uint8Array()) ?? [])]).toEqual([...(left ?? [])]);
});

it('goes through every scan of a progressive picture', () => {
  const file = [...start, ...table, ...scan, ...segment(0xc4, [9]), ...scan, ...end];
  expect([...(withoutLocation(new Uint8Array(file)) ?? [])]).toEqual(file);
});

it.each([
  ['no JPEG', text('GIF89a')],
  ['nothing', []],
  ['cut off in a segment', [...start, 0xff, 0xe1, 0x40, 0x00, 1, 2]],
  ['cut off in the scan', [...start, ...table, ...scan]],
  ['a length that cannot be', [...start, 0xff, 0xdb, 0x00, 0x01, 7]],
  ['no marker where one belongs', [...start, 0x12, 0x34]],
])('refuses %s', (_, bytes) => {
  expect(withoutLocation(new Uint8Array(bytes))).toBeUndefined();
});

it('does not follow an Exif directory out of its segment', () => {
  const hostile = segment(0xe1, [...text('Exif\0\0II*\0'), 0xff, 0xff, 0xff, 0x7f]);
  const left = withoutLocation(new Uint8Array([...start, ...hostile, ...scan, ...end]));
  expect([...(left ?? [])]).toEqual([...start, ...scan, ...end]);
});
