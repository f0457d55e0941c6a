// A handful of screens look as they did; `npm run pictures` keeps them anew.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { describe, it } from 'node:test';
import { comparedWithKept } from './compared_pictures.mjs';
import { goTo, openApplication, postures } from './world.mjs';

const screens = {
  findings: '#/',
  lot: '#/field/lot/first-deliveries',
  load: '#/field/lot/first-deliveries/load',
  walk: '#/field/zone/outer-bank',
  help: '#/help/field',
};

export function pictureTests(world, { renew = false } = {}) {
  describe('the screens look as they did', () => {
    for (const [posture, options] of Object.entries(postures)) {
      for (const colorScheme of ['light', 'dark']) {
        it(`on a ${posture}, ${colorScheme}`, async () => {
          const page = await openApplication(world, {
            ...options,
            colorScheme,
            deviceScaleFactor: 1,
            locale: 'en-US',
            timezoneId: 'UTC',
            reducedMotion: 'reduce',
          });
          const wrong = [];
          for (const [screen, hash] of Object.entries(screens)) {
            await goTo(page, hash);
            await page.evaluate(() => {
              document.activeElement?.blur();
              scrollTo(0, 0);
            });
            const name = `${posture}-${colorScheme}-${screen}`;
            const found = await comparedWithKept(world.browser, name, await page.screenshot(), {
              renew,
              differencePath: world.screenshot(`differs-${name}`),
            });
            if (found) wrong.push(found);
          }
          assert.deepEqual(wrong, []);
          await page.context().close();
        });
      }
    }

    it('and one that looks otherwise is told, with a picture of where', async () => {
      const page = await openApplication(world, { ...postures.phone, deviceScaleFactor: 1 });
      const differencePath = world.screenshot('differs-on-purpose');
      const found = await comparedWithKept(
        world.browser,
        'phone-light-help',
        await page.screenshot(),
        {
          renew: false,
          differencePath,
        },
      );
      assert.match(found, /^\d+\.\d % of phone-light-help looks otherwise/);
      assert.ok(existsSync(differencePath));
      await page.context().close();
    });
  });
}
