/** What is called in every language as it calls itself: names and ids of sites and catalogs. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import schema from '../../../schema/site.schema.json';

const root = join(import.meta.dirname, '../../..');
const read = (file: string): unknown => JSON.parse(readFileSync(join(root, file), 'utf8'));

const examples = readdirSync(join(root, 'examples')).map((site) =>
  read(`examples/${site}/site.json`),
);
const catalogs = readdirSync(join(root, 'catalog'))
  .filter((file) => file.endsWith('.json'))
  .map((file) => read(`catalog/${file}`));

/** What `engine_sentences` calls the looks that it tries. */
const names = new Set(['Axes', 'Photos', 'Quick look', 'Stone count']);
const ids = new Set<string>();

/** Where a document says how something is called, or in the words of whoever wrote it. */
const saying = new Set(['name', 'side', 'from']);

function gather(node: unknown): void {
  if (node === null || typeof node !== 'object') return;
  for (const [key, value] of Object.entries(node)) {
    if (!Array.isArray(node)) ids.add(key);
    if (typeof value !== 'string') gather(value);
    else if (saying.has(key)) names.add(value);
    else if (key === 'id') ids.add(value);
    else if (key === 'set') value.split('/').forEach((id) => ids.add(id));
  }
}

[examples, catalogs, schema.$defs].forEach(gather);

const amountOfMoney = /^\d[\d\u202f]* [A-Z]{3}$/;

/** Whether a text is a name, or names with nothing but numbers between them. */
export function isName(text: string): boolean {
  if (names.has(text) || amountOfMoney.test(text)) return true;
  return text.split(/[:,] /).every((part) => names.has(part.replace(/ [\d.]+$/, '')));
}

/** Whether a text lists ids alone. */
export function listsIds(text: string): boolean {
  return text.split(', ').every((id) => ids.has(id));
}
