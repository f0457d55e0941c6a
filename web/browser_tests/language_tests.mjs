// The screens in Spanish: chosen, kept without a signal, nothing clipped, and back to English.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { axeViolations } from './accessibility.mjs';
import { overflowing, smallTargets } from './page_inspection.mjs';
import { goTo, openApplication, postures } from './world.mjs';

const outcomes = /^(cumple|no cumple|aún no se sabe|consultar al proyectista)$/;
const lot = '#/field/lot/first-deliveries';

function inLanguage(page, language) {
  return page.waitForFunction(
    (wanted) =>
      document.documentElement.lang.startsWith(wanted) &&
      document.querySelector('#verdict, .field h1, .desk h1') &&
      document.querySelector('main').ariaBusy === 'false',
    language,
  );
}

async function choose(page, language) {
  await page.locator('select[name=language]').selectOption(language);
  await inLanguage(page, language);
}

/** Screens that are looked at in Spanish; those of the phone on the narrowest one too. */
const onPhone = {
  findings: '#/',
  lot,
  count: `${lot}/count`,
  'quick-look': `${lot}/quick-look`,
  photo: `${lot}/photo`,
  walk: '#/field/zone/outer-bank',
  help: '#/help/field',
};
const onDesk = {
  board: '#/desk',
  zone: '#/desk/zones/outer-bank',
  methods: '#/desk/zones/outer-bank/methods',
  blend: '#/desk/blend',
};

/** What scrolls within its own frame is meant to be wider. */
async function tooWide(page) {
  return (await overflowing(page)).filter(
    (found) => !/^(DIV\.help-table|SPAN\.help-picture)/.test(found),
  );
}

export function languageTests(world) {
  describe('in Spanish', () => {
    it('sentences that could not be fetched come with the next connection', async () => {
      const page = await openApplication(world, { ...postures.desk, serviceWorkers: 'block' });
      const later = '**/all_sentences-*.js';
      await page.route(later, (route) => route.abort());
      await choose(page, 'es');
      await Promise.all([page.waitForEvent('requestfailed'), goTo(page, onDesk.methods)]);
      const asWritten = page.locator('main span[lang=en]');
      await asWritten.first().waitFor();
      await page.unroute(later);
      await page.evaluate(() => dispatchEvent(new Event('online')));
      await asWritten.first().waitFor({ state: 'detached' });
      await page.context().close();
    });

    it('a count is taken on the phone, without a signal, and English comes back', async () => {
      const server = await world.startServer();
      const page = await openApplication(world, postures.phone, '', server);
      await page.getByText('also works without a signal').waitFor();
      await choose(page, 'es');
      assert.match(await page.textContent('#verdict'), outcomes);
      await page.getByText('también funciona sin señal').waitFor();
      const headline = page.locator('.headline .sentence');
      assert.match(await headline.textContent(), /^Filtro de Outer bank: cumple\. /);
      assert.equal(await headline.locator('[lang=en]').count(), 0, 'all of it is in Spanish');
      await page.context().setOffline(true);
      await server.stop();
      await goTo(page, `${lot}/count`);
      assert.equal(await page.locator('select[name=language]').count(), 0, 'typed and not kept');
      await page.getByRole('button', { name: 'Comenzar' }).tap();
      await page.waitForSelector('.bin:enabled');
      for (const number of [1, 2, 3]) {
        await page.locator('.bin').nth(number).tap();
        await page.waitForFunction(
          (wanted) => document.querySelector('.stones-so-far b')?.textContent === String(wanted),
          number,
        );
      }
      await page.locator('.live-words b').waitFor();
      assert.match(await page.textContent('.live-words b'), outcomes);
      const verdict = page.locator('.live-words .sentence').first();
      assert.match(await verdict.textContent(), /^(Siga contando|El conteo puede|3 piedras por)/);
      assert.equal(await verdict.locator('[lang=en]').count(), 0, 'all of it is in Spanish');
      await page.screenshot({ path: world.screenshot('spanish-phone-counting'), fullPage: true });
      await page.reload();
      await page.getByRole('button', { name: 'Listo' }).waitFor();
      assert.equal(await page.textContent('.stones-so-far b'), '3');
      await page.getByRole('button', { name: 'Listo' }).tap();
      await page.getByText('Anotado hasta ahora').waitFor();
      await page.getByText('Conteo de piedras', { exact: false }).first().waitFor();
      await choose(page, 'en');
      await page.getByText('Taken down so far').waitFor();
      await page.context().close();
    });

    it('is what a browser in Spanish gets at first', async () => {
      const page = await openApplication(world, { ...postures.desk, locale: 'es-MX' });
      assert.match(await page.textContent('#verdict'), outcomes);
      assert.equal(await page.getAttribute('html', 'lang'), 'es-MX');
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    for (const [posture, screens] of Object.entries({ phone: onPhone, desk: onDesk })) {
      it(`nothing is clipped and all is read aloud, ${posture}`, async () => {
        const page = await openApplication(world, { ...postures[posture], locale: 'es' });
        const wrong = [];
        for (const [screen, hash] of Object.entries(screens)) {
          await goTo(page, hash);
          await page.screenshot({
            path: world.screenshot(`spanish-${posture}-${screen}`),
            fullPage: true,
          });
          const here = (found) => wrong.push(...found.map((one) => `${screen}: ${one}`));
          here(await axeViolations(page));
          here(await tooWide(page));
          if (posture === 'desk') continue;
          here(await smallTargets(page));
          await page.setViewportSize({ width: 320, height: 640 });
          here(await tooWide(page));
          await page.setViewportSize(postures.phone.viewport);
        }
        assert.deepEqual(wrong, []);
        await page.context().close();
      });
    }
  });
}
