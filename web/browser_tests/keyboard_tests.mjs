// The jobs with the keyboard alone, and as a screen reader has them: order, names, headings, what is told.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { axeViolations } from './accessibility.mjs';
import { readInOrder, tabTo, wrongInTree } from './keyboard.mjs';
import { overflowing } from './page_inspection.mjs';
import { goTo, openApplication, postures } from './world.mjs';

/** Waits for the screen of this heading, which has taken the focus that its way there lost. */
const arrived = (page, name) =>
  page.waitForFunction(
    (wanted) =>
      document.activeElement?.textContent === wanted &&
      document.activeElement === document.querySelector('#content h1'),
    name,
  );

async function press(page, name, key = 'Enter') {
  await tabTo(page, name);
  await page.keyboard.press(key);
}

/** The screens that are looked at in every way in which somebody may have to look at them. */
const screens = {
  findings: '#/',
  field: '#/field',
  lot: '#/field/lot/first-deliveries',
  count: '#/field/lot/first-deliveries/count',
  load: '#/field/lot/first-deliveries/load',
  walk: '#/field/zone/outer-bank',
  help: '#/help',
  method: '#/help/isbash',
  board: '#/desk',
  zone: '#/desk/zones/outer-bank',
  look: '#/desk/looks/pile-count',
};

export function keyboardTests(world) {
  describe('with the keyboard alone', () => {
    it('a count and a load: from the site to the verdict', async () => {
      const page = await openApplication(world, postures.desk);
      await press(page, 'Field');
      await press(page, /^First deliveries/);
      await arrived(page, 'First deliveries');
      await press(page, 'Count stones');
      await arrived(page, 'Count of First deliveries');
      await tabTo(page, 'Your name');
      await page.keyboard.type('M. Okafor');
      await press(page, 'Begin');
      await page.waitForSelector('.bin:enabled');
      const told = await page.evaluateHandle(() => ({
        stones: document.querySelector('.stones-so-far'),
        words: document.querySelector('.live-words'),
      }));
      const saying = () =>
        told.evaluate(({ stones, words }) => ({
          live: [stones.getAttribute('aria-live'), words.getAttribute('role')],
          here: stones.isConnected && words.isConnected,
          stones: stones.textContent,
          words: words.textContent,
        }));
      const before = await saying();
      assert.deepEqual(before.live, ['polite', 'status']);
      await tabTo(page, /^9 to/);
      for (let stone = 1; stone <= 12; stone += 1) {
        await page.keyboard.press(stone % 2 ? 'Enter' : 'Space');
        await page.waitForFunction(
          (number) => document.querySelector('.stones-so-far b')?.textContent === String(number),
          stone,
        );
      }
      await page.waitForFunction(() =>
        /meets|falls short|not yet known/.test(document.querySelector('.live-words')?.textContent),
      );
      const after = await saying();
      assert.ok(after.here, 'what is told is told where it was listened to');
      assert.match(after.stones, /12 stones/);
      await press(page, 'Take back');
      await page.getByText('11 stones', { exact: true }).waitFor();
      await press(page, 'Done');
      await arrived(page, 'First deliveries');
      await page.getByText('Kept: Stone count: 11 stones.').waitFor();
      await press(page, 'Load');
      await arrived(page, 'Load');
      await tabTo(page, 'Ticket');
      await page.keyboard.type('4431');
      await press(page, 'Keep it');
      await arrived(page, 'First deliveries');
      await page.getByText('7 loads').waitFor();
      assert.match(await page.title(), /^Field · .+ · Proofstone$/);
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('a change at the desk: to the zone, into its form, kept and undone', async () => {
      const page = await openApplication(world, postures.desk);
      await press(page, 'Desk');
      await page.waitForFunction(() => location.hash.startsWith('#/desk'));
      await goTo(page, screens.zone);
      await tabTo(page, /^Layer thickness/);
      await page.keyboard.press('Control+a');
      await page.keyboard.type('27 in');
      await press(page, 'Keep it');
      await page.getByText('Kept: Changed: Outer bank.').waitFor();
      // There it is a key, as in every other program of a desk.
      await page.evaluate(() => document.activeElement.blur());
      await page.keyboard.press('Control+z');
      await page.getByText('Kept: Undone: Changed: Outer bank.').waitFor();
      await page.waitForFunction(() =>
        [...document.querySelectorAll('.desk-form input')].some(({ value }) => value === '24 in'),
      );
      await page.context().close();
    });

    it('skips to the page', async () => {
      const page = await openApplication(world, postures.desk);
      await goTo(page, screens.field);
      await tabTo(page, 'Skip to the page');
      await page.keyboard.press('Enter');
      await tabTo(page, /^First deliveries/);
      await page.context().close();
    });
  });

  describe('as a screen reader has it', () => {
    for (const [posture, options] of Object.entries(postures)) {
      it(`every control has a name and headings go step by step, ${posture}`, async () => {
        const page = await openApplication(world, options);
        for (const [screen, hash] of Object.entries(screens)) {
          await goTo(page, hash);
          assert.deepEqual(await wrongInTree(page), [], screen);
        }
        await page.context().close();
      });
    }

    it('reads a lot, a count and a load in the order of the work', async () => {
      const page = await openApplication(world, postures.phone);
      await goTo(page, screens.lot);
      await readInOrder(page, ['First deliveries', 'Count stones', 'Load', 'Taken down so far']);
      await goTo(page, screens.count);
      await page.getByRole('button', { name: 'Begin' }).waitFor();
      await readInOrder(page, ['How are the stones picked?', 'Where on the pile?', 'Begin']);
      await goTo(page, screens.load);
      await readInOrder(page, ['Load', 'Ticket', 'Mass', 'Your name', 'Keep it']);
      await page.context().close();
    });
  });

  describe('however somebody has to look', () => {
    it('text at 200 % cuts off nothing and lets nothing stick out', async () => {
      for (const [posture, options] of Object.entries(postures)) {
        const page = await openApplication(world, options);
        await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
        for (const [screen, hash] of Object.entries(screens)) {
          await goTo(page, hash);
          const wide = (await overflowing(page)).filter(
            (one) => !/^(DIV\.help-table|SPAN\.help-picture)/.test(one),
          );
          await page.screenshot({ path: world.screenshot(`${posture}-200-${screen}`) });
          assert.deepEqual(wide, [], `${posture}: ${screen}`);
        }
        await page.context().close();
      }
    });

    it('in the colours that the device forces', async () => {
      const page = await openApplication(world, { ...postures.phone, forcedColors: 'active' });
      for (const [screen, hash] of Object.entries(screens)) {
        await goTo(page, hash);
        await page.screenshot({ path: world.screenshot(`phone-forced-${screen}`) });
      }
      await goTo(page, screens.lot);
      assert.deepEqual(await axeViolations(page), []);
      await page.context().close();
    });

    it('with eyes that tell fewer colours apart, by words and shapes', async () => {
      const page = await openApplication(world, postures.phone);
      const session = await page.context().newCDPSession(page);
      for (const type of ['deuteranopia', 'protanopia', 'tritanopia', 'achromatopsia']) {
        await session.send('Emulation.setEmulatedVisionDeficiency', { type });
        for (const screen of ['findings', 'lot']) {
          await goTo(page, screens[screen]);
          await page.screenshot({ path: world.screenshot(`phone-${type}-${screen}`) });
        }
      }
      // No outcome is told by colour alone: each has its own phrase and its own shape.
      await goTo(page, screens.findings);
      const marks = await page.$$eval('details.finding', (cards) =>
        cards.map((card) => [
          card.dataset.outcome,
          card.querySelector('.phrase').textContent,
          card.querySelector('summary svg').innerHTML,
        ]),
      );
      const shapes = new Map();
      for (const [outcome, phrase, shape] of marks) {
        assert.equal(phrase, outcome);
        shapes.set(outcome, shape);
      }
      assert.equal(new Set(shapes.values()).size, shapes.size);
      await page.context().close();
    });
  });
}
