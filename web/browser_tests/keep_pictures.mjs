// Keeps the pictures that screens are compared with as the screens are now. Look at them before they are committed.
import { after } from 'node:test';
import { pictureTests } from './picture_tests.mjs';
import { startWorld } from './world.mjs';

const world = await startWorld();
after(async () => {
  await world.browser.close();
  await world.server.stop();
});
pictureTests(world, { renew: true });
