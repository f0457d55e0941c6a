// @vitest-environment node
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { helpPages, helpPhotos, helpPictures, translatedPages } from '../../handbook_plugin';

const docs = fileURLToPath(new URL('../../../docs', import.meta.url));
const pages = helpPages(docs);
const page = (id: string) => pages.find((one) => one.id === id);

it('has every page of the handbook but those for who checks the engine', () => {
  const there = readdirSync(docs)
    .filter((name) => name.endsWith('.md'))
    .map((name) => name.slice(0, -3));
  const left = there.filter((id) => !page(id));
  expect(left.sort()).toEqual(['README', 'from-memory', 'validation']);
  expect(pages.slice(0, 2).map(({ id }) => id)).toEqual(['field', 'words']);
});

it('shows a method with its picture, inputs, sources and cautions, without the check table', () => {
  const isbash = page('isbash');
  expect(isbash?.title).toBe('Isbash equation');
  expect(isbash?.group).toBe('rock size');
  expect(isbash?.html).toContain('<!--picture plot-isbash-->');
  expect(helpPictures(docs, pages)['plot-isbash']).toMatch(/^<svg/);
  for (const heading of ['Inputs', 'Outputs', 'Sources', 'Cautions']) {
    expect(isbash?.html).toContain(`<h2>${heading}</h2>`);
  }
  expect(isbash?.html).not.toContain('Published cases');
});

it('leads from page to page within the application, and only to pages that are there', () => {
  const links = pages.flatMap(({ html }) => [...html.matchAll(/href="([^"]+)"/g)]);
  expect(links.length).toBeGreaterThan(5);
  for (const [, address] of links) {
    expect(address).toMatch(/^#\/help\//);
    expect(page(address?.slice('#/help/'.length) ?? ''), address).toBeDefined();
  }
});

it('has the pages of the field and of the words in Spanish, part by part as in English', () => {
  const translated = translatedPages(docs, 'spanish', pages);
  expect(translated.map(({ id }) => id)).toEqual(['field', 'words']);
  const parts = (html = '') => html.match(/<(h2|li|a href="[^"]*")/g);
  for (const { id, title, html } of translated) {
    expect(parts(html), id).toEqual(parts(page(id)?.html));
    expect(title).not.toBe(page(id)?.title);
  }
});

it('shows photographs, each with words for who does not see it', () => {
  const html = page('photo-failures')?.html ?? '';
  const images = html.match(/<img [^>]*>/g) ?? [];
  expect(images).toHaveLength(6);
  for (const image of images) expect(image).toMatch(/ alt="[^"]{10,}"/);
  const photos = helpPhotos(docs, pages);
  expect(photos['help/photo-failure-snow.jpg']?.subarray(0, 3).toString('hex')).toBe('ffd8ff');
});

it('runs no script and fetches nothing but its own photographs', () => {
  const photo = /<img class="help-photo" src="help\/[\w-]+\.jpg" alt="[^"<>]*" \/>/g;
  const pictures = Object.entries(helpPictures(docs, pages));
  const all = [...pages.map(({ id, html }) => [id, html] as const), ...pictures];
  for (const [id, html] of all) {
    expect(html.replaceAll(photo, ''), id).not.toMatch(
      /<script|<img|\son\w+=|https?:\/\/(?!www\.w3\.org)/i,
    );
  }
});
