// Looks at the pixels of a screenshot.

/** Runs in an empty page of the browser, which can decode PNG. */
async function countInPage({ base64, colours, tolerance }) {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const canvas = new OffscreenCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  const near = Object.fromEntries(Object.keys(colours).map((name) => [name, 0]));
  const seen = new Set();
  for (let at = 0; at < data.length; at += 4) {
    const [r, g, b] = [data[at], data[at + 1], data[at + 2]];
    seen.add((r << 16) | (g << 8) | b);
    for (const [name, colour] of Object.entries(colours)) {
      const away = Math.max(
        Math.abs(r - colour[0]),
        Math.abs(g - colour[1]),
        Math.abs(b - colour[2]),
      );
      if (away <= tolerance) near[name] += 1;
    }
  }
  return { pixels: data.length / 4, colours: seen.size, near };
}

function rgb(hex) {
  return [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));
}

/**
 * Of a PNG: how many pixels, how many different colours, and how many pixels lie within
 * `tolerance` of each named colour ("#rrggbb").
 */
export async function readPixels(browser, png, colours, tolerance = 6) {
  const page = await browser.newPage();
  try {
    return await page.evaluate(countInPage, {
      base64: png.toString('base64'),
      colours: Object.fromEntries(Object.entries(colours).map(([name, hex]) => [name, rgb(hex)])),
      tolerance,
    });
  } finally {
    await page.close();
  }
}

/** The colours of theme.css as the page has them now. */
export function themeColours(page, names) {
  return page.evaluate((wanted) => {
    const style = getComputedStyle(document.documentElement);
    return Object.fromEntries(
      wanted.map((name) => [name, style.getPropertyValue(`--${name}`).trim()]),
    );
  }, names);
}
