// What every browser test needs: the built screens served, a browser, the example and what the
// engine finds for it outside the browser.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { expectedFindings } from './expected_findings.mjs';
import { serveNative } from './native_server.mjs';
import { serveStatic } from './static_server.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

const dist = here('../dist');
const examples = here('../../examples');
const nativeBuild = process.env.PROOFSTONE_NATIVE_BUILD ?? here('../../build/native');
const screenshots = here('../../build/web_screens');

const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** What takes longer has failed; a busy machine is slow. */
const patienceMs = 20_000;

/** The two sizes the screens are made for. */
export const postures = {
  phone: {
    viewport: { width: 390, height: 844 },
    isMobile: true,
    hasTouch: true,
    deviceScaleFactor: 2,
  },
  desk: { viewport: { width: 1440, height: 900 } },
};

function need(file, how) {
  if (!existsSync(file)) throw new Error(`${file} is missing: ${how}`);
}

export async function startWorld() {
  need(join(dist, 'index.html'), 'run npm run build in web first.');
  need(join(dist, 'engine/engine.wasm'), 'build the engine, then run npm run build in web.');
  await mkdir(screenshots, { recursive: true });

  const [example] = JSON.parse(readFileSync(join(dist, 'examples/index.json'), 'utf8'));
  const site = join(examples, example.folder);
  const worker = readdirSync(join(dist, 'assets')).find((name) => name.startsWith('engine_worker'));
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium-headless-shell',
    args: chromiumFlags,
  });
  const startServer = async () =>
    (await serveNative(join(nativeBuild, 'proofstone-server'), dist, examples)) ??
    (await serveStatic(dist));

  return {
    browser,
    dist,
    site,
    server: await startServer(),
    startServer,
    /** The command line, where it is built. */
    nativeProgram: existsSync(join(nativeBuild, 'proofstone'))
      ? join(nativeBuild, 'proofstone')
      : undefined,
    screenshot: (name) => join(screenshots, `${name}.png`),
    expected: expectedFindings({
      program: join(nativeBuild, 'proofstone'),
      engineFolder: join(dist, 'engine'),
      site,
      files: example.files,
    }),
    /** The example as the request interface takes it. */
    example: async () => {
      const read = (name) => readFile(join(site, name), 'utf8');
      const files = example.files.filter((name) => name.endsWith('.csv'));
      return {
        document: await read('site.json'),
        files: await Promise.all(files.map(async (name) => ({ name, text: await read(name) }))),
      };
    },
    workerPath: `assets/${worker}`,
  };
}

/** A page of a fresh profile. What the page complains of is gathered in `page.complaints`. */
export async function newPage(world, options = {}) {
  const context = await world.browser.newContext({ acceptDownloads: true, ...options });
  context.setDefaultTimeout(patienceMs);
  const page = await context.newPage();
  page.complaints = [];
  page.on('pageerror', (error) => page.complaints.push(String(error)));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) page.complaints.push(message.text());
  });
  return page;
}

/** Opens the application and waits for its verdict. */
export async function openApplication(world, options = {}, hash = '', server = world.server) {
  const page = await newPage(world, options);
  await page.goto(server.address + hash);
  await page.waitForSelector('#verdict');
  await page.waitForSelector('.drawing svg');
  await wholePage(page);
  return page;
}

/** Waits until the lists and pictures of a page, which come a few at a time, are all there. */
export function wholePage(page) {
  return page.waitForFunction(
    () =>
      !document.querySelector('section[aria-busy="true"]') &&
      [...document.querySelectorAll('.drawing')].every(
        (drawing) => drawing.hidden || drawing.firstElementChild,
      ),
  );
}

/** Goes to a screen by its address within the application, and waits until it stands there. */
export async function goTo(page, hash) {
  await page.goto(new URL(hash, page.url()).href);
  // The address is answered after it has changed: until then the screen before still stands.
  await page.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
  await page.waitForFunction(
    () =>
      document.querySelector('#content h1') &&
      document.querySelector('main').ariaBusy === 'false' &&
      !document.querySelector('#content > [role=status]'),
  );
}

/** The findings as the page saves them. */
export async function savedFindings(page) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the findings' }).click(),
  ]);
  return JSON.parse(await readFile(await download.path(), 'utf8'));
}

/**
 * Asks the engine in a worker of the page: `warmUp` times, then, after a rest of so many
 * milliseconds, `times`. Returns the last answer and the milliseconds of each, those of the first
 * apart. What is asked often the browser compiles anew beside the work, which takes it seconds:
 * between two taps it has them, between two asks without a rest it has not.
 */
export function askEngine(page, world, request, times = 0, warmUp = 1, rest = 0) {
  return page.evaluate(
    async ([workerPath, text, repeat, unmeasured, pause]) => {
      const worker = new Worker(workerPath, { type: 'module' });
      const engine = new URL('engine/engine.js', document.baseURI).href;
      const ask = (id) =>
        new Promise((settle, fail) => {
          worker.onerror = (event) => fail(new Error(event.message));
          worker.onmessage = ({ data }) =>
            'answer' in data
              ? settle(data.answer)
              : fail(new Error(`${data.failure} ${data.detail}`));
          worker.postMessage({ id, engine, request: JSON.parse(text) });
        });
      let answer;
      const timed = async (number) => {
        const taken = [];
        for (let id = 1; id <= number; id += 1) {
          const start = performance.now();
          answer = await ask(id);
          taken.push(performance.now() - start);
        }
        return taken;
      };
      const atFirst = await timed(unmeasured);
      await new Promise((rested) => setTimeout(rested, pause));
      const milliseconds = await timed(repeat);
      worker.terminate();
      return { answer: JSON.parse(answer), atFirst, milliseconds };
    },
    [world.workerPath, JSON.stringify(request), times, warmUp, rest],
  );
}
