// Measured and printed, not judged on a busy machine except where a promise is at stake.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { askEngine, newPage, openApplication, postures } from './world.mjs';

const megabyte = 1024 * 1024;

function kilobytes(bytes) {
  return `${(bytes / 1024).toFixed(0)} kB`;
}

function median(numbers) {
  return numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)];
}

export function measures(world) {
  describe('measures', () => {
    it('of assess in Chromium, median of 50', async (test) => {
      const page = await openApplication(world, { ...postures.desk, serviceWorkers: 'block' });
      const site = await world.example();
      const measure = (request) =>
        askEngine(page, world, { ask: 'assess', ...site, ...request }, 50, 20);
      const plain = await measure({});
      const drawn = await measure({ pictures: { width: 640 } });
      test.diagnostic(
        `assess ${median(plain.milliseconds).toFixed(1)} ms; with pictures ${median(drawn.milliseconds).toFixed(1)} ms (to the worker and back)`,
      );
      assert.ok(plain.answer.findings);
      await page.context().close();
    });

    it('of the engine, compressed', (test) => {
      const wasm = readFileSync(join(world.dist, 'engine/engine.wasm'));
      const gzip = gzipSync(wasm, { level: 9 }).length;
      const brotli = brotliCompressSync(wasm).length;
      test.diagnostic(
        `engine.wasm ${kilobytes(wasm.length)}, gzip ${kilobytes(gzip)}, brotli ${kilobytes(brotli)}`,
      );
      assert.ok(gzip < 1.5 * megabyte);
    });

    it('of the first load', async (test) => {
      const page = await newPage(world, { ...postures.phone, serviceWorkers: 'block' });
      const loaded = new Map();
      page.on('response', (response) => loaded.set(new URL(response.url()).pathname, response));
      const start = performance.now();
      await page.goto(world.server.address);
      await page.waitForSelector('.drawing svg');
      const milliseconds = performance.now() - start;
      let raw = 0;
      let compressed = 0;
      for (const path of loaded.keys()) {
        const file = join(world.dist, path.endsWith('/') ? 'index.html' : path);
        if (!statSync(file, { throwIfNoEntry: false })) continue;
        const bytes = readFileSync(file);
        raw += bytes.length;
        compressed += gzipSync(bytes, { level: 9 }).length;
      }
      const stored = readdirSync(world.dist, { recursive: true })
        .map((name) => statSync(join(world.dist, name)))
        .reduce((sum, entry) => sum + (entry.isFile() ? entry.size : 0), 0);
      test.diagnostic(
        `first load ${loaded.size} files, ${kilobytes(raw)} (${kilobytes(compressed)} as gzip), verdict after ${milliseconds.toFixed(0)} ms; ${kilobytes(stored)} in all`,
      );
      assert.ok(compressed < 2.5 * megabyte);
      await page.context().close();
    });
  });
}
