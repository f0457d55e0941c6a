// Measured and printed, not judged on a busy machine except where a promise is at stake.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { outlinesInBrowser, pictureFile } from './photo_outlines.mjs';
import { askEngine, newPage, openApplication, postures } from './world.mjs';

const megabyte = 1024 * 1024;

function kilobytes(bytes) {
  return `${(bytes / 1024).toFixed(0)} kB`;
}

function median(numbers) {
  return numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)];
}

/** A picture in another size, as a JPEG. */
async function enlarged(page, bytes, width, height) {
  const base64 = await page.evaluate(
    async ([text, across, down]) => {
      const whole = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      const canvas = new OffscreenCanvas(across, down);
      const image = await createImageBitmap(new Blob([whole], { type: 'image/jpeg' }));
      canvas.getContext('2d').drawImage(image, 0, 0, across, down);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
      const made = new Uint8Array(await blob.arrayBuffer());
      return btoa(Array.from(made, (byte) => String.fromCharCode(byte)).join(''));
    },
    [bytes.toString('base64'), width, height],
  );
  return Buffer.from(base64, 'base64');
}

/** The most memory that a page of the browser has held so far, in MB (Linux tells it). */
async function mostMemory(world) {
  const session = await world.browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const held = processInfo
    .filter(({ type }) => type === 'renderer')
    .map(({ id }) => /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? 0);
  return Math.max(...held.map(Number)) / 1024;
}

export function measures(world) {
  describe('measures', () => {
    it('of assess in Chromium, median of 50', async (test) => {
      const page = await openApplication(world, { ...postures.desk, serviceWorkers: 'block' });
      const site = await world.example();
      const measure = (request) =>
        askEngine(page, world, { ask: 'assess', ...site, ...request }, 50, 40, 3000);
      const plain = await measure({});
      const drawn = await measure({ pictures: { width: 640 } });
      const told = ({ milliseconds, atFirst }) =>
        `${median(milliseconds).toFixed(1)} ms (of the first forty ${median(atFirst).toFixed(1)} ms)`;
      test.diagnostic(
        `assess ${told(plain)}; with pictures ${told(drawn)}, to the worker and back`,
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

    it('of what finds stones, compressed and on a photo of 12 megapixels', async (test) => {
      const wasm = readFileSync(join(world.dist, 'engine/vision.wasm'));
      const gzip = gzipSync(wasm, { level: 9 }).length;
      const page = await newPage(world, { ...postures.phone, serviceWorkers: 'block' });
      await page.goto(world.server.address);
      const photo = await enlarged(page, readFileSync(pictureFile('rendered.jpg')), 4000, 3000);
      const start = performance.now();
      const found = await outlinesInBrowser(page, world, photo, 'image/jpeg');
      const seconds = (performance.now() - start) / 1000;
      const megabytes = await mostMemory(world);
      test.diagnostic(
        `vision.wasm ${kilobytes(wasm.length)}, gzip ${kilobytes(gzip)}; ${found.outlines.length} stones on 12 megapixels in ${seconds.toFixed(1)} s (file to outlines), renderer at most ${megabytes.toFixed(0)} MB`,
      );
      assert.ok(gzip < 1.2 * megabyte);
      assert.ok(found.outlines.length > 80);
      assert.ok(megabytes < 700);
      await page.context().close();
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
