// Opening a site from files of the device: what is right is assessed, what is wrong is named.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { openApplication, postures } from './world.mjs';

/** A file as the file chooser gives it to the page. */
function chosen(name, text) {
  const mimeType = name.endsWith('.json') ? 'application/json' : 'text/csv';
  return { name, mimeType, buffer: Buffer.from(text) };
}

async function problemsShown(page) {
  await page.waitForSelector('.problems');
  return page.$$eval('.problems > ol > li', (items) =>
    items.map((item) => ({
      file: item.querySelector('.file')?.textContent ?? '',
      where: item.querySelector('.where')?.textContent ?? '',
      what: item.querySelector('.what').textContent,
      allowed: item.querySelector('.allowed')?.textContent ?? '',
    })),
  );
}

export function siteFileTests(world) {
  const files = () => world.example();
  const choose = (page, list) => page.setInputFiles('input[data-picks=files]', list);

  describe('opening a site', () => {
    it('from chosen files gives what the engine finds', async () => {
      const page = await openApplication(world, postures.phone);
      const { document, files: tables } = await files();
      await choose(page, [
        chosen('site.json', document),
        ...tables.map(({ name, text }) => chosen(name, text)),
      ]);
      await page.getByText('Read from files on this device and kept here').waitFor();
      const { headline } = await world.expected.findings('us');
      assert.equal(await page.textContent('#verdict'), headline.outcome);
      await page.context().close();
    });

    it('from a chosen folder gives the same', async () => {
      const page = await openApplication(world, postures.desk);
      await page.setInputFiles('input[data-picks=folder]', world.site);
      await page.getByText('Read from files on this device and kept here').waitFor();
      assert.equal(
        await page.textContent('#verdict'),
        (await world.expected.findings('us')).headline.outcome,
      );
      await page.context().close();
    });

    it('by dropping files gives the same', async () => {
      const page = await openApplication(world, postures.desk);
      const { document, files: tables } = await files();
      await page.evaluate(
        (list) => {
          const dataTransfer = new DataTransfer();
          for (const { name, text } of list) dataTransfer.items.add(new File([text], name));
          window.dispatchEvent(new DragEvent('dragover', { dataTransfer, cancelable: true }));
          window.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
        },
        [{ name: 'site.json', text: document }, ...tables],
      );
      await page.getByText('Read from files on this device and kept here').waitFor();
      assert.equal(
        await page.textContent('#verdict'),
        (await world.expected.findings('us')).headline.outcome,
      );
      await page.context().close();
    });

    it('names each thing that is wrong in the document, and where', async () => {
      const page = await openApplication(world, postures.phone);
      const { document, files: tables } = await files();
      const broken = document
        .replace('4200 ft³/s', '4200 furlongs')
        .replace('"place": "bank"', '"place": "roof"');
      assert.notEqual(broken, document);
      await choose(page, [
        chosen('site.json', broken),
        ...tables.map(({ name, text }) => chosen(name, text)),
      ]);
      const problems = await problemsShown(page);
      await page.screenshot({ path: world.screenshot('phone-problems'), fullPage: true });
      const discharge = problems.find(({ where }) => where.endsWith('/discharge'));
      assert.ok(discharge, JSON.stringify(problems));
      assert.match(discharge.what, /furlongs|unit|discharge/i);
      const place = problems.find(({ where }) => where.endsWith('/place'));
      assert.match(place?.allowed ?? '', /bank/);
      await page.getByRole('button', { name: 'Open another site' }).click();
      await page
        .getByRole('button', { name: /Open the example/ })
        .first()
        .click();
      await page.waitForSelector('#verdict');
      await page.context().close();
    });

    it('names file, row and field of a bad table, and a file that is missing', async () => {
      const page = await openApplication(world, postures.desk);
      const { document, files: tables } = await files();
      const section = tables.find(({ name }) => name.startsWith('section'));
      const lines = section.text.split('\n');
      lines[3] = lines[3].replace(/[\d.]+/, 'abc');
      const others = tables.filter(({ name }) => name !== section.name);
      await choose(page, [
        chosen('site.json', document),
        chosen(section.name, lines.join('\n')),
        ...others.map(({ name, text }) => chosen(name, text)),
      ]);
      const [bad] = await problemsShown(page);
      await page.screenshot({ path: world.screenshot('desk-problems'), fullPage: true });
      assert.equal(bad.file, section.name);
      assert.match(bad.where, /row 4/);
      await choose(page, [chosen('site.json', document)]);
      await page.waitForFunction(
        (old) => document.querySelector('.problems .what')?.textContent !== old,
        bad.what,
      );
      const missing = await problemsShown(page);
      assert.ok(
        missing.some(({ what, file }) => `${what} ${file}`.includes(section.name)),
        JSON.stringify(missing),
      );
      await page.context().close();
    });

    for (const [what, list, said] of [
      ['no document', [chosen('a.csv', '1,2\n')], /no site document/],
      ['broken JSON', [chosen('site.json', '{"proofstone": "site",')], /line|JSON/],
      ['an empty file', [chosen('site.json', '')], /./],
      [
        'another document',
        [chosen('site.json', '{"type": "FeatureCollection"}')],
        /proofstone|site/i,
      ],
      [
        'bytes that are no text',
        [chosen('site.json', Buffer.from([0xff, 0xfe, 0, 1]))],
        /not UTF-8/,
      ],
      ['hostile text', [chosen('site.json', '{"<img src=x onerror=alert(1)>": 1}')], /./],
    ]) {
      it(`refuses ${what} in a sentence`, async () => {
        const page = await openApplication(world, postures.phone);
        await choose(page, list);
        const problems = await problemsShown(page);
        assert.ok(problems.length > 0);
        assert.match(problems.map((problem) => Object.values(problem).join(' ')).join(' '), said);
        assert.equal(await page.locator('.problems img').count(), 0);
        assert.deepEqual(page.complaints, []);
        await page.context().close();
      });
    }

    it('leaves the example as it lies in the folder of examples', async () => {
      const { document } = await files();
      assert.equal(
        document,
        await readFile(
          join(world.dist, 'examples', world.site.split('/').at(-1), 'site.json'),
          'utf8',
        ),
      );
    });
  });
}
