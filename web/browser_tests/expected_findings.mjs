// What the same engine finds outside the browser: the native command line where it is built, else
// the WebAssembly engine in Node.
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);

async function fromCommandLine(program, site, units) {
  const folder = await mkdtemp(join(tmpdir(), 'proofstone-'));
  const file = join(folder, 'findings.json');
  try {
    await run(program, ['assess', site, '--units', units, '--findings', file]);
    return JSON.parse(await readFile(file, 'utf8'));
  } finally {
    await rm(folder, { recursive: true });
  }
}

async function fromNode(engineFolder, site, files, units) {
  // The module is built for pages and workers and looks for the latter.
  globalThis.self ??= { location: pathToFileURL(engineFolder) };
  globalThis.importScripts ??= () => undefined;
  const { default: createEngine } = await import(pathToFileURL(join(engineFolder, 'engine.js')));
  const engine = await createEngine({
    wasmBinary: await readFile(join(engineFolder, 'engine.wasm')),
  });
  const read = (name) => readFile(join(site, name), 'utf8');
  const document = await read('site.json');
  const tables = files.filter((name) => name !== 'site.json' && document.includes(`"${name}"`));
  const texts = await Promise.all(tables.map(async (name) => ({ name, text: await read(name) })));
  const request = { ask: 'assess', document, files: texts, units };
  return JSON.parse(engine.request(JSON.stringify(request))).findings;
}

/** { by, findings(units) } for the example `site` with its `files`. */
export function expectedFindings({ program, engineFolder, site, files }) {
  const native = existsSync(program);
  const kept = new Map();
  return {
    by: native ? 'the native command line' : 'the WebAssembly engine in Node',
    findings: (units) => {
      if (!kept.has(units)) {
        kept.set(
          units,
          native
            ? fromCommandLine(program, site, units)
            : fromNode(engineFolder, site, files, units),
        );
      }
      return kept.get(units);
    },
  };
}
