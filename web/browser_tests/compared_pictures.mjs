// Screens against small pictures of them that are kept beside the tests. A picture is the mean colour
// of coarse blocks of the screen: how letters are smoothed makes no difference, where things lie does.
import { existsSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

/** Side of a block on the screen, in pixels. */
const blockSide = 8;
/** Blocks that differ by more than this in a colour, of 255, are told apart … */
const colourTolerance = 28;
/** … and so many of all blocks may. */
const shareTolerance = 0.02;

const kept = (name) => fileURLToPath(new URL(`pictures/${name}.png`, import.meta.url));

/** Runs `work` with the bytes of pictures decoded as image data, in a page of its own. */
async function withPictures(browser, pictures, work, argument) {
  const page = await browser.newPage();
  try {
    return await page.evaluate(
      async ([sources, code, given]) => {
        const images = await Promise.all(
          sources.map(async (source) => {
            const bytes = Uint8Array.from(atob(source), (letter) => letter.charCodeAt(0));
            const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
            const canvas = new OffscreenCanvas(image.width, image.height);
            const pen = canvas.getContext('2d');
            pen.drawImage(image, 0, 0);
            return pen.getImageData(0, 0, image.width, image.height);
          }),
        );
        const png = async (data) => {
          const canvas = new OffscreenCanvas(data.width, data.height);
          canvas.getContext('2d').putImageData(data, 0, 0);
          const bytes = new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer());
          return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
        };
        return new Function(`return (${code})`)()(images, png, given);
      },
      [pictures.map((bytes) => bytes.toString('base64')), work.toString(), argument],
    );
  } finally {
    await page.close();
  }
}

/** The screen in blocks, as a PNG. */
export async function inBlocks(browser, screenshot) {
  const blocks = async ([image], png, side) => {
    const small = new ImageData(Math.ceil(image.width / side), Math.ceil(image.height / side));
    for (let row = 0; row < small.height; row += 1) {
      for (let column = 0; column < small.width; column += 1) {
        const sum = [0, 0, 0];
        let count = 0;
        for (let y = row * side; y < Math.min((row + 1) * side, image.height); y += 1) {
          for (let x = column * side; x < Math.min((column + 1) * side, image.width); x += 1) {
            for (const part of [0, 1, 2]) sum[part] += image.data[4 * (y * image.width + x) + part];
            count += 1;
          }
        }
        const at = 4 * (row * small.width + column);
        for (const part of [0, 1, 2]) small.data[at + part] = sum[part] / count;
        small.data[at + 3] = 255;
      }
    }
    return png(small);
  };
  return Buffer.from(await withPictures(browser, [screenshot], blocks, blockSide), 'base64');
}

/** The share of blocks that differ, and where they do as a PNG: kept, now, difference. */
async function difference(browser, before, now) {
  const compare = async ([one, other], png, tolerance) => {
    if (one.width !== other.width || one.height !== other.height) {
      return { share: 1, picture: await png(other) };
    }
    const beside = new ImageData(3 * one.width, one.height);
    let differ = 0;
    for (let at = 0; at < one.data.length; at += 4) {
      const apart = [0, 1, 2].some(
        (part) => Math.abs(one.data[at + part] - other.data[at + part]) > tolerance,
      );
      if (apart) differ += 1;
      const x = (at / 4) % one.width;
      const row = Math.floor(at / 4 / one.width) * beside.width;
      const shown = apart ? [200, 0, 0, 255] : [235, 235, 235, 255];
      beside.data.set(one.data.subarray(at, at + 4), 4 * (row + x));
      beside.data.set(other.data.subarray(at, at + 4), 4 * (row + one.width + x));
      beside.data.set(shown, 4 * (row + 2 * one.width + x));
    }
    return { share: (4 * differ) / one.data.length, picture: await png(beside) };
  };
  const { share, picture } = await withPictures(browser, [before, now], compare, colourTolerance);
  return { share, picture: Buffer.from(picture, 'base64') };
}

/**
 * What is wrong with a screen against its kept picture; empty where it is as it was. With `renew`
 * the picture is kept anew. A difference is left at `differencePath`.
 */
export async function comparedWithKept(browser, name, screenshot, { renew, differencePath }) {
  const now = await inBlocks(browser, screenshot);
  if (renew) {
    await writeFile(kept(name), now);
    return '';
  }
  if (!existsSync(kept(name))) return `${name} has no picture: npm run pictures keeps one`;
  const { share, picture } = await difference(browser, await readFile(kept(name)), now);
  if (share <= shareTolerance) return '';
  await writeFile(differencePath, picture);
  return `${(100 * share).toFixed(1)} % of ${name} looks otherwise, see ${differencePath}; npm run pictures keeps it as it is now`;
}
