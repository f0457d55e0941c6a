// Measures the built screens in Debian's Chromium and judges the times, which the tests only tell: for a machine with
// nothing else to do. `npm run measure`.
import { after } from 'node:test';
import { manyLooksTests } from './many_looks_tests.mjs';
import { measures } from './measures.mjs';
import { pageFitnessTests } from './page_fitness_tests.mjs';
import { startWorld } from './world.mjs';

const world = await startWorld();
after(async () => {
  await world.browser.close();
  await world.server.stop();
});
measures(world);
pageFitnessTests(world, { judgeTimes: true });
manyLooksTests(world, { judgeTimes: true });
