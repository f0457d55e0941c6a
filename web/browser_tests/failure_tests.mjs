// When the engine cannot load or stops: a sentence that says what to do, or a quiet restart.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { newPage, postures } from './world.mjs';

/** Without a stored copy between page and server, so that a test can put its own in the way. */
const direct = { ...postures.desk, serviceWorkers: 'block' };

/** An engine that stops as WebAssembly stops. */
const stoppingEngine = `export default async () => ({ request() { throw new WebAssembly.RuntimeError('unreachable'); } });`;

async function open(world) {
  const page = await newPage(world, direct);
  const requests = { engine: 0 };
  return { page, requests, start: () => page.goto(world.server.address) };
}

export function failureTests(world) {
  describe('an engine that fails', () => {
    it('to load says so, and loads when asked again', async () => {
      const { page, start } = await open(world);
      await page.route('**/engine/engine.js', (route) => route.abort());
      await start();
      await page.getByText('The engine could not be loaded.').waitFor();
      await page.screenshot({ path: world.screenshot('desk-engine-not-loaded') });
      await page.unroute('**/engine/engine.js');
      await page.getByRole('button', { name: 'Try again' }).click();
      await page.waitForSelector('#verdict');
      await page.context().close();
    });

    it('once while it works is replaced without a word', async () => {
      const { page, requests, start } = await open(world);
      await page.route('**/engine/engine.js', async (route) => {
        requests.engine += 1;
        if (requests.engine > 1) return route.continue();
        return route.fulfill({ contentType: 'text/javascript', body: stoppingEngine });
      });
      await start();
      await page.waitForSelector('#verdict');
      assert.equal(requests.engine, 2);
      await page.context().close();
    });

    it('again and again says so and offers to try again', async () => {
      const { page, start } = await open(world);
      await page.route('**/engine/engine.js', (route) =>
        route.fulfill({ contentType: 'text/javascript', body: stoppingEngine }),
      );
      await start();
      await page.getByText('The engine stopped twice').waitFor();
      await page.getByText('What the browser reported').click();
      await page.getByText('unreachable').waitFor();
      await page.unroute('**/engine/engine.js');
      await page.getByRole('button', { name: 'Try again' }).click();
      await page.waitForSelector('#verdict');
      await page.context().close();
    });

    it('because the examples cannot be reached says so', async () => {
      const { page, start } = await open(world);
      await page.route('**/examples/**', (route) => route.abort());
      await start();
      await page.getByRole('heading', { level: 1 }).waitFor();
      assert.equal(await page.locator('#verdict').count(), 0);
      await page.unroute('**/examples/**');
      await page.getByRole('button', { name: 'Try again' }).click();
      await page.waitForSelector('#verdict');
      await page.context().close();
    });
  });
}
