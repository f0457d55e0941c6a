/**
 * Every word of the screens in Spanish, for engineers and inspectors of the Americas. Which word
 * was chosen for which term stands in `spanish/terms.ts`.
 */
import type { english } from './english';
import { desk } from './spanish/desk';
import { field } from './spanish/field';
import { findings } from './spanish/findings';
import { help } from './spanish/help';
import { page } from './spanish/page';
import { photoScreens } from './spanish/photo_screens';
import { position } from './spanish/position';
import { record } from './spanish/record';
import { siteFiles } from './spanish/site_files';
import { walk } from './spanish/walk';

export const spanish: typeof english = {
  ...page,
  ...findings,
  ...siteFiles,
  ...field,
  ...walk,
  ...record,
  position,
  photoScreens,
  desk,
  help,
};
