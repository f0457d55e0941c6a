import { expect, it } from 'vitest';
import type { SiteFiles } from '../site_files';
import { documentOf, type Revision } from './revision';
import { documentBefore, documentWith, revisionsOf, siteOf, siteWithMore } from './site_text';

const revision = (id: string, after: string[] = []): Revision => ({
  id,
  after,
  time: '2026-05-04T15:10:00Z',
  author: 'A',
  note: 'says "]}" and ends with é',
  changes: [{ set: '/name', to: id }],
});

const kept = { id: 'k', name: 'Site', origin: 'device' } as const;
const [first, second, third] = [revision('r1'), revision('r2', ['r1']), revision('r3', ['r2'])];
const parsed = (text: string) => JSON.parse(text) as { revisions: Revision[] };

it('reads the same whether it was written at once or appended to', () => {
  const grown = siteWithMore(siteOf(kept, [first], []), [second, third], []);
  const whole = siteOf(kept, [first, second, third], []);
  expect(grown.document).toBe(whole.document);
  expect(revisionsOf(grown)).toEqual([first, second, third]);
  expect(siteWithMore(whole, [], []).document).toBe(whole.document);
});

it('ends before any of its revisions', () => {
  const site = siteOf(kept, [first, second, third], []);
  for (const place of [0, 1, 2, 3]) {
    const before = documentOf([first, second, third].slice(0, place));
    expect(parsed(documentBefore(site, place))).toEqual(before);
  }
});

it('tries changes upon all that stands, and keeps none', () => {
  const site = siteOf(kept, [first, revision('other', ['r1']), second], []);
  const changes = [{ remove: '/name' }];
  const tried = parsed(documentWith(site, changes)).revisions;
  expect(tried.slice(0, 3)).toEqual(revisionsOf(site));
  expect(tried[3]).toMatchObject({ after: ['other', 'r2'], changes });
  expect(revisionsOf(site)).toHaveLength(3);
});

it('says what each was made upon where a file left it out', () => {
  const text = JSON.stringify(
    documentOf([first, { ...second, after: undefined as unknown as string[] }]),
    null,
    2,
  );
  const site: SiteFiles = { label: 'Picked', origin: 'device', document: text, files: [] };
  expect(revisionsOf(site)).toEqual([first, second]);
  expect(parsed(documentWith(site, [])).revisions[2]?.after).toEqual(['r2']);
});

it('leaves what is no document as it is', () => {
  for (const document of ['', '[]', '{"proofstone":"site","revisions":[]}', '{"revisions"']) {
    const site: SiteFiles = { label: 'Other', origin: 'device', document, files: [] };
    expect(revisionsOf(site)).toEqual([]);
    expect(documentWith(site, [{ remove: '/name' }])).toBe(document);
    expect(siteWithMore(site, [first], [])).toBe(site);
  }
});
