// The same requests to the native engine and to the one for the browser: every answer must have the same shape and the
// same words, and every number must agree to 1e-12 relative.
//
// Besides the whole examples and every published check, each request about a site is repeated in both unit systems.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const tolerance = 1e-12;
const root = dirname(dirname(fileURLToPath(import.meta.url)));
const engineFolder = join(root, 'web/public/engine');

const { default: createEngine } = await import(join(engineFolder, 'engine.js'));
const engine = await createEngine({ wasmBinary: readFileSync(join(engineFolder, 'engine.wasm')) });

const askBrowserEngine = (text) => engine.request(text);
const askNativeEngine = (text) =>
  execFileSync(join(root, 'build/native/ask'), { input: text, encoding: 'utf8', maxBuffer: 1 << 28 });

let numbers = 0;
let apart = 0;
let worst = { difference: 0, where: '' };

/** Compares two parsed answers; throws where they differ in anything but the last digits of a number. */
function compare(native, browser, where) {
  if (typeof native === 'number' && typeof browser === 'number') {
    numbers += 1;
    if (native === browser) return;
    apart += 1;
    const difference = Math.abs(native - browser) / Math.max(Math.abs(native), Math.abs(browser));
    if (difference > worst.difference) worst = { difference, where };
    assert.ok(difference <= tolerance, `${where}: ${native} natively, ${browser} in WebAssembly`);
    return;
  }
  if (native === null || typeof native !== 'object') {
    assert.strictEqual(browser, native, where);
    return;
  }
  assert.strictEqual(Array.isArray(browser), Array.isArray(native), where);
  assert.deepEqual(Object.keys(browser), Object.keys(native), where);
  for (const key of Object.keys(native)) compare(native[key], browser[key], `${where}/${key}`);
}

/** The request about the site in a folder: its document, and every other file as text. */
function siteIn(folder) {
  const names = readdirSync(folder).filter((name) => name !== 'site.json');
  return {
    document: JSON.parse(readFileSync(join(folder, 'site.json'), 'utf8')),
    files: names.map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') })),
  };
}

/** The engine for the browser carries no check tables; both are handed them. */
const checks = readdirSync(join(root, 'checks')).map((name) => ({
  name,
  text: readFileSync(join(root, 'checks', name), 'utf8'),
}));
const requests = [
  { ask: 'about' },
  { ask: 'methods' },
  { ask: 'classes' },
  { ask: 'prove', files: checks },
  { ask: 'nothing' },
];
for (const example of readdirSync(join(root, 'examples'))) {
  const site = siteIn(join(root, 'examples', example));
  requests.push({ ask: 'validate', ...site });
  for (const units of ['us', 'si']) {
    for (const ask of ['assess', 'report']) requests.push({ ask, units, pictures: { width: 390 }, ...site });
  }
}

for (const request of requests) {
  const text = JSON.stringify(request);
  const name = request.units ? `${request.ask} in ${request.units}` : request.ask;
  compare(JSON.parse(askNativeEngine(text)), JSON.parse(askBrowserEngine(text)), name);
}
assert.strictEqual(askBrowserEngine('not JSON'), askNativeEngine('not JSON'));

assert.ok(numbers > 0, 'no number was compared');
console.log(`${requests.length} requests, ${numbers} numbers compared, ${apart} not bit for bit the same`);
console.log(`largest relative difference ${worst.difference.toExponential(2)} ${worst.where}`);
