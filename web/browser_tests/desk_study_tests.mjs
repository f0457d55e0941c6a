// The desk looks into one item: other rock, submittals, methods side by side; a blend and a mix are designed and kept.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { axeViolations } from './accessibility.mjs';
import { overflowing, smallTargets, textOutsidePictures } from './page_inspection.mjs';
import { newPage, openApplication, postures } from './world.mjs';

async function openStudy(world, options, hash) {
  const page = await newPage(world, options);
  await page.goto(world.server.address + hash);
  await page.waitForSelector('.study h1');
  return page;
}

/** The example with mixes and several materials, opened as a user does. */
async function openCrossing(world, options, hash) {
  const page = await openApplication(world, options);
  await page.getByRole('button', { name: 'Open another site' }).click();
  await page.getByRole('button', { name: /Open the example .*Tansy/i }).click();
  await page.getByRole('heading', { name: /Tansy/, level: 1 }).waitFor();
  await page.goto(new URL(hash, page.url()).href);
  await page.waitForSelector('.study h1');
  return page;
}

async function nothingWrong(page) {
  assert.deepEqual(await overflowing(page), []);
  assert.deepEqual(await textOutsidePictures(page), []);
  assert.deepEqual(await axeViolations(page), []);
}

/** The cells of the row that is called so. */
const cellsOf = (page, what) =>
  page
    .locator('.compared-table tbody tr', { has: page.locator(`th:text-is("${what}")`) })
    .locator('td')
    .allTextContents();

const copied = async (page) => {
  await page.getByRole('button', { name: 'Copy the table' }).first().click();
  await page.getByText('it can be put into a spreadsheet').first().waitFor();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  return text
    .trimEnd()
    .split('\n')
    .map((line) => line.split('\t'));
};

export function deskStudyTests(world) {
  describe('what the desk looks into', () => {
    it('puts other rock beside the rock specified, and opens and copies every figure', async () => {
      const page = await newPage(world, postures.desk);
      await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
      await page.goto(`${world.server.address}#/desk/zones/outer-bank`);
      await page.getByRole('link', { name: 'Other rock beside this' }).click();
      await page.getByText('Choose what is other than specified.').waitFor();
      await page.getByLabel('Specific gravity').fill('2,45');
      await page.getByText('For the same safety specify').first().waitFor();
      const gravity = await cellsOf(page, 'Specific gravity');
      assert.match(gravity[1], /2\.45/);
      assert.match(gravity[1], /≠/);
      assert.match((await cellsOf(page, 'Stones against the size asked for'))[1], /falls short/);
      await page.screenshot({ path: world.screenshot('study-other-rock'), fullPage: true });
      await nothingWrong(page);

      const all = await page.locator('.compared-table tbody tr').count();
      await page.getByLabel('Only what differs').check();
      const different = await page.locator('.compared-table tbody tr').count();
      assert.ok(different > 2 && different < all, `${different} of ${all}`);
      const table = await copied(page);
      assert.deepEqual(table[0].slice(1, 3), ['As specified', 'Substitute as offered']);
      assert.equal(table.length, different + 1);

      // By keyboard: a figure opens to its steps, and the key that closes them leads back to it.
      const figure = page
        .getByRole('button', { name: /a D30 of at least .*open its steps/ })
        .first();
      await figure.focus();
      await page.keyboard.press('Enter');
      await page.locator('dialog[open] table.steps').waitFor();
      await nothingWrong(page);
      await page.keyboard.press('Escape');
      assert.equal(await figure.evaluate((button) => button === document.activeElement), true);

      await page.getByLabel('Specific gravity').fill('26');
      await page.locator('.problem-lines').waitFor();
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('takes other rock over with what makes it as safe, shown first and undone as one', async () => {
      const page = await newPage(world, postures.desk);
      await page.goto(`${world.server.address}#/desk/new/sources`);
      await page.getByLabel(/^Name/).fill('Light pit');
      await page
        .getByLabel(/^Specific gravity/)
        .first()
        .fill('2.3');
      await page.getByLabel(/^Angularity/).selectOption('rounded');
      await page.getByRole('button', { name: 'Keep it', exact: true }).click();
      await page.getByText('Kept: New: Light pit.').waitFor();
      await page.goto(new URL('#/desk/zones/outer-bank/other-rock', page.url()).href);
      await page.getByLabel('Source').selectOption({ label: 'Light pit' });
      const proposed = page.locator('.take-over tbody tr');
      await proposed.first().waitFor();
      const shown = await proposed.allTextContents();
      assert.ok(
        shown.some((row) => /Source.*Granite Knob.*Light pit/.test(row)),
        shown.join('; '),
      );
      assert.ok(
        shown.some((row) => /Layer thickness.*24 in.*\d in/.test(row)),
        shown.join('; '),
      );
      // What is counted opens to its steps too.
      await page
        .locator('.compared-table tbody tr', { hasText: 'Cost of all that has a price' })
        .locator('button')
        .last()
        .click();
      await page.locator('dialog[open] table.steps').waitFor();
      await page.keyboard.press('Escape');
      await page.screenshot({ path: world.screenshot('study-take-over'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Take it over' }).click();
      await page.getByText('Kept: Other rock taken over: Outer bank.').waitFor();
      const thickness = (text) =>
        page.waitForFunction(
          (wanted) =>
            [...document.querySelectorAll('.desk-form input')].some(
              ({ value }) => value === wanted,
            ),
          text,
        );
      const [, thicker] = /Layer thickness24 in(.+)/.exec(shown.join('\n'));
      await thickness(thicker);
      await page.getByRole('button', { name: /Undo/ }).click();
      await thickness('24 in');
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('puts what was handed in of a source beside what is required', async () => {
      const page = await openStudy(world, postures.desk, '#/desk/sources/granite-knob/submittals');
      await page.getByText('See what stands open').first().waitFor();
      const absorption = await page
        .locator('.compared-table tbody tr', { hasText: 'Absorption' })
        .first()
        .locator('td')
        .allTextContents();
      assert.match(absorption[0], /at most/);
      assert.match(absorption[1], /0\.6 %/);
      await nothingWrong(page);
      await page.context().close();
    });

    it('puts every method that speaks side by side, with what it was given', async () => {
      const page = await openStudy(world, postures.desk, '#/desk/zones/outer-bank/methods');
      const { findings } = await world.expected.findings('us');
      const methods = findings.filter(
        ({ topic, values }) =>
          topic === 'rock size' && values.some(({ key }) => key === 'required_size'),
      );
      await page.waitForSelector('.study-picture svg');
      const names = await page.locator('.compared-table thead th').allTextContents();
      assert.deepEqual([...names].sort(), methods.map(({ title }) => title).sort());
      assert.equal(names[0], methods.find(({ governs }) => governs).title);
      const asked = await cellsOf(page, 'Asks for');
      assert.equal(asked.length, methods.length);
      for (const { values } of methods) {
        const { symbol, text } = values.find(({ key }) => key === 'required_size');
        assert.ok(asked.includes(`${symbol} ≥ ${text}`), `${symbol} ≥ ${text}`);
      }
      await page.getByText('Methods shown: 11 of 11').click();
      await page.getByLabel('Isbash equation').uncheck();
      await page.getByText('Methods shown: 10 of 11').waitFor();
      assert.equal(await page.locator('.compared-table thead th').count(), methods.length - 1);
      await nothingWrong(page);
      await page.context().close();
    });

    it('blends materials for a class, shows the curve in the band, and keeps the blend', async () => {
      const page = await openCrossing(world, postures.desk, '#/desk/blend');
      await page.getByText('Blends of these materials keep').waitFor();
      await page.waitForSelector('.study-picture svg');
      await page.getByLabel('Mass to bring').fill('300 ton');
      await page.getByLabel('Whole buckets').check();
      await page.screenshot({ path: world.screenshot('study-blend'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Keep it as a material: Whole buckets' }).click();
      await page.waitForURL(/#\/desk\/materials\/blend-for-/);
      await page.getByRole('heading', { name: /^Blend for Class II/ }).waitFor();
      await page.getByRole('button', { name: 'Undo' }).click();
      await page.getByText('This site has no such item.').waitFor();

      // One material alone cannot keep the class, and it is said why.
      await page.goto(new URL('#/desk/blend', page.url()).href);
      await page.getByLabel('Large rock of Basalt Ridge').uncheck();
      await page.getByText('No blend of these materials keeps').waitFor();
      assert.ok((await page.locator('.study-verdict p').count()) > 1);
      await page.getByLabel('Nearest, though outside').waitFor();
      assert.equal(await page.getByRole('button', { name: /Keep it as a material/ }).count(), 0);
      await nothingWrong(page);
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('designs the mix of a zone and takes its proportions over as a revision', async () => {
      const page = await openCrossing(world, postures.desk, '#/desk/zones/left-bank/mix');
      await page.getByRole('button', { name: 'Take these proportions over' }).waitFor();
      await page.getByLabel('Brought together').selectOption('washed in');
      await page.getByText('Looking').waitFor({ state: 'detached' });
      await page.waitForSelector('.study-picture svg');
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Take these proportions over' }).click();
      await page.getByText('Kept: Proportions: Soil-filled rock of the bank.').waitFor();
      await page.getByRole('link', { name: 'Mixes' }).click();
      await page
        .getByRole('link', { name: /Soil-filled rock of the bank/ })
        .last()
        .click();
      await page.waitForSelector('.desk-item h1');
      // The form follows the record as soon as the engine has read it.
      const placing = page.locator('.desk-form select', {
        has: page.locator('option:checked', { hasText: /^washed in$/ }),
      });
      await placing.waitFor();
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('lays an image of the user under the plan, by two points, and keeps it on the device', async () => {
      const page = await openStudy(world, postures.desk, '#/desk/centrelines/main-channel/plan');
      await page.waitForSelector('.map-drawing svg');
      // A picture of 400 by 300 pixels, made here and let go over the page.
      await page.evaluate(async () => {
        const canvas = new OffscreenCanvas(400, 300);
        const pen = canvas.getContext('2d');
        pen.fillStyle = '#7a8a6a';
        pen.fillRect(0, 0, 400, 300);
        const file = new File([await canvas.convertToBlob({ type: 'image/png' })], 'air.png', {
          type: 'image/png',
        });
        const carried = new DataTransfer();
        carried.items.add(file);
        const options = { bubbles: true, cancelable: true, dataTransfer: carried };
        document.body.dispatchEvent(new DragEvent('drop', options));
      });
      await page.getByText('air.png is kept on this device.').waitFor();
      const placed = () => page.locator('.map-drawing > image').first().getAttribute('transform');
      const before = await placed();
      await page.getByRole('radio', { name: 'Point B' }).check();
      await page.getByRole('group', { name: 'On the plan' }).click({ position: { x: 60, y: 60 } });
      await page.waitForFunction(
        (old) => document.querySelector('.map-drawing > image').getAttribute('transform') !== old,
        before,
      );
      const tapped = await placed();
      await page.getByRole('group', { name: 'On the plan' }).focus();
      await page.keyboard.press('Shift+ArrowRight');
      await page.waitForFunction(
        (old) => document.querySelector('.map-drawing > image').getAttribute('transform') !== old,
        tapped,
      );
      const nudged = await placed();

      // By keys and by buttons the plan is enlarged, moved, and seen whole again.
      const map = page.locator('.map-drawing').first();
      const whole = await map.getAttribute('viewBox');
      await map.focus();
      await page.keyboard.press('+');
      await page.keyboard.press('ArrowRight');
      assert.notEqual(await map.getAttribute('viewBox'), whole);
      await page.getByRole('button', { name: 'See all of it' }).first().click();
      assert.equal(await map.getAttribute('viewBox'), whole);
      await page.screenshot({ path: world.screenshot('study-plan'), fullPage: true });
      await nothingWrong(page);

      await page.reload();
      await page.getByText('air.png is kept on this device.').waitFor();
      await page.waitForSelector('.map-drawing > image');
      assert.equal(await placed(), nudged);
      await page.getByRole('button', { name: 'Take the image away' }).click();
      await page.getByText('or drop it anywhere on this page.').waitFor();
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    for (const posture of ['phone', 'desk']) {
      for (const colorScheme of ['light', 'dark']) {
        it(`fits a ${posture}, ${colorScheme}, and axe-core objects to nothing`, async () => {
          const page = await openCrossing(
            world,
            { ...postures[posture], colorScheme },
            '#/desk/blend',
          );
          for (const [name, hash] of [
            ['blend', '#/desk/blend'],
            ['mix', '#/desk/zones/left-bank/mix'],
            ['methods', '#/desk/zones/left-bank/methods'],
            ['filter', '#/desk/zones/left-bank/filter'],
            ['other-rock', '#/desk/zones/left-bank/other-rock'],
          ]) {
            await page.goto(new URL(hash, page.url()).href);
            await page.waitForSelector('.study h1');
            if (name === 'other-rock') {
              await page.getByLabel('Shape').selectOption('rounded');
              await page.waitForSelector('.compared-table');
            }
            await page.waitForTimeout(600);
            await page.screenshot({
              path: world.screenshot(`study-at-${posture}-${colorScheme}-${name}`),
              fullPage: true,
            });
            await nothingWrong(page);
            if (posture === 'phone') assert.deepEqual(await smallTargets(page), [], name);
          }
          assert.deepEqual(page.complaints, []);
          await page.context().close();
        });
      }
    }

    it('fits 320 px', async () => {
      const options = { ...postures.phone, viewport: { width: 320, height: 700 } };
      const page = await openStudy(world, options, '#/desk/zones/outer-bank/methods');
      for (const hash of [
        '#/desk/zones/outer-bank/filter',
        '#/desk/blend',
        '#/desk/centrelines/main-channel/plan',
      ]) {
        await nothingWrong(page);
        await page.goto(new URL(hash, page.url()).href);
        await page.waitForTimeout(600);
      }
      await nothingWrong(page);
      await page.context().close();
    });
  });
}
