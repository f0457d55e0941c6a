// What axe-core objects to on a page.
import { createRequire } from 'node:module';
import { readFile } from 'node:fs/promises';

const axeSource = await readFile(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
);

export async function axeViolations(page) {
  await page.evaluate(axeSource);
  const { violations } = await page.evaluate(() => axe.run(document));
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ; ')}`);
}
