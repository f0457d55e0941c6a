// The field on a phone: a count stone by stone, a quick look, a load, a problem; nothing is lost.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { describe, it } from 'node:test';
import { axeViolations } from './accessibility.mjs';
import { overflowing, smallTargets, textOutsidePictures } from './page_inspection.mjs';
import { newPage, openApplication, postures, savedFindings } from './world.mjs';

const lot = '#/field/lot/first-deliveries';
const name = 'First deliveries';

const stones = (page) =>
  page.$eval('.stones-so-far b', (element) => Number(element.textContent)).catch(() => undefined);

/** Waits until the screen acknowledges so many stones. */
function acknowledged(page, number) {
  return page.waitForFunction(
    (wanted) => document.querySelector('.stones-so-far b')?.textContent === String(wanted),
    number,
  );
}

async function beginCount(page) {
  await page.goto(new URL(`${lot}/count`, page.url()).href);
  await page.getByLabel('Your name').fill('M. Okafor');
  await page.getByLabel('Where on the pile?').fill('north face');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.waitForSelector('.bin:enabled');
}

/** Taps so many stones, from the small bins to the large and again. */
async function tapStones(page, number) {
  const bins = page.locator('.bin');
  const many = await bins.count();
  const before = await stones(page);
  for (let stone = 0; stone < number; stone += 1) {
    await bins.nth(1 + (stone % (many - 2))).tap();
    await acknowledged(page, before + stone + 1);
  }
}

async function nothingWrong(page) {
  assert.deepEqual(await overflowing(page), []);
  assert.deepEqual(await smallTargets(page), []);
  assert.deepEqual(await textOutsidePictures(page), []);
  assert.deepEqual(await axeViolations(page), []);
}

export function fieldTests(world) {
  describe('the field on a phone', () => {
    it('leads from the site to its rock and to one big action', async () => {
      const page = await openApplication(world, postures.phone);
      await page.getByRole('link', { name: 'Field', exact: true }).tap();
      await page.getByRole('link', { name: new RegExp(name) }).tap();
      await page.getByRole('heading', { name, level: 1 }).waitFor();
      await page.screenshot({ path: world.screenshot('phone-lot'), fullPage: true });
      await nothingWrong(page);
      const { width, height } = await page
        .getByRole('link', { name: 'Count stones' })
        .boundingBox();
      assert.ok(width > 300 && height >= 64, `${width} × ${height}`);
      await page.getByRole('link', { name: 'Count stones' }).tap();
      await page.getByRole('button', { name: 'Begin' }).waitFor();
      await page.screenshot({ path: world.screenshot('phone-count-begin'), fullPage: true });
      await nothingWrong(page);
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('counts stone by stone without a signal, through a reload, and keeps the look', async () => {
      const server = await world.startServer();
      const page = await openApplication(world, postures.phone, '', server);
      await page.getByText('also works without a signal').waitFor();
      await beginCount(page);
      await page.context().setOffline(true);
      await server.stop();
      await tapStones(page, 20);
      await page.waitForSelector('.live .drawing svg');
      const said = await page.textContent('.live-words');
      assert.match(said, /meets|falls short|not yet known/);
      await page.screenshot({ path: world.screenshot('phone-count'), fullPage: true });
      await nothingWrong(page);

      await page.getByRole('button', { name: 'Take back' }).tap();
      await acknowledged(page, 19);
      await page.reload();
      await acknowledged(page, 19);
      await tapStones(page, 5);
      await acknowledged(page, 24);

      await page.getByRole('button', { name: 'Done' }).tap();
      await page.getByText('Stone count, north face').waitFor();
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      // The findings of before stand until the new ones are there.
      await page.getByRole('heading', { name: 'Stone count, north face', exact: true }).waitFor();
      const findings = await savedFindings(page);
      const counted = findings.findings.find(({ title }) => title === 'Stone count, north face');
      assert.match(counted.sentence, /^24 stones/);
      await page.reload();
      await page.waitForSelector('#verdict');
      assert.equal(
        (await savedFindings(page)).site.revision,
        findings.site.revision,
        'the same revision after a reload',
      );
      await page.context().close();
    });

    it('takes axes as they are typed, with a comma too, through a reload', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(`${lot}/count`, page.url()).href);
      await page.getByLabel('With a tape').check();
      await page.getByRole('button', { name: 'Begin' }).tap();
      for (const [number, axis] of ['7', '12,5', '9.25'].entries()) {
        await page.getByLabel('Middle axis', { exact: true }).fill(axis);
        await page.keyboard.press('Enter');
        await acknowledged(page, number + 1);
      }
      await page.screenshot({ path: world.screenshot('phone-count-axes'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Take back' }).tap();
      await acknowledged(page, 2);
      await page.reload();
      await acknowledged(page, 2);
      await page.getByText('Last: 12.5 in, 7 in').waitFor();
      await page.getByRole('button', { name: 'Done' }).tap();
      await page.getByText('Kept: Stone count: 2 stones.').waitFor();
      await page.context().close();
    });

    it('does not show a stone that could not be kept, and says so', async () => {
      const page = await openApplication(world, postures.phone);
      await beginCount(page);
      await tapStones(page, 2);
      await page.evaluate(() => {
        const plain = IDBObjectStore.prototype.add;
        globalThis.makeRoom = () => (IDBObjectStore.prototype.add = plain);
        IDBObjectStore.prototype.add = () => {
          throw new DOMException('no room', 'QuotaExceededError');
        };
      });
      await page.locator('.bin').nth(2).tap();
      await page.getByRole('alert').getByText('no room left').waitFor();
      assert.equal(await stones(page), 2);
      await page.evaluate(() => globalThis.makeRoom());
      await tapStones(page, 1);
      await page.reload();
      await acknowledged(page, 3);
      await page.context().close();
    });

    it('goes on with a count from where it was left, or throws it away when told twice', async () => {
      const page = await openApplication(world, postures.phone);
      await beginCount(page);
      await tapStones(page, 3);
      await page.getByRole('link', { name: 'Back to this rock' }).tap();
      await page.getByRole('link', { name: 'Go on counting' }).tap();
      await acknowledged(page, 3);
      await page.getByRole('button', { name: 'Throw this count away' }).tap();
      await page.getByText('3 stones will be gone').waitFor();
      await page.getByRole('button', { name: 'Keep counting' }).tap();
      await page.getByRole('button', { name: 'Throw this count away' }).tap();
      await page.getByRole('button', { name: 'Throw it away' }).tap();
      await page.getByRole('link', { name: 'Count stones' }).waitFor();
      await page.context().close();
    });

    it('loses no stone where two windows count at once', async () => {
      const page = await openApplication(world, postures.phone);
      await beginCount(page);
      await tapStones(page, 2);
      const other = await page.context().newPage();
      await other.goto(page.url());
      await acknowledged(other, 2);
      await tapStones(other, 3);
      // The first window learns of them with its own next stone.
      await page.locator('.bin').nth(1).tap();
      await acknowledged(page, 6);
      await other.locator('.bin').nth(2).tap();
      await acknowledged(other, 7);
      await page.getByRole('button', { name: 'Done' }).tap();
      await page.getByText('Kept: Stone count: 7 stones.').waitFor();
      await other.locator('.bin').nth(2).tap();
      await other.getByRole('alert').getByText('ended in another window').waitFor();
      assert.equal(await stones(other), 7);
      await page.context().close();
    });

    it('takes a quick look only as the engine takes it', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(`${lot}/quick-look`, page.url()).href);
      await page.getByLabel('Largest stone', { exact: true }).fill('8');
      await page.getByLabel('Smallest stone, fines apart', { exact: true }).fill('12,5');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('The smallest stone is larger than the largest.').waitFor();
      await page.screenshot({ path: world.screenshot('phone-quick-look'), fullPage: true });
      await nothingWrong(page);
      await page.getByLabel('Largest stone', { exact: true }).fill('21');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByRole('heading', { name, level: 1 }).waitFor();
      await page.getByText('4 looks, 6 loads').waitFor();
      await page.context().close();
    });

    it('takes a weighed sample group by group', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(lot, page.url()).href);
      await page.getByRole('link', { name: 'Weigh' }).tap();
      await page.getByRole('heading', { name: 'Weighed sample' }).waitFor();
      const group = (index) => page.locator('fieldset.weighed-group').nth(index);
      const groups = await page.locator('fieldset.weighed-group').count();
      for (let index = 1; index < groups - 1; index += 1) {
        await group(index)
          .getByLabel('Mass, lb')
          .fill(`${120 * index},5`);
        await group(index)
          .getByLabel('Stones')
          .fill(String(40 - 2 * index));
      }
      await group(0).getByLabel('Mass, lb').fill('30');
      await page.screenshot({ path: world.screenshot('phone-weigh'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('This is not kept yet').waitFor();
      await group(0).getByLabel('Stones').fill('9');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('4 looks, 6 loads').waitFor();
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      await page.getByRole('heading', { name: 'Weighed sample', exact: true }).waitFor();
      await page.context().close();
    });

    it('logs a load in few taps, and a problem that the findings name', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(lot, page.url()).href);
      await page.getByText('6 loads').waitFor();
      await page.getByRole('link', { name: 'Load', exact: true }).tap();
      await page.getByLabel('Ticket').fill('4431');
      await page.getByLabel('Mass', { exact: true }).fill('21.9');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('7 loads').waitFor();
      await page.getByRole('button', { name: 'Undo' }).tap();
      await page.getByText('6 loads').waitFor();
      await page.getByRole('button', { name: 'Redo' }).tap();
      await page.getByText('7 loads').waitFor();
      await nothingWrong(page);
      await page.getByRole('link', { name: 'Problem' }).tap();
      await page.getByLabel('What is not as designed?').fill('Slabs in the last load');
      await page.getByLabel('Your name').fill('L. Brandt');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByRole('heading', { name, level: 1 }).waitFor();
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      await page.getByRole('heading', { name: 'Slabs in the last load' }).waitFor();
      await page.context().close();
    });

    it('keeps photos as evidence, without where they were taken', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(`${lot}/problem`, page.url()).href);
      const plain = await page.evaluate(async () => {
        const canvas = Object.assign(document.createElement('canvas'), {
          width: 1600,
          height: 900,
        });
        const pen = canvas.getContext('2d');
        pen.fillStyle = '#857f75';
        pen.fillRect(0, 0, 1600, 900);
        const blob = await new Promise((settle) => canvas.toBlob(settle, 'image/jpeg'));
        return [...new Uint8Array(await blob.arrayBuffer())];
      });
      const exif = Buffer.from('Exif\0\0MM\0*\0\0\0\x08\0\0GPS 47.1 N', 'latin1');
      const segment = Buffer.from([0xff, 0xe1, 0, exif.length + 2, ...exif]);
      const buffer = Buffer.from([...plain.slice(0, 2), ...segment, ...plain.slice(2)]);
      await page
        .locator('input[data-picks=photos]')
        .setInputFiles({ name: 'slab.jpg', mimeType: 'image/jpeg', buffer });
      await page.getByText('1 photo kept on this device.').waitFor();
      await page.locator('input[data-picks=photos]').setInputFiles({
        name: 'notes.txt',
        mimeType: 'image/png',
        buffer: Buffer.from('no picture'),
      });
      await page.getByRole('alert').getByText('cannot read the picture').waitFor();
      await page.getByLabel('What is not as designed?').fill('Slabs in the last load');
      await page.getByLabel('Your name').fill('L. Brandt');
      await page.screenshot({ path: world.screenshot('phone-photo'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByRole('link', { name: /Slabs in the last load/ }).tap();
      await page.reload();
      await page.getByRole('img', { name: 'Photo 1' }).waitFor();
      await page.waitForFunction(() => document.querySelector('.photo-strip img')?.naturalWidth);
      assert.equal(await page.$eval('.photo-strip img', (image) => image.naturalWidth), 960);
      const kept = await page.evaluate(
        () =>
          new Promise((settle) => {
            indexedDB.open('proofstone').onsuccess = ({ target }) => {
              const store = target.result.transaction('photos').objectStore('photos');
              store.getAll().onsuccess = (event) =>
                settle(event.target.result.map(({ bytes }) => [...new Uint8Array(bytes)]));
            };
          }),
      );
      assert.equal(kept.length, 1);
      assert.deepEqual(kept[0], plain, 'the pixels as they were, and nothing else');

      // The archive of the site brings it to another device.
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      const [archive] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save the whole site' }).click(),
      ]);
      const zip = await readFile(await archive.path());
      const other = await openApplication(world, postures.phone);
      await other.getByRole('button', { name: 'Open another site' }).tap();
      await other
        .locator('input[data-picks=files]')
        .setInputFiles({ name: 'site.zip', mimeType: 'application/zip', buffer: zip });
      await other.getByRole('heading', { name: 'Slabs in the last load' }).waitFor();
      await other.getByRole('link', { name: 'Field', exact: true }).tap();
      await other.getByRole('link', { name: new RegExp(name) }).tap();
      await other.getByRole('link', { name: /Slabs in the last load/ }).tap();
      await other.getByRole('img', { name: 'Photo 1' }).waitFor();
      await other.context().close();
      await page.context().close();
    });

    it('drops the photos of a form that nobody kept, once the application is opened again', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(`${lot}/problem`, page.url()).href);
      const png = Buffer.from(
        'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGNoaGgAAAMEAYFL09IQAAAAAElFTkSuQmCC',
        'base64',
      );
      await page
        .locator('input[data-picks=photos]')
        .setInputFiles({ name: 'dot.png', mimeType: 'image/png', buffer: png });
      await page.getByText('1 photo kept on this device.').waitFor();
      const photos = () =>
        page.evaluate(
          () =>
            new Promise((settle) => {
              indexedDB.open('proofstone').onsuccess = ({ target }) => {
                const base = target.result;
                const count = base.transaction('photos').objectStore('photos').count();
                count.onsuccess = () => {
                  base.close();
                  settle(count.result);
                };
              };
            }),
        );
      // Another window leaves it alone while this one is open.
      const other = await page.context().newPage();
      await other.goto(page.url());
      await other.getByRole('heading', { name: 'Problem' }).waitFor();
      assert.equal(await photos(), 1);
      await other.close();
      await page.reload();
      await page.getByRole('heading', { name: 'Problem' }).waitFor();
      for (let wait = 0; wait < 40 && (await photos()) > 0; wait += 1)
        await page.waitForTimeout(100);
      assert.equal(await photos(), 0);
      await page.context().close();
    });

    it('tells that room is getting short before it hurts', async () => {
      const page = await newPage(world, postures.phone);
      await page.addInitScript(() => {
        navigator.storage.estimate = () => Promise.resolve({ usage: 9e8, quota: 1e9 });
      });
      await page.goto(`${world.server.address}#/field`);
      await page.locator('.field').getByText('Room on this device is getting short.').waitFor();
      await page.context().close();
    });

    it('walks along the work by its own checklist, and follows a problem to its closing', async () => {
      const page = await openApplication(world, postures.phone);
      await page.getByRole('link', { name: 'Field', exact: true }).tap();
      await page.screenshot({ path: world.screenshot('phone-field'), fullPage: true });
      await page.getByRole('link', { name: /Outer bank/ }).tap();
      await page.getByRole('heading', { name: 'Outer bank', level: 1 }).waitFor();
      await page.screenshot({ path: world.screenshot('phone-walk'), fullPage: true });
      await nothingWrong(page);

      await page.getByRole('link', { name: /^(\d+\. )?Subgrade/ }).tap();
      await page.getByRole('heading', { name: 'Subgrade', level: 1 }).waitFor();
      const next = page.getByLabel(/next point/);
      for (const length of ['0,04', '-0.05']) {
        await next.fill(length);
        await page.getByRole('button', { name: 'Add', exact: true }).tap();
      }
      await page.getByText('0.04 ft · -0.05 ft').waitFor();
      await next.fill('9');
      await next.press('Enter');
      await page.getByRole('button', { name: 'Take the last point back' }).tap();
      await page.getByText('2 points of').waitFor();
      await page.screenshot({ path: world.screenshot('phone-check'), fullPage: true });
      await nothingWrong(page);
      await page.getByLabel('Your name').fill('L. Brandt');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('Kept: Walk: Subgrade.').waitFor();
      await page.getByRole('link', { name: /^(\d+\. )?Subgrade/ }).tap();
      await page.getByText(/Subgrade, L\. Brandt, .*measured 0\.04 ft, -0\.05 ft/).waitFor();

      await page.getByRole('link', { name: 'Report a problem here' }).tap();
      await page.getByLabel('What is not as designed?').fill('Soft ground at the foot');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByRole('link', { name: /Soft ground at the foot/ }).tap();
      await page.getByRole('heading', { name: 'Decide: Soft ground at the foot' }).waitFor();
      await page.getByLabel('What is to be done?').selectOption('Use it as it is');
      await page.getByLabel('Engineer who approves').fill('M. Okafor');
      await page.screenshot({ path: world.screenshot('phone-problem'), fullPage: true });
      await nothingWrong(page);
      await page.getByLabel('What is to be done?').selectOption('Rework it');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('To be carried out and closed').waitFor();
      await page.getByRole('link', { name: /Soft ground at the foot/ }).tap();
      await page.getByText('Decided: Rework it.').waitFor();
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByRole('heading', { name: 'Outer bank', level: 1 }).waitFor();
      await page.getByText('Kept: Closed: Soft ground at the foot.').waitFor();
      assert.equal(await page.getByRole('link', { name: /Soft ground at the foot/ }).count(), 0);
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });

    it('shows in one tab what another has taken down', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(`${lot}/load`, page.url()).href);
      await page.getByLabel('Ticket').fill('4440');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('7 loads').waitFor();
      const other = await page.context().newPage();
      await other.goto(page.url());
      await other.getByText('7 loads').waitFor();
      await other.goto(new URL(`${lot}/load`, page.url()).href);
      await other.getByLabel('Ticket').fill('4441');
      await other.getByRole('button', { name: 'Keep it' }).tap();
      await other.getByText('8 loads').waitFor();
      await page.getByText('8 loads').waitFor();
      await page.context().close();
    });
  });

  describe('a new site', () => {
    it('goes from nothing to a verdict on a phone', async () => {
      const page = await openApplication(world, postures.phone);
      await page.getByRole('button', { name: 'Open another site' }).click();
      await page.getByLabel('What is the site called?').fill('Heron Ditch');
      await page.getByRole('button', { name: 'Begin it' }).click();
      await page.getByRole('heading', { name: 'Heron Ditch', level: 1 }).waitFor();
      await page.screenshot({ path: world.screenshot('phone-new-site'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('link', { name: 'New rock' }).tap();
      await page.getByLabel('What is it called?').fill('Pile at the gate');
      await page.getByLabel('Class that was ordered').selectOption('fhwa-2');
      await page.getByLabel('Name of that quarry or pit').fill('Slate Hollow');
      await page.getByLabel('Its specific gravity, as tested').fill('2,63');
      await page.screenshot({ path: world.screenshot('phone-new-rock'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByRole('link', { name: /Pile at the gate/ }).tap();
      await page.getByRole('link', { name: 'Count stones' }).tap();
      await page.getByRole('button', { name: 'Begin' }).tap();
      await page.waitForSelector('.bin:enabled');
      await tapStones(page, 60);
      await page.getByRole('button', { name: 'Done' }).tap();
      await page.getByText(/60 stones in all/).waitFor();
      await page.reload();
      await page.getByText(/60 stones in all/).waitFor();
      await page.getByRole('link', { name: 'New rock' }).waitFor({ state: 'detached' });
      await page.getByRole('link', { name: 'All of this site' }).tap();
      await page.getByRole('link', { name: 'New rock' }).tap();
      await page.getByLabel('Where does it come from?').selectOption({ label: 'Slate Hollow' });
      assert.equal(await page.getByLabel('Name of that quarry or pit').count(), 0);
      await page.getByLabel('What is it called?').fill('Second pile');
      await page.getByLabel('Class that was ordered').selectOption('fhwa-2');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByRole('link', { name: /Second pile/ }).waitFor();
      assert.deepEqual(page.complaints, []);
      await page.context().close();
    });
  });

  describe('a site from files of the device', () => {
    it('keeps what was taken down when the same files are opened again', async () => {
      const page = await openApplication(world, postures.phone);
      const { document, files } = await world.example();
      const chosen = [{ name: 'site.json', text: document }, ...files].map(({ name, text }) => ({
        name,
        mimeType: 'text/plain',
        buffer: Buffer.from(text),
      }));
      const open = async () => {
        await page.getByRole('button', { name: 'Open another site' }).click();
        await page.setInputFiles('input[data-picks="files"]', chosen);
        await page.getByText('Read from files on this device and kept here').waitFor();
      };
      await open();
      await page.goto(new URL(`${lot}/load`, page.url()).href);
      await page.getByLabel('Ticket').fill('4450');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('7 loads').waitFor();
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      await open();
      await page.goto(new URL(lot, page.url()).href);
      await page.getByText('7 loads').waitFor();
      await page.context().close();
    });

    it('tells entries that cross, and settles them', async () => {
      const page = await openApplication(world, postures.phone);
      const { document, files } = await world.example();
      const [first, ...others] = JSON.parse(document).revisions;
      const last = [first, ...others].at(-1);
      const copyWith = (author, change) => {
        const revision = {
          id: `by-${author}`,
          after: [last.id],
          time: `2026-06-0${author.length}T10:00:00Z`,
          author,
          note: 'In the field',
          changes: [change],
        };
        const revisions = [first, ...others, revision];
        return [
          { name: 'site.json', text: JSON.stringify({ ...JSON.parse(document), revisions }) },
          ...files,
        ].map(({ name, text }) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) }));
      };
      const open = async (chosen) => {
        await page.getByRole('button', { name: 'Open another site' }).click();
        await page.setInputFiles('input[data-picks="files"]', chosen);
        await page.getByText('Read from files on this device and kept here').waitFor();
      };
      const name = '/lots/first-deliveries/name';
      await open(copyWith('Ann', { set: name, to: 'North pile' }));
      await open(copyWith('Boris', { set: name, to: 'South pile' }));
      await page.getByRole('heading', { name: '1 entry crosses another' }).waitFor();
      await page.getByText('Does not stand: North pile').waitFor();
      await page.screenshot({ path: world.screenshot('phone-conflict') });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Take the other' }).tap();
      await page
        .getByRole('heading', { name: '1 entry crosses another' })
        .waitFor({ state: 'detached' });
      await page.getByRole('link', { name: 'Field', exact: true }).tap();
      await page.getByRole('link', { name: /North pile/ }).waitFor();
      await page.reload();
      await page.getByRole('link', { name: /North pile/ }).waitFor();
      assert.equal(await page.locator('.conflicts').count(), 0);
      await page.context().close();
    });

    it('goes out as one archive and comes back on another device with all that was taken down', async () => {
      const page = await openApplication(world, postures.phone);
      await page.goto(new URL(`${lot}/load`, page.url()).href);
      await page.getByLabel('Ticket').fill('4460');
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('7 loads').waitFor();
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save the whole site' }).click(),
      ]);
      assert.match(download.suggestedFilename(), /\.zip$/);
      const archive = await readFile(await download.path());
      const sent = await savedFindings(page);
      await page.context().close();

      const other = await openApplication(world, postures.desk);
      await other.getByRole('button', { name: 'Open another site' }).click();
      await other.setInputFiles('input[data-picks="files"]', [
        { name: 'site.zip', mimeType: 'application/zip', buffer: archive },
      ]);
      await other.getByText('Read from files on this device and kept here').waitFor();
      assert.deepEqual(await savedFindings(other), sent);
      await other.context().close();
    });

    it('is kept, opens again by itself, and stands in the list', async () => {
      const page = await newPage(world, postures.desk);
      await page.goto(world.server.address);
      await page.waitForSelector('#verdict');
      await page.getByRole('button', { name: 'Open another site' }).click();
      const { document, files } = await world.example();
      await page.setInputFiles('input[data-picks="files"]', [
        { name: 'site.json', mimeType: 'application/json', buffer: Buffer.from(document) },
        ...files.map((file) => ({
          name: file.name,
          mimeType: 'text/csv',
          buffer: Buffer.from(file.text),
        })),
      ]);
      await page.getByText('Read from files on this device and kept here').waitFor();
      await page.reload();
      await page.getByText('Read from files on this device and kept here').waitFor();
      await page.getByRole('button', { name: 'Open another site' }).click();
      await page
        .getByRole('button', { name: /Open the example/ })
        .first()
        .click();
      await page.getByText('Invented example site').waitFor();
      await page.getByRole('button', { name: 'Open another site' }).click();
      await page.getByRole('button', { name: /^Open “Sorrel Creek/ }).click();
      await page.getByText('Read from files on this device and kept here').waitFor();
      await page.context().close();
    });
  });
}
