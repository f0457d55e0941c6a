// @vitest-environment node
import { strToU8, zipSync } from 'fflate';
import { expect, it } from 'vitest';
import { archiveOf, filesInArchive, photoHashIn, photosNamedIn } from './site_archive';
import { type PickedFile, readPickedFiles, type SiteFiles } from './site_files';

const site: SiteFiles = {
  label: 'Site',
  origin: 'device',
  document: JSON.stringify({ proofstone: 'site', format: 1, survey: { file: 'tables/a.csv' } }),
  files: [{ name: 'tables/a.csv', text: 'station,elevation\n1,2\n' }],
};

const picked = (bytes: Uint8Array, path = 'site.zip'): PickedFile => ({
  path,
  file: new File([bytes as Uint8Array<ArrayBuffer>], path),
});

it('comes back as it went out', async () => {
  const reading = await readPickedFiles([picked(archiveOf(site))]);
  if (!('site' in reading)) throw new Error(JSON.stringify(reading));
  expect(JSON.parse(reading.site.document)).toEqual(JSON.parse(site.document));
  expect(reading.site.files).toEqual(site.files);
});

it('carries the photos that the document names', async () => {
  const hash = 'ab'.repeat(32);
  const opened = { who: 'A', photos: [hash] };
  const document = JSON.stringify({ proofstone: 'site', changes: [{ to: { opened } }] });
  expect(photosNamedIn(document)).toEqual([hash]);
  const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xd9]).buffer;
  const photo = { hash, name: 'slab.jpg', type: 'image/jpeg', bytes, small: bytes };
  const reading = await readPickedFiles([picked(archiveOf({ ...site, document }, [photo]))]);
  if (!('site' in reading)) throw new Error(JSON.stringify(reading));
  const [back] = reading.photos ?? [];
  expect(photoHashIn(back?.path ?? '')).toBe(hash);
  expect(await back?.file.arrayBuffer()).toEqual(bytes);
  expect(reading.site.files).toEqual([]);
});

it.each(['photos/x.jpg', `${'ab'.repeat(32)}.jpg`, `photos/${'ab'.repeat(32)}`])(
  'takes %s for no photo',
  (path) => expect(photoHashIn(path)).toBeUndefined(),
);

it('is the same bytes whenever it is made', () => {
  expect(archiveOf(site)).toEqual(archiveOf(site));
});

it.each([
  ['is cut off', archiveOf(site).slice(0, 60), 'no-archive'],
  ['is no ZIP', strToU8('PK, but not really'), 'no-archive'],
  ['is empty', new Uint8Array(), 'no-archive'],
  ['leads out of its folder', zipSync({ '../site.json': strToU8('{}') }), 'archive-leads-out'],
  ['is absolute', zipSync({ '/etc/site.json': strToU8('{}') }), 'archive-leads-out'],
  [
    'swells beyond all measure',
    zipSync({ 'a.csv': new Uint8Array(70 * 1024 * 1024) }),
    'archive-too-large',
  ],
])('refuses an archive that %s', async (_what, bytes, code) => {
  expect(await filesInArchive(picked(bytes))).toMatchObject({ code, file: 'site.zip' });
});

it('says that an archive holds no site', async () => {
  const reading = await readPickedFiles([picked(zipSync({ 'a.csv': strToU8('1') }))]);
  expect(reading).toMatchObject({ problems: [{ code: 'no-site-document' }] });
});
