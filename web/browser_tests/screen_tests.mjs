// The screen at both sizes, light and dark: the verdict, the look, and who can use it.
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { axeViolations } from './accessibility.mjs';
import { overflowing, smallTargets, textOnText, textOutsidePictures } from './page_inspection.mjs';
import { readPixels, themeColours } from './pixel_reader.mjs';
import { openApplication, postures } from './world.mjs';

function screenAt(world, posture, colorScheme) {
  describe(`the screen on a ${posture}, ${colorScheme}`, () => {
    let page;
    before(async () => {
      page = await openApplication(world, { ...postures[posture], colorScheme });
    });
    after(() => page.context().close());

    it('reads the verdict of the engine', async () => {
      const { headline, site } = await world.expected.findings('us');
      assert.equal(await page.textContent('#verdict'), headline.outcome);
      assert.equal(await page.textContent('.headline .sentence'), headline.sentence);
      assert.equal(await page.textContent('h1'), site.name);
    });

    it('lists every finding with its title and phrase', async () => {
      const { findings } = await world.expected.findings('us');
      const shown = await page.$$eval('details.finding', (cards) =>
        cards.map((card) => [
          card.querySelector('h4').textContent,
          card.querySelector('.phrase').textContent,
        ]),
      );
      assert.deepEqual(
        shown,
        findings.map(({ title, outcome }) => [title, outcome]),
      );
    });

    it('draws each kind of picture for the width there is', async () => {
      const pictures = await page.$$eval('figure.picture', (figures) =>
        figures.map((figure) => ({
          kind: figure.dataset.kind,
          drawn: figure.querySelector('svg').viewBox.baseVal.width,
          room: figure.querySelector('svg').getBoundingClientRect().width,
        })),
      );
      for (const kind of ['gradation', 'section', 'plan', 'stones']) {
        assert.ok(
          pictures.some((picture) => picture.kind === kind),
          `no picture of kind ${kind}`,
        );
      }
      for (const { kind, drawn, room } of pictures) {
        assert.ok(Math.abs(drawn - room) < 1, `${kind}: drawn for ${drawn}, shown in ${room}`);
      }
    });

    it('has river blue and stone grey in its pictures, and is not blank', async () => {
      const colours = await themeColours(page, ['river', 'stone-1', 'stone-2', 'stone-3']);
      const wet = new Set();
      for (const figure of await page.$$('figure.picture')) {
        const kind = await figure.getAttribute('data-kind');
        const drawing = await figure.$('.drawing');
        const {
          pixels,
          colours: different,
          near,
        } = await readPixels(world.browser, await drawing.screenshot(), colours);
        const stone = near['stone-1'] + near['stone-2'] + near['stone-3'];
        assert.ok(different > 20, `${kind} has only ${different} colours`);
        assert.ok(stone > pixels * 0.002, `${kind} has ${stone} stone-grey pixels of ${pixels}`);
        // A key is seen dug into the bank, without water; the section it belongs to has some.
        const dry = kind === 'typical section' && !(await drawing.$('.water'));
        if (!dry) wet.add(kind);
        if (kind !== 'stones' && !dry)
          assert.ok(near.river > 100, `${kind} has ${near.river} river-blue pixels`);
      }
      assert.ok(wet.has('typical section'), 'a typical section shows its water');
    });

    it('cuts off nothing and lets nothing stick out', async () => {
      await page.screenshot({
        path: world.screenshot(`${posture}-${colorScheme}`),
        fullPage: true,
      });
      assert.deepEqual(await overflowing(page), []);
      assert.deepEqual(await textOutsidePictures(page), []);
      assert.deepEqual(await textOnText(page), []);
      assert.deepEqual(await smallTargets(page), []);
    });

    it('does so with every finding unfolded', async () => {
      await page.$$eval('details.finding', (cards) => cards.forEach((card) => (card.open = true)));
      await page.waitForFunction(
        () =>
          document.querySelectorAll('.finding .body').length ===
          document.querySelectorAll('.finding').length,
      );
      // All of it would be a hundred screens high on a phone: more than the browser draws at once.
      await page.screenshot({ path: world.screenshot(`${posture}-${colorScheme}-unfolded`) });
      assert.deepEqual(await overflowing(page), []);
      assert.deepEqual(await smallTargets(page), []);
    });

    it('has nothing that axe-core objects to, all unfolded', async () => {
      assert.deepEqual(await axeViolations(page), []);
      await page.getByRole('button', { name: 'Open another site' }).click();
      await page.waitForSelector('dialog[open]');
      assert.deepEqual(await axeViolations(page, 'dialog[open]'), []);
      await page.keyboard.press('Escape');
    });

    it('complains of nothing', () => assert.deepEqual(page.complaints, []));
  });
}

export function screenTests(world) {
  for (const posture of Object.keys(postures)) {
    for (const colorScheme of ['light', 'dark']) screenAt(world, posture, colorScheme);
  }

  describe('the page', () => {
    it('keeps to its width with text at 200 % on a phone, and on one of 320 px', async () => {
      const page = await openApplication(world, postures.phone);
      await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
      await page.waitForTimeout(300);
      await page.screenshot({ path: world.screenshot('phone-text-200'), fullPage: true });
      assert.deepEqual(await overflowing(page), []);
      await page.evaluate(() => (document.documentElement.style.fontSize = ''));
      await page.setViewportSize({ width: 320, height: 640 });
      await page.waitForTimeout(500);
      assert.deepEqual(await overflowing(page), []);
      assert.deepEqual(await textOutsidePictures(page), []);
      await page.context().close();
    });

    it('redraws its pictures when the width changes', async () => {
      const page = await openApplication(world, postures.desk);
      const width = () => page.$eval('.drawing svg', (svg) => svg.viewBox.baseVal.width);
      const wide = await width();
      await page.setViewportSize({ width: 760, height: 900 });
      await page.waitForFunction(
        (was) => document.querySelector('.drawing svg').viewBox.baseVal.width !== was,
        wide,
      );
      const room = await page.$eval('.picture-width', (place) => place.clientWidth);
      assert.equal(await width(), room);
      await page.context().close();
    });

    it('changes its appearance at the button and remembers it', async () => {
      const page = await openApplication(world, { ...postures.desk, colorScheme: 'light' });
      const theme = () => page.evaluate(() => document.documentElement.dataset.theme);
      const button = page.locator('.appearance');
      assert.equal(await theme(), 'light');
      await button.click(); // light
      await button.click(); // dark
      assert.equal(await theme(), 'dark');
      assert.match(await button.getAttribute('aria-label'), /Dark/);
      await page.reload();
      await page.waitForSelector('#verdict');
      assert.equal(await theme(), 'dark');
      await button.click(); // as the device
      assert.equal(await theme(), 'light');
      await page.emulateMedia({ colorScheme: 'dark' });
      await page.waitForFunction(() => document.documentElement.dataset.theme === 'dark');
      await page.context().close();
    });

    it('prints on light paper with everything unfolded', async () => {
      const page = await openApplication(world, { ...postures.desk, colorScheme: 'dark' });
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      await page.emulateMedia({ media: 'print' });
      const { findings } = await world.expected.findings('us');
      assert.equal(await page.locator('.finding .body').count(), findings.length);
      assert.equal(await page.locator('.tools').isVisible(), false);
      const { paper } = await themeColours(page, ['paper']);
      assert.equal(paper, '#f6f4f0');
      await page.context().close();
    });
  });
}
