// How fit the pages are for a slow phone, for every user and for the home screen, told in a table.
// Everything is measured by the browser itself, with no other host.
import assert from 'node:assert/strict';
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { gzipSync } from 'node:zlib';
import { axeViolations } from './accessibility.mjs';
import { heldUp } from './blocked_thread.mjs';
import { newPage, openApplication, postures, wholePage } from './world.mjs';

/** So many times slower than this machine is a slow phone. */
const slower = 4;
/** And so many times the slowest that anybody works with. */
const slowest = 6;

/** Milliseconds at that speed; shift as the share of the page; kilobytes packed. */
const limits = {
  'first content painted (ms)': 1800,
  'largest content painted (ms)': 2500,
  'layout shift': 0.1,
  'held up in all (ms)': 600,
  'work until all stands there (ms)': 2000,
  'script, style and page (kB)': 250,
  'everything of a first load (kB)': 2500,
};

/** Every kind of screen. */
const screens = [
  '#/',
  '#/help',
  '#/help/isbash',
  '#/field',
  '#/field/new-rock',
  '#/field/lot/first-deliveries',
  ...['count', 'photo', 'quick-look', 'weigh', 'load', 'problem'].map(
    (task) => `#/field/lot/first-deliveries/${task}`,
  ),
  '#/field/zone/outer-bank',
  '#/field/zone/outer-bank/check/subgrade',
  '#/field/problem/shallow-toe',
  ...['', '/timeline', '/site', '/blend', '/start', '/zones', '/new/zones'].map(
    (show) => `#/desk${show}`,
  ),
  ...['', '/other-rock', '/methods', '/filter', '/mix'].map(
    (study) => `#/desk/zones/outer-bank${study}`,
  ),
  '#/desk/sources/granite-knob/submittals',
  '#/desk/centrelines/main-channel/plan',
];

/** Notes from the first moment what the browser says of painting and shifts. */
function startNoting() {
  const noted = { first: 0, largest: 0, shifts: [] };
  globalThis.noted = noted;
  const follow = (type, hear) =>
    new PerformanceObserver((list) => list.getEntries().forEach(hear)).observe({
      type,
      buffered: true,
    });
  follow('paint', ({ name, startTime }) => {
    if (name === 'first-contentful-paint') noted.first = startTime;
  });
  follow('largest-contentful-paint', ({ startTime }) => (noted.largest = startTime));
  follow('layout-shift', ({ startTime, value, hadRecentInput }) => {
    if (!hadRecentInput) noted.shifts.push([startTime, value]);
  });
}

/** The worst five seconds of shifts, none more than a second after the one before. */
function layoutShift(shifts) {
  let worst = 0;
  let began = -Infinity;
  let last = -Infinity;
  let sum = 0;
  for (const [at, value] of shifts) {
    if (at - last > 1000 || at - began > 5000) {
      began = at;
      sum = 0;
    }
    last = at;
    sum += value;
    worst = Math.max(worst, sum);
  }
  return worst;
}

function packedKilobytes(world, paths) {
  return paths.reduce((sum, path) => {
    const file = join(world.dist, path.endsWith('/') ? 'index.html' : path);
    if (!statSync(file, { throwIfNoEntry: false })?.isFile()) return sum;
    return sum + gzipSync(readFileSync(file), { level: 9 }).length / 1024;
  }, 0);
}

/** A first load, up to the findings with their pictures. */
async function load(page, world) {
  await page.goto(world.server.address);
  await page.waitForSelector('#verdict');
  await wholePage(page);
}

/** What is painted when, at a fourth of the speed. */
async function painting(world) {
  const page = await newPage(world, { ...postures.phone, serviceWorkers: 'block' });
  const paths = new Set();
  page.on('response', (response) => paths.add(new URL(response.url()).pathname));
  await page.addInitScript(startNoting);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await load(page, world);
  const { first, largest, shifts } = await page.evaluate(() => globalThis.noted);
  await page.context().close();
  const loaded = [...paths];
  return {
    'first content painted (ms)': first,
    'largest content painted (ms)': largest,
    'layout shift': layoutShift(shifts),
    'script, style and page (kB)': packedKilobytes(
      world,
      loaded.filter((path) => /(\/|\.js|\.css)$/.test(path) && !path.includes('/engine/')),
    ),
    'everything of a first load (kB)': packedKilobytes(world, loaded),
  };
}

/** What the thread of the page has to do until all stands there, at a fourth of the speed. */
async function work(world) {
  const page = await newPage(world, { ...postures.phone, serviceWorkers: 'block' });
  const { tasks } = await heldUp(world, page, () => load(page, world));
  await page.context().close();
  const slow = tasks.map((milliseconds) => slower * milliseconds);
  return {
    'held up in all (ms)': slow.reduce((sum, each) => sum + Math.max(0, each - 50), 0),
    'work until all stands there (ms)': slow.reduce((sum, each) => sum + each, 0),
  };
}

/** The best of several: what else the machine does at that time slows only some of them. */
async function best(measure, times) {
  const measured = [];
  for (let time = 0; time < times; time += 1) measured.push(await measure());
  return Object.fromEntries(
    Object.keys(measured[0]).map((name) => [name, Math.min(...measured.map((one) => one[name]))]),
  );
}

function line(name, measured, allowed, kept) {
  return `${name.padEnd(34)} ${measured.padStart(10)}  ${allowed.padEnd(30)} ${kept ? 'kept' : 'NOT KEPT'}`;
}

/** What must be so before a browser offers to install the application. */
async function installable(page) {
  return page.evaluate(async () => {
    const link = document.querySelector('link[rel="manifest"]');
    const manifest = await (await fetch(link.href)).json();
    const sizes = await Promise.all(
      manifest.icons.map(async ({ src, purpose = 'any' }) => {
        const image = await createImageBitmap(await (await fetch(new URL(src, link.href))).blob());
        return `${purpose} ${image.width}×${image.height}`;
      }),
    );
    const start = new URL(manifest.start_url, link.href);
    const scope = new URL(manifest.scope, link.href);
    const { active } = await navigator.serviceWorker.ready;
    const themes = [...document.querySelectorAll('meta[name="theme-color"]')];
    return {
      'a name and a short one': Boolean(manifest.name && manifest.short_name),
      'begins within its scope': start.href.startsWith(scope.href),
      'opens without the frame of a browser': ['standalone', 'fullscreen'].includes(
        manifest.display,
      ),
      'an icon of 192 pixels': sizes.includes('any 192×192'),
      'an icon of 512 pixels': sizes.includes('any 512×512'),
      'an icon that may be cut to a shape': sizes.includes('maskable 512×512'),
      'colours for light and for dark': themes.length === 2 && Boolean(manifest.theme_color),
      'its language is said': Boolean(manifest.lang && document.documentElement.lang),
      'from a safe origin': window.isSecureContext,
      'kept on the device': active?.state === 'activated',
    };
  });
}

/** Times are told; they are judged only where nothing else is measured or tested beside. */
export function pageFitnessTests(world, { judgeTimes = false } = {}) {
  describe('how fit the pages are', () => {
    it('for a slow phone', async (test) => {
      const measured = {
        ...(await best(() => painting(world), 3)),
        ...(await best(() => work(world), 2)),
      };
      const missed = [];
      for (const [name, limit] of Object.entries(limits)) {
        const value = measured[name];
        const judged = judgeTimes || !name.endsWith('(ms)');
        const kept = value <= limit;
        const digits = name === 'layout shift' ? 3 : 0;
        const allowed = `at most ${limit}${judged ? '' : ', not judged here'}`;
        test.diagnostic(line(name, value.toFixed(digits), allowed, kept));
        if (judged && !kept) missed.push(name);
      }
      assert.deepEqual(missed, []);
    });

    it('for slow work at the desk', async (test) => {
      const page = await newPage(world, { ...postures.desk, serviceWorkers: 'block' });
      const form = await heldUp(world, page, async () => {
        await page.goto(`${world.server.address}#/desk/zones/outer-bank`);
        await page.getByLabel(/^Layer thickness/).waitFor();
        await wholePage(page);
      });
      const thickness = page.getByLabel(/^Layer thickness/);
      await thickness.fill('');
      const typing = await heldUp(world, page, async () => {
        await thickness.pressSequentially('27 in');
        await page.waitForSelector('.desk-beside [data-trial="true"]', { state: 'attached' });
      });
      const measured = [
        ['a form opens after (ms)', 2000, slower * form.tasks.reduce((sum, each) => sum + each, 0)],
        ['longest while it is typed (ms)', 200, slowest * typing.longest],
      ];
      for (const [name, limit, value] of measured) {
        const allowed = `at most ${limit}${judgeTimes ? '' : ', not judged here'}`;
        test.diagnostic(line(name, value.toFixed(0), allowed, value <= limit));
      }
      const missed = measured.filter(([, limit, value]) => judgeTimes && value > limit);
      assert.deepEqual(missed, []);
      await page.context().close();
    });

    it('for every user: axe-core on every kind of screen', async (test) => {
      const page = await openApplication(world, postures.phone);
      const objections = [];
      for (const hash of screens) {
        await page.goto(new URL(hash, page.url()).href);
        await page.waitForFunction(
          () =>
            document.querySelector('#content h1') &&
            !document.querySelector('#content > [role=status]'),
        );
        for (const one of await axeViolations(page)) objections.push(`${hash} ${one}`);
      }
      const none = objections.length === 0;
      test.diagnostic(
        line(`${screens.length} screens`, `${objections.length}`, 'no objection', none),
      );
      assert.deepEqual(objections, []);
      await page.context().close();
    });

    it('for the home screen, with the server gone', async (test) => {
      const server = await world.startServer();
      const page = await openApplication(world, postures.phone, '', server);
      await page.getByText('also works without a signal').waitFor();
      const found = await installable(page);
      await server.stop();
      await page.goto(`${server.address}#/field`);
      await page.reload();
      await page.waitForSelector('.lot-link');
      found['opens with the server gone'] = true;
      for (const [what, is] of Object.entries(found)) test.diagnostic(line(what, '', '', is));
      const missing = Object.keys(found).filter((what) => !found[what]);
      assert.deepEqual(missing, []);
      await page.context().close();
    });
  });
}
