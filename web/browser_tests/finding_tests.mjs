// Findings in the browser: the same as natively, open to every question, by mouse and by keyboard.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { describe, it } from 'node:test';
import { compareFindings, siNumbers } from './same_findings.mjs';
import { askEngine, openApplication, postures, savedFindings } from './world.mjs';

/** The finding with most to show. */
function richest(findings) {
  return findings.reduce((best, finding) =>
    finding.steps.length > best.steps.length ? finding : best,
  );
}

/** The published checks, which the page's engine does not carry. */
function checkTables() {
  const folder = new URL('../../checks/', import.meta.url);
  return readdirSync(folder).map((name) => ({
    name,
    text: readFileSync(new URL(name, folder), 'utf8'),
  }));
}

export function findingTests(world) {
  describe('findings', () => {
    for (const units of ['us', 'si']) {
      it(`are those of ${world.expected.by}, in ${units} units`, async (test) => {
        const page = await openApplication(world, postures.desk);
        if (units === 'si') {
          await page.getByRole('radio', { name: 'SI units' }).check();
          await page.waitForFunction(() => document.querySelector('main').ariaBusy === 'false');
        }
        const result = compareFindings(
          await world.expected.findings(units),
          await savedFindings(page),
        );
        test.diagnostic(
          `${result.numbers} numbers, ${result.si} of them SI values, largest relative difference ${result.largest}`,
        );
        assert.deepEqual(result.differences, []);
        assert.ok(result.si > 50, `only ${result.si} SI values were compared`);
        await page.context().close();
      });
    }

    it('go out as papers to print and sign', async () => {
      const page = await openApplication(world, postures.phone);
      await page.getByText('Papers to print and sign').tap();
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Lot acceptance: First deliveries' }).tap(),
      ]);
      const paper = await readFile(await download.path(), 'utf8');
      assert.match(paper, /What was looked at/);
      assert.match(paper, /licensed engineer/);
      await page.getByLabel('Day').fill('1999-01-01');
      await page.getByRole('button', { name: 'Daily report' }).tap();
      await page.getByText('Nothing was taken down on 1999-01-01').waitFor();
      await page.getByLabel('Day').fill('2026-05-26');
      const [daily] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Daily report' }).tap(),
      ]);
      assert.match(await readFile(await daily.path(), 'utf8'), /Load, ticket 4411/);
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('change their texts with the units, and not one value in SI', async () => {
      const page = await openApplication(world, postures.phone);
      await page.locator('.finding > summary').first().tap();
      const shown = () => page.textContent('.finding .body');
      const drawn = () => page.textContent('figure[data-kind=gradation] svg');
      const before = {
        saved: await savedFindings(page),
        shown: await shown(),
        drawn: await drawn(),
      };
      await page.locator('.units label', { hasText: 'SI' }).tap();
      await page.waitForFunction(
        (was) => document.querySelector('figure[data-kind=gradation] svg').textContent !== was,
        before.drawn,
      );
      const saved = await savedFindings(page);
      assert.equal(saved.units, 'si');
      assert.deepEqual(siNumbers(saved), siNumbers(before.saved));
      const sentences = ({ findings }) => findings.map(({ sentence }) => sentence);
      assert.notDeepEqual(sentences(saved), sentences(before.saved));
      const texts = saved.findings[0].steps.map(({ text }) => text);
      const after = await shown();
      assert.notEqual(after, before.shown);
      for (const text of texts) assert.ok(after.includes(text), `${text} is not shown`);
      await page.reload();
      await page.waitForSelector('#verdict');
      assert.equal(await page.getByRole('radio', { name: 'SI units' }).isChecked(), true);
      await page.context().close();
    });

    it('unfold to their steps with sources', async () => {
      const page = await openApplication(world, postures.phone);
      const finding = richest((await world.expected.findings('us')).findings);
      const card = page.locator(`[id="finding-${finding.id}"]`);
      await card.locator('summary').first().tap();
      const body = card.locator('.body');
      await body.waitFor();
      assert.ok((await body.textContent()).includes(finding.sentence));
      assert.ok((await body.textContent()).includes(finding.next));
      const rows = await card
        .locator('.steps tbody tr')
        .evaluateAll((lines) =>
          lines.map((line) => [
            line.querySelector('.symbol').textContent,
            line.querySelector('.amount').textContent,
            line.querySelector('.origin').textContent,
          ]),
        );
      assert.equal(rows.length, finding.steps.length);
      assert.ok(rows.length > 2, 'the richest finding has hardly any steps');
      rows.forEach(([symbol, amount, origin], index) => {
        const step = finding.steps[index];
        assert.equal(symbol, step.symbol);
        assert.equal(amount, step.text);
        assert.ok(origin.includes(step.source));
      });
      for (const source of finding.sources) {
        const said = await card.locator('.sources').textContent();
        assert.ok(said.includes(source.document) && said.includes(source.standing));
      }
      assert.equal(await card.locator('.limits li').count(), finding.limits.length);
      await page.context().close();
    });

    it('are reached and unfolded by keyboard alone', async () => {
      const page = await openApplication(world, postures.desk);
      const isSummary = () =>
        page.evaluate(() => document.activeElement.matches('.finding > summary'));
      let presses = 0;
      while (!(await isSummary()) && presses < 60) {
        await page.keyboard.press('Tab');
        presses += 1;
      }
      assert.ok(await isSummary(), `no finding after ${presses} presses of Tab`);
      const outline = await page.evaluate(
        () => getComputedStyle(document.activeElement).outlineStyle,
      );
      assert.equal(outline, 'solid');
      await page.keyboard.press('Enter');
      const opened = page.locator('.finding[open] .body');
      await opened.waitFor();
      await page.keyboard.press('Tab');
      assert.ok(await page.evaluate(() => document.activeElement.closest('.body') !== null));
      await page.keyboard.press('Shift+Tab');
      await page.keyboard.press('Space');
      await opened.waitFor({ state: 'detached' });
      await page.context().close();
    });

    it('skip link, units and dialog work by keyboard', async () => {
      const page = await openApplication(world, postures.desk);
      await page.keyboard.press('Tab');
      assert.equal(
        await page.evaluate(() => document.activeElement.textContent),
        'Skip to the findings',
      );
      await page.keyboard.press('Enter');
      assert.equal(await page.evaluate(() => document.activeElement.id), 'findings');
      await page.locator('.places a').last().focus();
      await page.keyboard.press('Tab');
      await page.keyboard.press('ArrowRight');
      await page.waitForFunction(() => document.querySelector('input[value=si]').checked);
      await page.getByRole('button', { name: 'Open another site' }).focus();
      await page.keyboard.press('Enter');
      assert.equal(await page.locator('dialog').isVisible(), true);
      await page.keyboard.press('Escape');
      assert.equal(await page.locator('dialog').isVisible(), false);
      assert.equal(
        await page.evaluate(() => document.activeElement.textContent),
        'Open another site',
      );
      await page.context().close();
    });

    it('are opened by the address of the page', async () => {
      const { findings } = await world.expected.findings('us');
      const last = findings.at(-1);
      const page = await openApplication(
        world,
        postures.phone,
        `#/finding/${encodeURIComponent(last.id)}`,
      );
      const card = page.locator(`[id="finding-${last.id}"]`);
      await card.locator('.body').waitFor();
      assert.ok(
        await card
          .locator('summary')
          .first()
          .evaluate((summary) => {
            const { top } = summary.getBoundingClientRect();
            return top >= 0 && top < innerHeight;
          }),
      );
      await page.evaluate(
        (id) => (location.hash = `#/finding/${encodeURIComponent(id)}`),
        findings[0].id,
      );
      await page.locator(`[id="finding-${findings[0].id}"] .body`).waitFor();
      await page.context().close();
    });

    it('are filtered by outcome, with true counts', async () => {
      const page = await openApplication(world, postures.desk);
      const { findings } = await world.expected.findings('us');
      for (const outcome of new Set(findings.map((finding) => finding.outcome))) {
        const number = findings.filter((finding) => finding.outcome === outcome).length;
        const chip = page
          .locator('.chip')
          .filter({ has: page.locator('.name', { hasText: outcome }) });
        assert.equal(await chip.locator('.number').textContent(), String(number));
        await chip.click();
        assert.equal(await page.locator('details.finding').count(), number);
      }
      await page.locator('.chip').first().click();
      assert.equal(await page.locator('details.finding').count(), findings.length);
      await page.context().close();
    });

    it('are kept as a report with pictures', async () => {
      const page = await openApplication(world, postures.desk);
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save the report' }).click(),
      ]);
      const html = await readFile(await download.path(), 'utf8');
      const { headline } = await world.expected.findings('us');
      assert.match(html, /^<!doctype html>/i);
      assert.ok(html.includes(headline.outcome) && html.includes('<svg'));
      await page.context().close();
    });

    it('rest on published checks, and all of them pass in the browser', async (test) => {
      const page = await openApplication(world, postures.desk);
      const { answer } = await askEngine(page, world, { ask: 'prove', files: checkTables() });
      assert.equal(answer.problems, undefined);
      assert.ok(answer.checks.length > 0, 'there is no check');
      test.diagnostic(`${answer.checks.length} checks`);
      assert.deepEqual(
        answer.checks.filter(({ passed }) => !passed),
        [],
      );
      await page.context().close();
    });
  });
}
