// Drives the built screens in Debian's Chromium. Run `npm run build` first; `npm run test:browser`.
import { after } from 'node:test';
import { deskStudyTests } from './desk_study_tests.mjs';
import { deskTests } from './desk_tests.mjs';
import { failureTests } from './failure_tests.mjs';
import { fieldTests } from './field_tests.mjs';
import { findingTests } from './finding_tests.mjs';
import { helpTests } from './help_tests.mjs';
import { keyboardTests } from './keyboard_tests.mjs';
import { languageTests } from './language_tests.mjs';
import { manyLooksTests } from './many_looks_tests.mjs';
import { measures } from './measures.mjs';
import { offlineTests } from './offline_tests.mjs';
import { pageFitnessTests } from './page_fitness_tests.mjs';
import { photoTests } from './photo_tests.mjs';
import { pictureTests } from './picture_tests.mjs';
import { positionTests } from './position_tests.mjs';
import { screenTests } from './screen_tests.mjs';
import { siteFileTests } from './site_file_tests.mjs';
import { startWorld } from './world.mjs';

let world;
try {
  world = await startWorld();
} catch (error) {
  console.error(`The browser tests cannot start: ${error.message}`);
  process.exit(1);
}
console.log(`Screens from ${world.server.name}; findings compared with ${world.expected.by}.`);
after(async () => {
  await world.browser.close();
  await world.server.stop();
});

screenTests(world);
findingTests(world);
siteFileTests(world);
fieldTests(world);
photoTests(world);
positionTests(world);
deskTests(world);
deskStudyTests(world);
helpTests(world);
keyboardTests(world);
languageTests(world);
pictureTests(world);
offlineTests(world);
failureTests(world);
manyLooksTests(world);
pageFitnessTests(world);
measures(world);
