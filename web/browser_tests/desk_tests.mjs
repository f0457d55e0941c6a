// The desk: a site is made and edited through forms, the engine speaks beside them, the record tells what was done.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { axeViolations } from './accessibility.mjs';
import { overflowing, smallTargets, textOutsidePictures } from './page_inspection.mjs';
import { newPage, openApplication, postures, savedFindings } from './world.mjs';

const zone = '#/desk/zones/outer-bank';

async function openDesk(world, options, hash) {
  const page = await newPage(world, options);
  await page.goto(world.server.address + hash);
  await page.waitForSelector('.desk-content h1');
  return page;
}

async function goTo(page, hash) {
  await page.goto(new URL(hash, page.url()).href);
  await page.waitForSelector('.desk-content h1');
}

/** Waits until what stands beside the form is what would be, or what is kept. */
const beside = (page, trial) =>
  page.waitForSelector(`.desk-beside [data-trial="${trial}"]`, { state: 'attached' });

async function nothingWrong(page) {
  assert.deepEqual(await overflowing(page), []);
  assert.deepEqual(await textOutsidePictures(page), []);
  assert.deepEqual(await axeViolations(page), []);
}

const keepIt = (page) => page.getByRole('button', { name: 'Keep it', exact: true });

export function deskTests(world) {
  describe('the desk', () => {
    it('makes a new site in three steps, up to its findings', async () => {
      const page = await openDesk(world, postures.desk, '#/desk/start');
      await page.getByLabel('What is the site called?').fill('Alder Run');
      await page.getByLabel('Your name').fill('M. Okafor');
      await page.getByRole('button', { name: 'Begin it' }).click();

      await page.getByRole('heading', { name: 'A section across the stream' }).waitFor();
      await page.getByLabel('Discharge').fill('4200 ft³/s');
      const section = page.locator('.field-group').nth(1);
      await section.getByLabel('Name').fill('Section 2+40');
      await section
        .locator('input[data-picks=table]')
        .setInputFiles(join(world.site, 'section-0240.csv'));
      await page.getByText('Kept in section-0240.csv').waitFor();
      await section.getByLabel('Station of the left bank').fill('26 ft');
      await section.getByLabel('Station of the right bank').fill('124 ft');
      await section.getByLabel('Energy slope').fill('0,0031');
      await page.screenshot({ path: world.screenshot('desk-start-water') });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Keep it and go on' }).click();

      await page.getByRole('heading', { name: 'The first part of the works' }).waitFor();
      const [source, works] = [0, 1].map((index) => page.locator('.field-group').nth(index));
      await source.getByLabel('Name').fill('Granite Knob');
      await source.getByLabel('Specific gravity').fill('2.62');
      await works.getByLabel('Name').fill('Outer bank');
      await works.getByLabel('Place').selectOption('bank');
      await works.getByLabel('Bank').selectOption('left');
      assert.equal(await works.getByLabel('Section').inputValue(), 'section-2-40');
      await works.getByLabel('Station of the toe').fill('50 ft');
      await works.getByLabel('Station of the top').fill('26 ft');
      await works.getByLabel('Class').selectOption('fhwa-3');
      await works.getByLabel('Layer thickness').fill('24 in');
      await beside(page, true);
      await page.screenshot({ path: world.screenshot('desk-start-works') });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Keep it and go on' }).click();

      await page.waitForURL(/#\/desk\/zones\/outer-bank$/);
      await page.getByRole('heading', { name: 'Outer bank', level: 1 }).waitFor();
      await page.waitForSelector('.desk-beside [data-kind=section] svg');
      await page.getByRole('link', { name: 'Findings', exact: true }).click();
      await page.getByRole('heading', { name: 'USACE bank and bed equation' }).waitFor();
      const findings = await savedFindings(page);
      assert.equal(findings.site.name, 'Alder Run');
      assert.ok(findings.findings.some(({ id }) => id === 'class.outer-bank'));
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('tells beside the field what the engine refuses, and what would follow before it is kept', async () => {
      const page = await openDesk(world, postures.desk, zone);
      const thickness = page.getByLabel('Layer thickness');
      await thickness.fill('thick');
      await thickness.blur();
      const wrong = page.locator('.line-field', { has: thickness }).locator('.wrong');
      await wrong.waitFor();
      assert.equal(await thickness.getAttribute('aria-invalid'), 'true');
      await page.screenshot({ path: world.screenshot('desk-zone-refused') });
      await nothingWrong(page);
      await keepIt(page).click();
      await page.getByText('One thing stands in the way:').waitFor();
      await page.getByRole('button', { name: 'Go to: layer thickness' }).click();
      assert.equal(await thickness.evaluate((element) => element === document.activeElement), true);

      await thickness.fill('8 in');
      await beside(page, true);
      await page.locator('.changed-outcomes', { hasText: 'was: meets' }).waitFor();
      await page.screenshot({ path: world.screenshot('desk-zone-trial') });
      await nothingWrong(page);
      await page.keyboard.press('Control+s');
      await page.getByText('Kept: Changed: Outer bank.').waitFor();
      await beside(page, false);

      // Undone and made again by keys, with the cursor nowhere in a field.
      await page.getByRole('heading', { name: 'Outer bank', level: 1 }).click();
      await page.keyboard.press('Control+z');
      await page.waitForFunction(() =>
        [...document.querySelectorAll('input')].some(({ value }) => value === '24 in'),
      );
      await page.keyboard.press('Control+Shift+Z');
      await page.getByText('Kept: Made again: Changed: Outer bank.').waitFor();
      await page.getByRole('link', { name: 'Its history' }).click();
      await page.getByRole('heading', { name: 'History: Outer bank' }).waitFor();
      const notes = await page.$$eval('.revision summary b', (all) =>
        all.map((b) => b.textContent),
      );
      assert.deepEqual(notes, [
        'Made again: Changed: Outer bank',
        'Undone: Changed: Outer bank',
        'Changed: Outer bank',
        'Layout of the lower bend; an invented site',
      ]);
      assert.match(await page.textContent('.revisions'), /Outer bank · Layer thickness 8 in/);
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('keeps what was typed through a reload, and gives it back or up', async () => {
      const page = await openDesk(world, postures.desk, zone);
      await page.getByLabel('Layer thickness').fill('27 in');
      await page.reload();
      await page.getByText('What was typed here before and not kept stands again.').waitFor();
      assert.equal(await page.getByLabel('Layer thickness').inputValue(), '27 in');
      await page.getByRole('button', { name: 'As it was' }).click();
      assert.equal(await page.getByLabel('Layer thickness').inputValue(), '24 in');

      // What changed meanwhile stays, though the form that stands again is older.
      const seed = page.getByRole('textbox', { name: 'Seed' });
      const before = await seed.inputValue();
      await seed.fill('sedges');
      await keepIt(page).click();
      await page.getByText('Everything here is kept.').waitFor();
      await page.getByLabel('Layer thickness').fill('28 in');
      await goTo(page, '#/desk/timeline');
      await page.getByRole('button', { name: 'Undo' }).click();
      await page.getByText('Kept: Undone: Changed: Outer bank.').waitFor();
      await goTo(page, zone);
      await page.getByText('What was typed here before and not kept stands again.').waitFor();
      await keepIt(page).click();
      await page.getByText('Kept: Changed: Outer bank.').waitFor();
      await page.reload();
      await page.waitForSelector('.desk-content h1');
      assert.equal(await page.getByLabel('Layer thickness').inputValue(), '28 in');
      assert.equal(await seed.inputValue(), before);
      await page.context().close();
    });

    it('takes a section as a table let go over the page, and says what is wrong in its rows', async () => {
      const page = await openDesk(world, postures.desk, '#/desk/new/sections');
      await page.getByLabel(/^Name/).fill('Section 3+10');
      await page.getByLabel('Energy slope').fill('0.0031');
      const drop = (name, text) =>
        page.evaluate(
          ([file, content]) => {
            const carried = new DataTransfer();
            carried.items.add(new File([content], file, { type: 'text/csv' }));
            const options = { bubbles: true, cancelable: true, dataTransfer: carried };
            document.body.dispatchEvent(new DragEvent('drop', options));
          },
          [name, text],
        );
      await drop('section.csv', 'station (ft),elevation (ft)\n0,12\n9,4\n20,12\n');
      await page.locator('.file-input .wrong', { hasText: 'roughness' }).waitFor();
      await page.screenshot({ path: world.screenshot('desk-section-refused') });
      await drop('section.csv', await readFile(join(world.site, 'section-0240.csv'), 'utf8'));
      await beside(page, true);
      await page.locator('.file-input .wrong').waitFor({ state: 'detached' });
      await keepIt(page).click();
      await page.waitForURL(/#\/desk\/sections\/section-3-10$/);
      await page.reload();
      await page.getByText('Kept in section.csv').waitFor();

      // In the place of the file, points typed and taken from a spreadsheet.
      await page.getByLabel('Survey: which?').selectOption({ label: 'Points, typed' });
      await page.getByRole('button', { name: 'Add a row' }).click();
      await page.getByLabel('Station, Points, row 1').focus();
      await page.evaluate(() => {
        const carried = new DataTransfer();
        carried.setData('text/plain', '0 ft\t12 ft\t0.04\n9 ft\t4 ft\t0.03\n20 ft\t12 ft\t0.04\n');
        const paste = new ClipboardEvent('paste', {
          bubbles: true,
          cancelable: true,
          clipboardData: carried,
        });
        document.activeElement.dispatchEvent(paste);
      });
      assert.equal(await page.getByLabel('Roughness, Points, row 3').inputValue(), '0.04');
      await beside(page, true);
      await page.screenshot({ path: world.screenshot('desk-section-points') });
      await nothingWrong(page);
      await keepIt(page).click();
      await page.getByText('Kept: Changed: Section 3+10.').waitFor();
      await page.context().close();
    });

    it('builds a lining up: kinds up the slope, filter, cover', async () => {
      const page = await openDesk(world, postures.desk, zone);
      const kinds = page.locator('fieldset[data-pointer$="/kinds"]');
      await kinds.getByRole('button', { name: 'Add a row' }).click();
      await kinds.getByLabel('Kind, Kinds of rock up the slope, row 3').selectOption('bare');
      await kinds.getByLabel('Up to, Kinds of rock up the slope, row 3').fill('top');
      await kinds.getByLabel('Up to, Kinds of rock up the slope, row 2').fill('design-flood');
      const filter = page.locator('fieldset[data-pointer$="/filter"]').first();
      await filter.getByRole('button', { name: 'Add: Filter' }).click();
      await filter.getByLabel('Filter 3: which?').selectOption({ label: 'geotextile' });
      await filter.getByLabel('Apparent opening size').fill('0.21 mm');
      await filter.getByLabel('Fabric').selectOption('nonwoven');
      await page.getByRole('textbox', { name: 'Seed' }).fill('sedges');
      await beside(page, true);
      await filter.scrollIntoViewIfNeeded();
      await page.screenshot({ path: world.screenshot('desk-zone-lining') });
      await nothingWrong(page);
      await keepIt(page).click();
      await page.getByText('Kept: Changed: Outer bank.').waitFor();
      await page.reload();
      await page.waitForSelector('.desk-content h1');
      assert.equal(await page.getByRole('textbox', { name: 'Seed' }).inputValue(), 'sedges');
      assert.equal(
        await filter.locator('select').first().locator('option:checked').textContent(),
        'layers',
      );
      await page.context().close();
    });

    it('takes nothing out that something hangs on', async () => {
      const page = await openDesk(world, postures.desk, '#/desk/sources/granite-knob');
      await page.getByRole('button', { name: 'Take it out of the site' }).click();
      await page.getByRole('button', { name: 'Take it out', exact: true }).click();
      await page.getByText('No source is called').first().waitFor();
      await goTo(page, '#/desk/materials/coarse-stock');
      await page.getByRole('button', { name: 'Take it out of the site' }).click();
      await page.getByRole('button', { name: 'Take it out', exact: true }).click();
      await page.waitForURL(/#\/desk\/materials$/);
      await page.getByRole('button', { name: 'Undo' }).click();
      await page
        .getByRole('link', { name: /Coarse stock/ })
        .first()
        .waitFor();
      await page.context().close();
    });

    it('lets two windows edit different fields of one zone, and loses neither', async () => {
      const page = await openDesk(world, postures.desk, zone);
      await page.getByRole('textbox', { name: 'Seed' }).fill('sedges');
      await keepIt(page).click();
      await page.getByText('Kept: Changed: Outer bank.').waitFor();
      const other = await page.context().newPage();
      await other.goto(page.url());
      await other.getByLabel('Layer thickness').fill('28 in');
      await page.getByRole('textbox', { name: 'Seed' }).fill('rushes');
      await keepIt(page).click();
      await page.getByText('Everything here is kept.').waitFor();
      await keepIt(other).click();
      await other.getByText('Everything here is kept.').waitFor();
      await other.reload();
      await other.waitForSelector('.desk-content h1');
      assert.equal(await other.getByRole('textbox', { name: 'Seed' }).inputValue(), 'rushes');
      assert.equal(await other.getByLabel('Layer thickness').inputValue(), '28 in');
      await page.context().close();
    });

    it('shows on its board what must be acted on, and opens each', async () => {
      const page = await openApplication(world, postures.desk);
      await page.getByRole('link', { name: 'Desk', exact: true }).click();
      await page.getByRole('heading', { name: 'Falls short' }).waitFor();
      const { findings } = await world.expected.findings('us');
      for (const [heading, outcome] of [
        ['Falls short', 'falls short'],
        ['Not yet known', 'not yet known'],
        ['For the designer to decide', 'ask the designer'],
      ]) {
        const column = page.getByRole('heading', { name: new RegExp(heading), level: 2 });
        const wanted = findings.filter((finding) => finding.outcome === outcome).length;
        assert.equal(await column.locator('.number').textContent(), String(wanted), heading);
      }
      const first = findings.find(({ outcome }) => outcome === 'falls short');
      await page
        .locator('.board')
        .getByRole('link', { name: new RegExp(first.title) })
        .first()
        .click();
      await page.waitForFunction((id) => document.getElementById(`finding-${id}`)?.open, first.id);
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    for (const posture of ['phone', 'desk']) {
      for (const colorScheme of ['light', 'dark']) {
        it(`fits a ${posture}, ${colorScheme}, and axe-core objects to nothing`, async () => {
          const page = await openDesk(world, { ...postures[posture], colorScheme }, '#/desk');
          for (const [name, hash] of [
            ['board', '#/desk'],
            ['zone', zone],
            ['zones', '#/desk/zones'],
            ['section', '#/desk/sections/section-0240'],
            ['lot', '#/desk/lots/first-deliveries'],
            ['look', '#/desk/looks/pile-count'],
            ['record', '#/desk/timeline'],
            ['history', '#/desk/timeline/zones/outer-bank'],
            ['start', '#/desk/start'],
            ['prices', '#/desk/prices'],
            ['site', '#/desk/site'],
          ]) {
            await goTo(page, hash);
            await page.screenshot({
              path: world.screenshot(`desk-at-${posture}-${colorScheme}-${name}`),
            });
            await nothingWrong(page);
            if (posture === 'phone') assert.deepEqual(await smallTargets(page), [], name);
          }
          assert.deepEqual(page.complaints, []);
          await page.context().close();
        });
      }
    }

    it('edits without a signal, though nobody was at the desk before it was lost', async () => {
      const server = await world.startServer();
      const page = await openApplication(world, postures.desk, '', server);
      await page.getByText('also works without a signal').waitFor();
      await page.context().setOffline(true);
      await server.stop();
      await page.goto(server.address + zone);
      await page.reload();
      await page.waitForSelector('.desk-content h1');
      await page.getByLabel('Layer thickness').fill('30 in');
      await beside(page, true);
      await page.keyboard.press('Control+s');
      await page.getByText('Kept: Changed: Outer bank.').waitFor();
      await page.context().close();
    });

    it('lists its keys at a key, which can be switched off', async () => {
      const page = await openDesk(world, postures.desk, zone);
      // A question mark that is typed is a question mark.
      await page.getByLabel('Layer thickness').focus();
      await page.keyboard.type('?');
      assert.equal(await page.locator('dialog[open]').count(), 0);
      await page.getByRole('button', { name: 'As it was' }).click();
      await page.keyboard.press('?');
      await page.getByRole('heading', { name: 'Keys at the desk' }).waitFor();
      await nothingWrong(page);
      await page.getByLabel('The key ? opens this list').uncheck();
      await page.keyboard.press('Escape');
      await page.reload();
      await page.waitForSelector('.desk-content h1');
      await page.keyboard.press('?');
      assert.equal(await page.locator('dialog[open]').count(), 0);
      await page.getByRole('button', { name: 'Keyboard' }).click();
      await page.getByRole('heading', { name: 'Keys at the desk' }).waitFor();
      await page.context().close();
    });

    it('can be used by keyboard alone', async () => {
      const page = await openDesk(world, postures.desk, '#/desk/flow_cases/base-flow');
      await page.getByLabel(/^Name/).focus();
      await page.keyboard.press('Tab');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Control+a');
      await page.keyboard.type('95 ft³/s');
      await page.keyboard.press('Enter');
      await page.getByText('Kept: Changed: Base flow.').waitFor();
      await page.context().close();
    });
  });
}
