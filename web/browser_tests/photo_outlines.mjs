// The worker of the screens that finds stones, asked as a page asks it.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A picture of the repository. */
export const pictureFile = (name) =>
  fileURLToPath(new URL(`../../photography/pictures/${name}`, import.meta.url));

/** What the worker of the screens finds on a picture. */
export function outlinesInBrowser(page, world, bytes, type) {
  const worker = readdirSync(join(world.dist, 'assets')).find((name) =>
    name.startsWith('vision_worker'),
  );
  return page.evaluate(
    async ([path, base64, media]) => {
      const photo = new Blob([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], {
        type: media,
      });
      const one = new Worker(path, { type: 'module' });
      const beside = (name) => new URL(`engine/${name}`, document.baseURI).href;
      const answer = await new Promise((settle, fail) => {
        one.onerror = (event) => fail(new Error(event.message));
        one.onmessage = ({ data }) => {
          if ('answer' in data) settle(data.answer);
          if ('failure' in data) fail(new Error(`${data.failure} ${data.detail}`));
        };
        one.postMessage({
          id: 1,
          ask: 'outline',
          module: beside('vision.js'),
          weights: beside('outline-network.weights'),
          photo,
          name: 'photo',
        });
      });
      one.terminate();
      return answer;
    },
    [`assets/${worker}`, bytes.toString('base64'), type],
  );
}
