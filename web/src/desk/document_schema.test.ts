// @vitest-environment node
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import {
  beginningOf,
  collections,
  isOfVariant,
  resolved,
  type SchemaNode,
  shapeOf,
  singleParts,
} from './document_schema';

it('knows the collections and the parts of the document', () => {
  expect([...collections.keys()]).toContain('zones');
  expect([...collections.keys()]).not.toContain('name');
  expect([...singleParts.keys()]).toEqual(expect.arrayContaining(['name', 'note', 'evidence']));
});

const field = (collection: string, name: string): SchemaNode =>
  resolved(resolved(collections.get(collection) ?? {}).properties?.[name] ?? {});

it.each([
  ['flow_cases', 'discharge', 'text'],
  ['flow_cases', 'purpose', 'choice'],
  ['sections', 'survey', 'variants'],
  ['zones', 'toe', 'object'],
  ['zones', 'water', 'map'],
  ['zones', 'kinds', 'list'],
])('takes %s %s as %s', (collection, name, shape) => {
  expect(shapeOf(field(collection, name))).toBe(shape);
});

it('keeps what stands beside a reference', () => {
  expect(field('zones', 'section').refers_to).toBe('sections');
  expect(field('zones', 'section').pattern).toBeDefined();
});

it('begins with the words that cannot be otherwise', () => {
  const filter = resolved(field('zones', 'filter').oneOf?.[1]?.items ?? {});
  expect(beginningOf(filter)).toEqual({ kind: 'granular' });
  expect(isOfVariant(resolved(filter.oneOf?.[1] ?? {}), { kind: 'geotextile' })).toBe(true);
  expect(isOfVariant(resolved(filter.oneOf?.[0] ?? {}), { kind: 'geotextile' })).toBe(false);
});

it('begins each form of a value so that it is known for what it is', () => {
  const survey = field('sections', 'survey');
  const [file, points] = (survey.oneOf ?? []).map(resolved);
  expect(beginningOf(points ?? {})).toEqual({ points: [] });
  expect(isOfVariant(file ?? {}, { points: [] })).toBe(false);
  expect(beginningOf(resolved(collections.get('lots') ?? {}))).toEqual({ zones: [] });
});

/** Every value of the examples is one that the forms know how to show. */
function unknownIn(node: SchemaNode, value: unknown, at: string): string[] {
  const whole = resolved(node);
  switch (shapeOf(whole)) {
    case 'variants': {
      const variant = whole.oneOf?.map(resolved).find((one) => isOfVariant(one, value));
      return variant ? unknownIn(variant, value, at) : [at];
    }
    case 'object':
      return Object.entries(value as object).flatMap(([key, inner]) => {
        const known = whole.properties?.[key];
        return known ? unknownIn(known, inner, `${at}/${key}`) : [`${at}/${key}`];
      });
    case 'list':
      return Array.isArray(value)
        ? value.flatMap((inner, index) => unknownIn(whole.items ?? {}, inner, `${at}/${index}`))
        : [at];
    case 'map':
      return value !== null && typeof value === 'object' ? [] : [at];
    default:
      return typeof value === 'object' ? [at] : [];
  }
}

it.each(['sorrel-creek', 'tansy-crossing'])('shows every field of the example %s', (folder) => {
  const path = new URL(`../../../examples/${folder}/site.json`, import.meta.url);
  const document = JSON.parse(readFileSync(path, 'utf8')) as {
    revisions: { changes: { set: string; to: unknown }[] }[];
  };
  const unknown = document.revisions.flatMap(({ changes }) =>
    changes.flatMap(({ set, to }) => {
      const [part = '', id, ...rest] = set.split('/').slice(1);
      if (rest.length > 0) return [];
      const node = id === undefined ? singleParts.get(part) : collections.get(part);
      return node ? unknownIn(node, to, set) : [set];
    }),
  );
  expect(unknown).toEqual([]);
});
