// Rock measured on photos, in the browser and without a server: found, scaled, mended, kept.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';
import { isDeepStrictEqual } from 'node:util';
import { deflateSync } from 'node:zlib';
import { axeViolations } from './accessibility.mjs';
import { overflowing, smallTargets } from './page_inspection.mjs';
import { outlinesInBrowser, pictureFile } from './photo_outlines.mjs';
import { newPage, openApplication, postures, savedFindings } from './world.mjs';

const lot = '#/field/lot/first-deliveries';
/** A rendered pile with a yellow ball, whose middle and edge these are. */
const pile = { file: pictureFile('rendered.jpg'), ball: [266, 352], edge: [340, 352] };

async function begin(page, way = 'Find the stones') {
  await page.goto(new URL(`${lot}/photo`, page.url()).href);
  await page.getByLabel(way).check();
  await page.getByLabel('Where on it?').fill('north face');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByRole('button', { name: 'Take or choose a photo' }).waitFor();
}

function choose(page, files) {
  return page.setInputFiles('[data-picks="measured-photo"]', files);
}

/** Takes the photo of the pile and waits until its stones are found. */
async function take(page) {
  await choose(page, pile.file);
  await page.waitForSelector('.photo-frame canvas', { timeout: 60_000 });
}

/** Where something is once it stays there: words that come in above it move it. */
async function atRest(page, locator) {
  let before;
  for (;;) {
    const box = await locator.boundingBox();
    if (isDeepStrictEqual(box, before)) return box;
    before = box;
    await page.waitForTimeout(100);
  }
}

/** Where on the page a place of the photo is while all of it is shown. */
async function onPage(page, [x, y], { width, height } = { width: 768, height: 576 }) {
  const canvas = page.locator('.photo-frame canvas');
  await canvas.scrollIntoViewIfNeeded();
  const box = await atRest(page, canvas);
  const scale = Math.min(box.width / width, box.height / height);
  return {
    x: box.x + (box.width - width * scale) / 2 + x * scale,
    y: box.y + (box.height - height * scale) / 2 + y * scale,
  };
}

async function tapAt(page, place) {
  const { x, y } = await onPage(page, place);
  await page.mouse.click(x, y);
}

async function drag(page, from, to) {
  const start = await onPage(page, from);
  const end = await onPage(page, to);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  for (let step = 1; step <= 8; step += 1) {
    await page.mouse.move(
      start.x + ((end.x - start.x) * step) / 8,
      start.y + ((end.y - start.y) * step) / 8,
    );
  }
  await page.mouse.up();
}

/** The scale of the photo as the device has it last. */
function keptScale(page) {
  return page.evaluate(
    () =>
      new Promise((settle, fail) => {
        const opening = indexedDB.open('proofstone');
        opening.onerror = () => fail(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('taps').objectStore('taps').getAll();
          asked.onsuccess = () => {
            opening.result.close();
            settle(asked.result.findLast(({ what }) => 'scale' in what)?.what.scale);
          };
        };
      }),
  );
}

/** The lower of the two balls as the device has it, once its radius is about `radius`. */
async function lowerBall(page, radius) {
  for (let tries = 1; ; tries += 1) {
    const balls = (await keptScale(page))?.balls ?? [];
    const lower = balls.find(({ middle }) => middle[1] > 200);
    if (balls.length === 2 && Math.abs(lower.radius - radius) < 3) return lower;
    assert.ok(tries < 30, `not a radius of ${radius}: ${JSON.stringify(balls)}`);
    await page.waitForTimeout(100);
  }
}

/** Both balls were found; the edge of the lower one is dragged inwards and back. */
async function setScale(page) {
  await page.getByText('Look that each circle fits').waitFor();
  assert.equal(await page.getByLabel(/^Ball \d: diameter$/).count(), 2);
  const inwards = [pile.edge[0] - 15, pile.edge[1]];
  for (const [from, to] of [
    [pile.edge, inwards],
    [inwards, pile.edge],
  ]) {
    await drag(page, from, to);
    const lower = await lowerBall(page, to[0] - pile.ball[0]);
    const away = Math.hypot(lower.middle[0] - pile.ball[0], lower.middle[1] - pile.ball[1]);
    assert.ok(away < 3, `${lower.middle}`);
  }
  await page.getByLabel('Ball 1: diameter', { exact: true }).fill('12');
  await page.keyboard.press('Tab');
}

const stonesOutlined = async (page) =>
  Number((await page.getByText('outlined on this photo').textContent()).split(' ')[0]);

function outlined(page, number) {
  return page.getByText(new RegExp(`^${number} stones? outlined on this photo`)).waitFor();
}

async function nothingWrong(page) {
  assert.deepEqual(await overflowing(page), []);
  assert.deepEqual(await smallTargets(page), []);
  assert.deepEqual(await axeViolations(page), []);
}

/** A PNG file that claims so many pixels and holds none of them. */
function claimedPicture(width, height) {
  const chunk = (name, content) => {
    const head = Buffer.alloc(8);
    head.writeUInt32BE(content.length, 0);
    head.write(name, 4, 'latin1');
    return Buffer.concat([head, content, Buffer.alloc(4)]);
  };
  const size = Buffer.alloc(13);
  size.writeUInt32BE(width, 0);
  size.writeUInt32BE(height, 4);
  size.set([8, 0, 0, 0, 0], 8);
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    start,
    chunk('IHDR', size),
    chunk('IDAT', deflateSync(Buffer.alloc(100))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** The sheet of a marker board, as the guidance hands it over. */
async function printedBoard(page, number) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: `Board ${number}`, exact: true }).tap(),
  ]);
  assert.equal(download.suggestedFilename(), `marker-board-${number}.svg`);
  return readFileSync(await download.path(), 'utf8');
}

/** The photo of the pile with a sheet on it, twice as large, as a JPEG. */
async function withBoard(page, sheet) {
  const base64 = await page.evaluate(
    async ([pile64, svg]) => {
      const loaded = async (address) => {
        const image = new Image();
        image.src = address;
        await image.decode();
        return image;
      };
      const rock = await loaded(`data:image/jpeg;base64,${pile64}`);
      const paper = await loaded(
        `data:image/svg+xml;base64,${btoa(unescape(encodeURIComponent(svg)))}`,
      );
      const canvas = new OffscreenCanvas(2 * rock.width, 2 * rock.height);
      const context = canvas.getContext('2d');
      context.drawImage(rock, 0, 0, canvas.width, canvas.height);
      const wide = 420;
      context.drawImage(paper, 900, 560, wide, (wide * paper.height) / paper.width);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
    },
    [readFileSync(pile.file).toString('base64'), sheet],
  );
  return Buffer.from(base64, 'base64');
}

/** A busy machine takes its time to find the stones. */
const findingStones = { timeout: 90_000 };

/** Waits until the engine says how many stones it has; else tells what it says instead. */
async function countsOutlines(page) {
  try {
    await page.getByText(/stones by outlines on 1 photo/).waitFor(findingStones);
  } catch (error) {
    const said = await page.locator('.live-words').allTextContents();
    throw new Error(`The page says: ${said.join(' ')} ${page.complaints.join(' ')}`, {
      cause: error,
    });
  }
}

/** A wall of bricks, drawn by the browser, as a JPEG. */
async function brickWall(page) {
  const base64 = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(1024, 768);
    const context = canvas.getContext('2d');
    context.fillStyle = '#c9c2b4';
    context.fillRect(0, 0, 1024, 768);
    for (let row = 0; row < 16; row += 1) {
      for (let brick = -1; brick < 9; brick += 1) {
        context.fillStyle = `hsl(${10 + ((row * 7 + brick * 5) % 9)} 45% ${38 + ((row + brick * 3) % 7)}%)`;
        context.fillRect(brick * 128 + (row % 2) * 64, row * 48, 120, 40);
      }
    }
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
    const bytes = new Uint8Array(await blob.arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  });
  return Buffer.from(base64, 'base64');
}

export function photoTests(world) {
  describe('rock on photos', () => {
    it('has the same outlines in the browser as by the program, corner by corner', async (test) => {
      if (!world.nativeProgram) return test.skip('the program is not built');
      const page = await newPage(world, { serviceWorkers: 'block' });
      await page.goto(world.server.address);
      const file = pictureFile('gravel.png');
      const native = JSON.parse(
        execFileSync(world.nativeProgram, ['outline', file, '--json'], {
          encoding: 'utf8',
          maxBuffer: 1 << 28,
        }),
      ).pictures[0];
      const browser = await outlinesInBrowser(page, world, readFileSync(file), 'image/png');
      assert.equal(browser.width, native.width);
      assert.equal(browser.smallest_drawn, native.smallest_drawn);
      assert.ok(native.outlines.length > 900, `${native.outlines.length} stones`);
      assert.deepEqual(browser.outlines, native.outlines);
      await page.context().close();
    });

    it('is measured without a server, mended, kept, and there after a reload', async () => {
      const server = await world.startServer();
      const page = await openApplication(world, postures.phone, '', server);
      await page.getByText('also works without a signal').waitFor();
      await page.context().setOffline(true);
      await server.stop();
      await begin(page);
      await page.screenshot({ path: world.screenshot('phone-photo-begun'), fullPage: true });
      await nothingWrong(page);
      await take(page);
      await page.getByText('Nothing on the photo tells its scale').waitFor();
      await setScale(page);
      await countsOutlines(page);
      await page.screenshot({ path: world.screenshot('phone-photo-scale'), fullPage: true });
      await nothingWrong(page);

      await page.getByRole('button', { name: 'Stones', exact: true }).tap();
      const before = await stonesOutlined(page);
      assert.ok(before > 80 && before < 140, `${before} stones`);
      await page.screenshot({ path: world.screenshot('phone-photo-stones'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Cut', exact: true }).tap();
      await drag(page, [118, 8], [118, 168]);
      await outlined(page, before + 1);
      await page.getByRole('button', { name: 'Join', exact: true }).tap();
      await tapAt(page, [95, 80]);
      await tapAt(page, [145, 80]);
      await outlined(page, before);
      await page.getByRole('button', { name: 'Remove', exact: true }).tap();
      await tapAt(page, [118, 80]);
      await outlined(page, before - 1);
      await page.getByRole('button', { name: 'Draw', exact: true }).tap();
      const path = [
        [80, 60],
        [140, 50],
        [150, 120],
        [90, 130],
        [80, 60],
      ];
      for (const [index, corner] of path.entries()) {
        const { x, y } = await onPage(page, corner);
        await page.mouse.move(x, y);
        if (index === 0) await page.mouse.down();
      }
      await page.mouse.up();
      await outlined(page, before);
      await page.getByRole('button', { name: 'Take back' }).tap();
      await outlined(page, before - 1);

      await page.reload();
      await page.getByRole('button', { name: 'Stones', exact: true }).tap();
      await outlined(page, before - 1);
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('Photos, north face').waitFor();
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      await page.getByRole('heading', { name: 'Photos, north face', exact: true }).waitFor();
      await page.reload();
      await page.waitForSelector('#verdict');
      const { findings } = await savedFindings(page);
      const kept = findings.find(({ title }) => title === 'Photos, north face');
      assert.match(kept.sentence, /by outlines on 1 photo/);
      assert.match(kept.sentence, /D50/);
      await page.context().close();
    });

    it('is tapped under a grid, through a reload', async () => {
      const page = await openApplication(world, postures.phone);
      await begin(page, 'Tap the stones');
      await take(page);
      await page.getByRole('button', { name: 'Stones', exact: true }).tap();
      const middle = await page.locator('.photo-frame canvas').boundingBox();
      const at = (x, y) =>
        page.mouse.click(middle.x + middle.width / 2 + x, middle.y + middle.height / 2 + y);
      await page.getByText('0 of 35 points').waitFor();
      await at(-60, 30);
      await page.getByText('Tap its other end').waitFor();
      await at(60, 30);
      await at(10, -20);
      await page.screenshot({ path: world.screenshot('phone-photo-nodes'), fullPage: true });
      await at(10, 80);
      await page.getByText('1 of 35 points').waitFor();
      await page.getByRole('button', { name: 'Mostly hidden: skip' }).tap();
      await page.getByText('2 of 35 points').waitFor();
      await page.getByRole('button', { name: 'No rock here' }).tap();
      await page.getByText('3 of 35 points').waitFor();
      await nothingWrong(page);
      await page.reload();
      await page.getByRole('button', { name: 'Stones', exact: true }).tap();
      await page.getByText('3 of 35 points').waitFor();
      await page.getByRole('button', { name: 'Take back' }).tap();
      await page.getByText('2 of 35 points').waitFor();
      await page.context().close();
    });

    it('takes its scale from a printed board, is checked, and has its largest stone marked', async () => {
      const page = await openApplication(world, postures.phone);
      await begin(page);
      const buffer = await withBoard(page, await printedBoard(page, 2));
      await choose(page, { name: 'board.jpg', mimeType: 'image/jpeg', buffer });
      await page.waitForSelector('.photo-frame canvas', { timeout: 60_000 });
      await page.getByText('Board 2 is on this photo, and this site does not know it').waitFor();
      for (const remove of ['Remove ball 2', 'Remove ball 1']) {
        await page.getByRole('button', { name: remove }).tap();
      }
      await page
        .getByLabel('Board 2: edge of a dark square, as printed', { exact: true })
        .fill('4');
      await page.keyboard.press('Tab');
      await page.getByText('does not know it').waitFor({ state: 'detached' });
      await page.getByLabel('How far off may the scale be').selectOption('5 %');
      await countsOutlines(page);
      await page.screenshot({ path: world.screenshot('phone-photo-board'), fullPage: true });
      await nothingWrong(page);

      await page.getByRole('button', { name: 'Largest stone', exact: true }).tap();
      await tapAt(page, [70, 90]);
      await page.getByText('Tap its other end').waitFor();
      await tapAt(page, [170, 80]);
      await page.getByText(/Largest stone seen: .* by its ends/).waitFor();
      await page.screenshot({ path: world.screenshot('phone-photo-largest'), fullPage: true });
      await nothingWrong(page);

      await page.getByRole('button', { name: 'Check', exact: true }).tap();
      await page.getByRole('button', { name: 'Look at 30 outlines' }).tap();
      const looked = (number) => page.getByText(`${number} of 30 outlines looked at`).waitFor();
      await looked(0);
      await page.getByRole('button', { name: 'Mostly hidden: skip' }).tap();
      await looked(1);
      for (let number = 2; number <= 7; number += 1) {
        await page.getByRole('button', { name: 'The outline is right' }).tap();
        await looked(number);
      }
      await page.getByText('so far the automatic result agrees').waitFor();
      await page.screenshot({ path: world.screenshot('phone-photo-check'), fullPage: true });
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Last answer back' }).tap();
      await looked(6);
      await page.reload();
      await page.getByRole('button', { name: 'Check', exact: true }).tap();
      await looked(6);
      await page.getByRole('button', { name: 'Keep it' }).tap();
      await page.getByText('Photos, north face').waitFor();
      await page.getByRole('link', { name: 'Findings', exact: true }).tap();
      await page
        .getByRole('heading', { name: 'Check of the outlines: Photos, north face' })
        .waitFor();
      await page.context().close();
    });

    it('is refused in a sentence where there is no rock or no photo', async () => {
      const page = await openApplication(world, postures.desk);
      await begin(page);
      const whole = readFileSync(pile.file);
      const refusals = [
        ['text.jpg', Buffer.from('this is a page of text'), 'cannot read the picture'],
        ['cut.jpg', whole.subarray(0, 40_000), 'is cut off'],
        ['claims.png', claimedPicture(20_000, 10_000), 'more than 60 megapixels'],
        ['wall.jpg', await brickWall(page), 'No rock was found on it'],
      ];
      for (const [name, buffer, sentence] of refusals) {
        await choose(page, { name, mimeType: 'image/jpeg', buffer });
        const alert = page.getByRole('alert').filter({ hasText: name });
        await alert.waitFor({ timeout: 60_000 });
        assert.ok((await alert.textContent()).includes(sentence), await alert.textContent());
      }
      assert.equal(await page.locator('.photo-frame').count(), 0);
      await page.getByRole('button', { name: 'Take or choose a photo' }).waitFor();
      await page.context().close();
    });

    it('is marked and mended by keys alone at the desk', async () => {
      const page = await openApplication(world, postures.desk);
      await begin(page);
      await take(page);
      for (const remove of ['Remove ball 2', 'Remove ball 1']) {
        await page.getByRole('button', { name: remove }).press('Enter');
      }
      await page.getByText('Nothing tells the scale yet').waitFor();
      await page.locator('.photo-frame canvas').focus();
      await page.keyboard.press('Enter');
      for (let step = 0; step < 6; step += 1) await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Enter');
      await page.getByLabel('Ball 1: diameter', { exact: true }).fill('12');
      await page.keyboard.press('Tab');
      await countsOutlines(page);
      await page.getByRole('button', { name: 'Stones', exact: true }).click();
      await page.getByRole('button', { name: 'Remove', exact: true }).click();
      const before = await stonesOutlined(page);
      await page.locator('.photo-frame canvas').focus();
      for (let step = 0; step < 14; step += 1) await page.keyboard.press('ArrowLeft');
      await page.keyboard.press('Enter');
      await outlined(page, before - 1);
      await page.screenshot({ path: world.screenshot('desk-photo-stones'), fullPage: true });
      await nothingWrong(page);
      await page.context().close();
    });

    it('fits a narrow page', async () => {
      const page = await openApplication(world, { viewport: { width: 320, height: 640 } });
      await begin(page);
      await take(page);
      await nothingWrong(page);
      await page.getByRole('button', { name: 'Stones', exact: true }).click();
      await nothingWrong(page);
      await page.context().close();
    });
  });
}
