// Ten thousand looks in one site stay fluid: no step holds the thread of the page up for long.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { heldUp } from './blocked_thread.mjs';
import { manyLooks } from './many_looks.mjs';
import { newPage, postures } from './world.mjs';

/** The longest that a page may not answer, unthrottled. */
const longestMs = 100;
/** Judging ten thousand looks takes the engine its time, on a busy machine more. */
const judgedMs = 120_000;

const siteId = 'many-looks';
const lot = 'delivery-007';

/** Puts a site into the record of the browser and makes it the one that opens. */
async function keepInRecord(page, site, { document, files }) {
  await page.evaluate(
    async ([id, revisions, texts]) => {
      const base = await new Promise((settle, fail) => {
        const opening = indexedDB.open('proofstone');
        opening.onsuccess = () => settle(opening.result);
        opening.onerror = () => fail(opening.error);
      });
      const work = base.transaction(['sites', 'revisions', 'files'], 'readwrite');
      const sites = work.objectStore('sites');
      const heads = [revisions.at(-1).id];
      sites.put({
        id,
        name: 'Many looks',
        origin: 'device',
        opened: '2027-04-01T12:00:00Z',
        heads,
      });
      const record = work.objectStore('revisions');
      revisions.forEach((revision, place) => record.put({ site: id, place, revision }));
      for (const { name, text } of texts) work.objectStore('files').put({ site: id, name, text });
      await new Promise((settle, fail) => {
        work.oncomplete = settle;
        work.onabort = () => fail(work.error);
      });
      base.close();
      localStorage.setItem('proofstone.site', id);
    },
    [site, document.revisions, files],
  );
}

/** Waits until the engine has said what it finds of the site as it stands. */
function judged(page) {
  return page.waitForFunction(
    () =>
      document.querySelector('main').ariaBusy === 'false' && !document.querySelector('.judging'),
    undefined,
    { timeout: judgedMs },
  );
}

/** Waits until the screen has been painted after what was done. */
function painted(page) {
  return page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
}

export function manyLooksTests(world, { judgeTimes = false } = {}) {
  describe('ten thousand looks in one site', () => {
    it('hold nobody up', async (test) => {
      const page = await newPage(world, { ...postures.desk, serviceWorkers: 'block' });
      await page.goto(world.server.address);
      await page.waitForSelector('#verdict');
      const example = await world.example();
      const document = manyLooks(JSON.parse(example.document));
      assert.equal(Object.keys(document.revisions).length > 11_000, true);
      await keepInRecord(page, siteId, { document, files: example.files });

      const tooLong = [];
      const step = async (name, work) => {
        const { took, longest } = await heldUp(world, page, async () => {
          await work();
          await painted(page);
        });
        const line = `${name}: ${took.toFixed(0)} ms, thread at most ${longest.toFixed(0)} ms`;
        test.diagnostic(line);
        if (!(longest < longestMs)) tooLong.push(line);
      };
      const at = (hash) => page.evaluate((next) => (location.hash = next), hash);

      await step('the site opens in the field', async () => {
        await page.goto(`${world.server.address}#/field/lot/${lot}`);
        await page.reload();
        await page.waitForSelector('.taken li');
      });
      await step('its findings come', async () => {
        await judged(page);
      });
      await at(`#/field/lot/${lot}/count`);
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.waitForSelector('.bin:enabled');
      await step('ten taps of a count', async () => {
        for (let tap = 1; tap <= 10; tap += 1) {
          await page
            .locator('.bin')
            .nth(1 + (tap % 4))
            .click();
          await page.waitForFunction(
            (stones) => document.querySelector('.stones-so-far b').textContent === stones,
            String(tap),
          );
        }
      });
      await step('the count is kept', async () => {
        await page.getByRole('button', { name: 'Done' }).click();
        await page.waitForSelector('.taken li');
      });
      await step('judging is ended', async () => {
        await page.getByRole('button', { name: 'Stop' }).click();
        await page.getByRole('button', { name: 'Judge it now' }).waitFor();
      });
      await step('all findings', async () => {
        await at('#/');
        await page.waitForSelector('.finding');
      });
      await step('only those that fall short', async () => {
        await page.locator('.chip', { hasText: 'falls short' }).click();
        await page.locator('.chip[aria-pressed="true"]', { hasText: 'falls short' }).waitFor();
      });
      await step('the board of the desk', async () => {
        await at('#/desk');
        await page.waitForSelector('.board-column li');
      });
      await step('the record', async () => {
        await at('#/desk/timeline');
        await page.waitForSelector('.revision');
      });
      await step('the list of looks', async () => {
        await at('#/desk/looks');
        await page.waitForSelector('.item-link');
      });
      await step('the list of loads', async () => {
        await at('#/desk/loads');
        await page.waitForFunction(() =>
          document.querySelector('.item-link')?.href.includes('/desk/loads/'),
        );
      });
      await step('a lot at the desk', async () => {
        await at(`#/desk/lots/${lot}`);
        await page.waitForSelector('.desk-beside .finding');
      });
      const available = page.getByLabel('Available');
      await step('a field is typed and judged', async () => {
        await available.fill('300 ton');
        await page.waitForSelector('[data-trial="true"]', { timeout: judgedMs });
      });
      await step('what was typed is kept', async () => {
        await page.getByRole('button', { name: 'Keep it' }).click();
        await page.waitForSelector('text=Everything here is kept.');
      });
      await step('its findings come', async () => {
        await judged(page);
      });
      const complaints = page.complaints.filter((one) => !one.includes('blocked by Playwright'));
      assert.deepEqual(complaints, []);
      if (judgeTimes) assert.deepEqual(tooLong, []);
      await page.context().close();
    });
  });
}
