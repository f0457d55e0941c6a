// Where the phone is: taken down where its user allows it, left out, taken off, and never waited for.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { describe, it } from 'node:test';
import { strFromU8, unzipSync } from 'fflate';
import { axeViolations } from './accessibility.mjs';
import { overflowing, smallTargets } from './page_inspection.mjs';
import { openApplication, postures } from './world.mjs';

const lot = '#/field/lot/first-deliveries';
const here = { latitude: 39.7392131, longitude: -104.99025, accuracy: 5.6 };
/** A keeping that waited for a position would take as long as one attempt at it: 20 s. */
const quickMs = 8000;

const choice = (page) => page.getByLabel('Note where this device is');

async function keepLoad(page, ticket) {
  await page.getByLabel('Ticket').fill(ticket);
  const start = performance.now();
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.getByRole('heading', { name: 'First deliveries', level: 1 }).waitFor();
  return performance.now() - start;
}

async function openLoad(world, options) {
  const page = await openApplication(world, { ...postures.phone, ...options });
  await page.goto(new URL(`${lot}/load`, page.url()).href);
  await choice(page).waitFor();
  return page;
}

/** The document in the archive that the page saves. */
async function savedDocument(page) {
  const [archive] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the whole site' }).click(),
  ]);
  const bytes = await readFile(await archive.path());
  return { bytes, text: strFromU8(unzipSync(new Uint8Array(bytes))['site.json']) };
}

export function positionTests(world) {
  describe('the position of the phone', () => {
    it('is taken down where it is allowed, left out of a copy, and taken off', async () => {
      const page = await openLoad(world, { permissions: ['geolocation'], geolocation: here });
      await choice(page).check();
      await page.getByText('Found.').waitFor();
      await page.screenshot({ path: world.screenshot('phone-position'), fullPage: true });
      assert.deepEqual(await overflowing(page), []);
      assert.deepEqual(await axeViolations(page), []);
      await keepLoad(page, '4431');

      // It stands on a look too, with the way to take it off beside it.
      await page.getByRole('link', { name: 'Quick look' }).tap();
      await page.getByText('Found.').waitFor();
      await page.getByLabel('Largest stone', { exact: true }).fill('21');
      await page.getByLabel('Smallest stone, fines apart', { exact: true }).fill('8');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('39.739213°, -104.990250°, within 6 m').waitFor();
      assert.deepEqual(await smallTargets(page), []);
      await page.screenshot({ path: world.screenshot('phone-position-kept'), fullPage: true });

      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      const full = await savedDocument(page);
      assert.equal(full.text.match(/"latitude": "39\.739213°"/g).length, 2);
      await page.getByLabel('Leave out where things were taken down').check();
      const bare = await savedDocument(page);
      assert.doesNotMatch(bare.text, /latitude|39\.739/);
      assert.match(bare.text, /"ticket": "4431"/);

      // Whoever has the full site and is given the copy without its places keeps the places.
      for (const { bytes } of [full, bare]) {
        await page.getByRole('button', { name: 'Open another site' }).tap();
        await page
          .locator('input[data-picks=files]')
          .setInputFiles({ name: 'site.zip', mimeType: 'application/zip', buffer: bytes });
        await page.getByText('Read from files on this device and kept here.').waitFor();
      }
      await page.getByRole('link', { name: 'Field', exact: true }).tap();
      await page.getByText('2 things say where they were taken down.').waitFor();
      await page.getByRole('button', { name: 'Take all 2 positions off' }).tap();
      await page.getByText('Kept: Position taken off.').waitFor();
      await page
        .getByRole('heading', { name: 'Where it was taken down' })
        .waitFor({ state: 'detached' });
      await page.getByRole('button', { name: 'Undo' }).tap();
      await page.getByText('2 things say where they were taken down.').waitFor();
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('is not taken down unless somebody wants it', async () => {
      const page = await openLoad(world, { permissions: ['geolocation'], geolocation: here });
      await keepLoad(page, '4432');
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      assert.doesNotMatch((await savedDocument(page)).text, /latitude/);
      await page.context().close();
    });

    it('is done without where it is refused', async () => {
      const page = await openLoad(world, { permissions: [] });
      await choice(page).check();
      await page.getByText('This browser does not allow it.').waitFor();
      assert.ok((await keepLoad(page, '4433')) < quickMs);
      await page.getByText('7 loads').waitFor();
      await page.context().close();
    });

    it('is never waited for where the device is slow, or gives up', async () => {
      const page = await openApplication(world, postures.phone);
      await page.addInitScript(() => {
        navigator.geolocation.watchPosition = (_found, failed) => {
          globalThis.givesUp = () => failed({ code: 3, PERMISSION_DENIED: 1 });
          return 1;
        };
      });
      await page.reload();
      await page.goto(new URL(`${lot}/count`, page.url()).href);
      await choice(page).check();
      await page.getByText('Looking for it.').waitFor();
      await page.getByRole('button', { name: 'Begin' }).tap();
      await page.waitForSelector('.bin:enabled');
      const start = performance.now();
      await page.locator('.bin').nth(2).tap();
      await page.waitForFunction(
        () => document.querySelector('.stones-so-far b')?.textContent === '1',
      );
      assert.ok(performance.now() - start < quickMs);
      await page.getByRole('button', { name: 'Done' }).tap();
      await page.getByText('Kept: Stone count: 1 stone.').waitFor();
      await page.getByRole('link', { name: 'Load', exact: true }).tap();
      await page.getByText('Looking for it.').waitFor();
      await page.evaluate(() => globalThis.givesUp());
      await page.getByText('Not found yet.').waitFor();
      assert.ok((await keepLoad(page, '4434')) < quickMs);
      await page.getByText('7 loads').waitFor();
      await page.context().close();
    });
  });
}
