// The JSON Schemas say what the engine does: what it writes and the examples are valid, and what it refuses for its
// form the schema refuses too.
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import assert from 'node:assert/strict';

const require = createRequire(new URL('../web/package.json', import.meta.url));
const Ajv = require('ajv/dist/2020.js').default;
const root = new URL('../', import.meta.url);
const readJson = (path) => JSON.parse(readFileSync(new URL(path, root), 'utf8'));

const ajv = new Ajv({ allErrors: true, strict: false });
const validators = Object.fromEntries(
  ['site', 'findings', 'rock-classes', 'rock-requirements', 'blankets', 'mixes'].map((name) => [name, ajv.compile(readJson(`schema/${name}.schema.json`))]),
);

function valid(name, value, what) {
  const good = validators[name](value);
  assert.ok(good, `${what} against ${name}: ${ajv.errorsText(validators[name].errors)}`);
}

const site = readJson('examples/sorrel-creek/site.json');
valid('site', site, 'the example');
valid('site', readJson('examples/tansy-crossing/site.json'), 'the example of a crossing');
valid('rock-classes', readJson('catalog/beddings.json'), 'beddings.json');
for (const file of readdirSync(new URL('catalog/', root)).filter((name) => name.startsWith('rock-classes'))) {
  valid('rock-classes', readJson(`catalog/${file}`), file);
}
valid('blankets', readJson('catalog/blankets.json'), 'the types of blankets');
valid('mixes', readJson('catalog/mixes.json'), 'the recipes of mixes');
valid('rock-requirements', readJson('catalog/rock-requirements.json'), 'the requirements of rock');
for (const example of ['sorrel-creek', 'tansy-crossing']) {
  for (const units of ['us', 'si']) {
    const answer = execFileSync(
      new URL('build/native/proofstone', root).pathname,
      ['assess', new URL(`examples/${example}`, root).pathname, '--json', '--units', units],
      { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 },
    );
    valid('findings', JSON.parse(answer).findings, `the findings of ${example} in ${units}`);
  }
}

const placed = (doc, pointer) => doc.revisions[2].changes.find((change) => change.set === pointer).to;

// Each changes one thing of the example that the engine names as a problem.
const spoilers = {
  'unknown field': (doc) => (doc.revisions[0].changes[5].to.colour = 'blue'),
  'number without unit': (doc) => (doc.revisions[0].changes[2].to.discharge = 4200),
  'unknown word': (doc) => (doc.revisions[0].changes[2].to.purpose = 'sometimes'),
  'missing field': (doc) => delete doc.revisions[0].changes[5].to.energy_slope,
  'wrong time': (doc) => (doc.revisions[0].time = 'yesterday'),
  'wrong format': (doc) => (doc.format = 2),
  'bank zone without its bank': (doc) => delete doc.revisions[0].changes[7].to.bank,
  'stated factor without its source': (doc) =>
    (doc.revisions[0].changes[7].to.near_structure = { choice: 'stated', factor: '1.3', on: 'mean velocity' }),
  'file with a path': (doc) => (doc.revisions[0].changes[5].to.survey.file = '../secret.csv'),
  'walk that says nothing of a check': (doc) => (placed(doc, '/placing_walks/ground').checks.subgrade = {}),
  'nonconformance closed without a disposition': (doc) => delete placed(doc, '/nonconformances/shallow-toe').disposition,
  'photo that is no hash': (doc) => (placed(doc, '/placing_walks/ground').photos = ['picture.jpg']),
  'negative stones': (doc) =>
    (doc.revisions[1].changes[1].to.stones = { bins: [{ not_larger_than: '4 in', stones: -1 }] }),
};
for (const [what, spoil] of Object.entries(spoilers)) {
  const document = structuredClone(site);
  spoil(document);
  assert.equal(validators.site(document), false, `the schema takes a document with: ${what}`);
}
console.log(`schemas: the example, catalog and findings are valid; ${Object.keys(spoilers).length} faults are refused`);
