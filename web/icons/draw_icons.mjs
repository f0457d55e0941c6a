// Draws the icons of the application as PNG files from their SVG drawing, with the Chromium at hand.
// The PNG files are kept; run this (npm run icons) only after a change of the drawing.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const drawing = readFileSync(here('../public/icons/proofstone.svg'), 'utf8');
const paper = '#f6f4f0';

/** Name, pixels, share of the square that the drawing fills, ground. */
const icons = [
  ['proofstone-180.png', 180, 0.8, paper],
  ['proofstone-192.png', 192, 1, 'transparent'],
  ['proofstone-512.png', 512, 1, 'transparent'],
  ['proofstone-maskable-512.png', 512, 0.64, paper],
];

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium-headless-shell',
  args: ['--no-sandbox', '--disable-gpu'],
});
for (const [name, pixels, share, ground] of icons) {
  const page = await browser.newPage({ viewport: { width: pixels, height: pixels } });
  const side = Math.round(pixels * share);
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${ground}">` +
      `<div style="width:${side}px;height:${side}px">${drawing}</div></body>`,
  );
  await page.screenshot({
    path: here(`../public/icons/${name}`),
    omitBackground: ground === 'transparent',
  });
  await page.close();
}
await browser.close();
