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

    it('of a tap at 500 stones: the engine, and from tap to paint on a slow phone', async (test) => {
      const page = await openApplication(world, { ...postures.phone, serviceWorkers: 'block' });
      const site = await world.example();
      const document = JSON.parse(site.document);
      const sizes = [6, 9, 12, 15, 18, 21];
      const bins = sizes.map((size, index) => ({
        ...(index === 0 ? {} : { larger_than: `${sizes[index - 1]} in` }),
        not_larger_than: `${size} in`,
        stones: [40, 90, 140, 130, 70, 30][index],
      }));
      document.revisions.push({
        id: 'counted',
        after: [document.revisions.at(-1).id],
        time: '2026-06-03T15:10:00Z',
        author: 'measure',
        note: 'a count to measure with',
        changes: [
          {
            set: '/looks/counted',
            to: {
              name: 'Count',
              kind: 'stone count',
              lot: 'first-deliveries',
              picking: 'grid',
              stones: { bins },
            },
          },
        ],
      });
      const request = {
        ask: 'lot',
        lot: 'first-deliveries',
        document: JSON.stringify(document),
        files: site.files,
      };
      const plain = await askEngine(page, world, request, 50, 20);
      const drawn = await askEngine(page, world, { ...request, pictures: { width: 356 } }, 50, 20);
      assert.ok(plain.answer.findings, JSON.stringify(plain.answer.problems));

      const counting = new URL('#/field/lot/first-deliveries/count', page.url()).href;
      await page.goto(counting);
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.waitForSelector('.bin:enabled');
      const session = await page.context().newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: 6 });
      const toPaint = await page.evaluate(async () => {
        const milliseconds = [];
        const number = () => document.querySelector('.stones-so-far b').textContent;
        for (let tap = 0; tap < 30; tap += 1) {
          const before = number();
          const start = performance.now();
          document.querySelectorAll('.bin')[1 + (tap % 5)].click();
          await new Promise((painted) => {
            const look = () =>
              requestAnimationFrame(() => (number() === before ? look() : painted()));
            look();
          });
          milliseconds.push(performance.now() - start);
          await new Promise((rested) => setTimeout(rested, 150));
        }
        return milliseconds;
      });
      test.diagnostic(
        `lot at 600 stones ${median(plain.milliseconds).toFixed(1)} ms, with pictures ${median(drawn.milliseconds).toFixed(1)} ms; tap to paint at 6× throttle, on the device: median ${median(toPaint).toFixed(0)} ms, slowest ${Math.max(...toPaint).toFixed(0)} ms`,
      );
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
