// What axe-core objects to on a page.
import { createRequire } from 'node:module';
import { readFile } from 'node:fs/promises';

const axeSource = await readFile(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
);

/** Of the whole page, or of what `within` selects where the rest has been looked at. */
export async function axeViolations(page, within = 'html') {
  await page.evaluate(axeSource);
  // Long lists of what is well would take longer to hand over than to find.
  const { violations } = await page.evaluate(
    (selector) => axe.run(selector, { resultTypes: ['violations'] }),
    within,
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ; ')}`);
}
