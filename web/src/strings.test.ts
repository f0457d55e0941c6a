// @vitest-environment node
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { strings } from './strings';

it('says in every failure what to do', () => {
  for (const sentence of Object.values(strings.failures.sentences)) {
    expect(sentence).toMatch(/Use a|Check|try again/i);
  }
});

const readAloud = new Set(['aria-label', 'title', 'alt', 'placeholder']);

/** Words that stand in a screen itself instead of in the strings. */
function wordsIn(file: string, source: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isJsxText(node) && /\p{L}/u.test(node.text)) found.push(node.text.trim());
    if (
      ts.isJsxAttribute(node) &&
      readAloud.has(node.name.getText()) &&
      node.initializer &&
      ts.isStringLiteral(node.initializer)
    ) {
      found.push(node.initializer.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX));
  return found;
}

const folder = new URL('.', import.meta.url);
const screens = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.tsx') && !file.endsWith('.test.tsx'),
);

it('finds words between tags', () => {
  expect(wordsIn('x.tsx', 'const x = <p aria-label="read me">Hello {name}</p>;')).toEqual([
    'read me',
    'Hello',
  ]);
});

it.each(screens)('holds all words of %s', (file) => {
  expect(wordsIn(file, readFileSync(new URL(file, folder), 'utf8'))).toEqual([]);
});
