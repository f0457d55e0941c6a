// The handbook within the application: from where a number stands, by words, and without a signal.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { axeViolations } from './accessibility.mjs';
import { overflowing, textOutsidePictures } from './page_inspection.mjs';
import { openApplication, postures, savedFindings } from './world.mjs';

/** What scrolls within its own frame is meant to be wider. */
async function nothingWrong(page) {
  const wide = (await overflowing(page)).filter(
    (found) => !/^(DIV\.help-table|SPAN\.help-picture)/.test(found),
  );
  assert.deepEqual(wide, []);
  assert.deepEqual(await textOutsidePictures(page), []);
  assert.deepEqual(await axeViolations(page), []);
}

export function helpTests(world) {
  describe('the handbook within the application', () => {
    it('tells of a method from where its number stands, without a signal', async () => {
      const server = await world.startServer();
      const page = await openApplication(world, postures.phone, '', server);
      await page.getByText('also works without a signal').waitFor();
      await page.waitForFunction(() => navigator.serviceWorker.controller);
      await page.context().setOffline(true);
      await server.stop();
      await page.locator('details.finding', { hasText: 'Isbash' }).first().locator('summary').tap();
      await page.getByRole('link', { name: 'About this method' }).first().tap();
      await page.getByRole('heading', { name: 'Isbash equation', level: 1 }).waitFor();
      assert.equal(
        await page.evaluate(() => document.activeElement?.textContent),
        'Isbash equation',
        'the heading is read first',
      );
      await page.locator('.help-picture svg').waitFor();
      await page.screenshot({ path: world.screenshot('phone-help-method'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Back' }).tap();
      await page.waitForSelector('#verdict');
      // The browser itself asks for the icon and for a new version.
      const own = page.complaints.filter(
        (text) => !/Failed to (load|fetch|update)|ERR_/.test(text),
      );
      assert.deepEqual(own, []);
      await page.context().close();
    });

    for (const [posture, options] of Object.entries(postures)) {
      it(`is found by words, ${posture}`, async () => {
        const page = await openApplication(world, options);
        await page.getByRole('link', { name: 'Help', exact: true }).click();
        await page.getByRole('heading', { name: 'Help', level: 1 }).waitFor();
        await page.screenshot({ path: world.screenshot(`${posture}-help`) });
        await nothingWrong(page);
        await page.getByLabel('Look for words').fill('geotextile opening');
        await page.getByText(/^\d+ pages? holds? these words\.$/).waitFor();
        await page.screenshot({ path: world.screenshot(`${posture}-help-found`) });
        await nothingWrong(page);
        await page.getByRole('link', { name: 'Geotextile under rock' }).click();
        await page.getByRole('heading', { name: 'Geotextile under rock', level: 1 }).waitFor();
        await page.getByRole('button', { name: 'Back' }).click();
        assert.equal(await page.getByLabel('Look for words').inputValue(), 'geotextile opening');
        await page.getByLabel('Look for words').fill('qqq');
        await page.getByText('No page holds all of these words.').waitFor();
        await page.goto(new URL('#/help/nowhere', page.url()).href);
        await page.getByRole('alert').getByText('no such page').waitFor();
        await page.goto(new URL('#/help/field', page.url()).href);
        await page.getByRole('heading', { name: 'In the field', level: 1 }).waitFor();
        await page.screenshot({ path: world.screenshot(`${posture}-help-field`), fullPage: true });
        await nothingWrong(page);
        await page.context().close();
      });
    }

    it('has a page for every method that the findings name', async () => {
      const page = await openApplication(world, postures.desk);
      const { findings } = await savedFindings(page);
      const named = new Set(findings.map(({ about }) => about.method).filter(Boolean));
      const pages = JSON.parse(readFileSync(join(world.dist, 'help/handbook.json'), 'utf8'));
      assert.ok(named.size > 5);
      assert.deepEqual(
        [...named].filter((id) => !pages.some((one) => one.id === id)),
        [],
      );
      await page.context().close();
    });
  });
}
