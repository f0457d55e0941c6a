// Without a connection: after one visit everything works; a new version is offered, not forced.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { serveStatic } from './static_server.mjs';
import { newPage, openApplication, postures, wholePage } from './world.mjs';

const stored = 'also works without a signal';

export function offlineTests(world) {
  describe('after one visit', () => {
    it('everything works with the server gone', async () => {
      const server = await world.startServer();
      const page = await openApplication(world, postures.phone, '', server);
      await page.getByText(stored).waitFor();
      await server.stop();
      await page.reload();
      await page.waitForSelector('#verdict');
      const { headline, findings } = await world.expected.findings('us');
      assert.equal(await page.textContent('#verdict'), headline.outcome);
      await wholePage(page);
      assert.equal(await page.locator('details.finding').count(), findings.length);
      await page.waitForSelector('.drawing svg');
      await page.locator('.units label', { hasText: 'SI' }).tap();
      await page.waitForFunction(() => document.querySelector('main').ariaBusy === 'false');
      await page.context().setOffline(true);
      await page.getByText('No signal. Everything here works without one.').waitFor();
      await page.reload();
      await page.waitForSelector('#verdict');
      assert.equal(await page.textContent('#verdict'), headline.outcome);
      assert.deepEqual(
        page.complaints.filter((text) => !/Failed to (load|fetch|update)|ERR_/.test(text)),
        [],
      );
      await page.context().close();
    });

    it('it can be installed: manifest and icons are there', async () => {
      const page = await openApplication(world, postures.phone);
      const session = await page.context().newCDPSession(page);
      const { errors, data } = await session.send('Page.getAppManifest');
      assert.deepEqual(errors, []);
      const manifest = JSON.parse(data);
      assert.equal(manifest.display, 'standalone');
      for (const { src } of manifest.icons) {
        const response = await page.request.get(new URL(src, world.server.address).href);
        assert.equal(response.status(), 200, src);
      }
      const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
      assert.deepEqual(
        installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito'),
        [],
      );
      await page.context().close();
    });

    it('a new version waits until the user takes it', async () => {
      const altered = new Map();
      const server = await serveStatic(world.dist, altered);
      const page = await newPage(world, postures.desk);
      await page.goto(server.address);
      await page.getByText(stored).waitFor();
      await page.reload();
      await page.waitForSelector('#verdict');
      altered.set('/sw.js', (text) => `${text}\n// the next version`);
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
      const notice = page.locator('.new-version');
      await notice.waitFor();
      await page.screenshot({ path: world.screenshot('desk-new-version') });
      await Promise.all([
        page.waitForEvent('load'),
        notice.getByRole('button', { name: 'Load it now' }).click(),
      ]);
      await page.waitForSelector('#verdict');
      assert.equal(await notice.count(), 0);
      await page.context().close();
      await server.stop();
    });
  });
}
