/**
 * Every word of the screens in English. Its shape is that of every other language: a word that is
 * missing there, or too many, does not compile. Names, phrases and sentences about the site come
 * from the engine and are not here.
 */
import { desk } from './english/desk';
import { field } from './english/field';
import { findings } from './english/findings';
import { help } from './english/help';
import { page } from './english/page';
import { photoScreens } from './english/photo_screens';
import { position } from './english/position';
import { record } from './english/record';
import { siteFiles } from './english/site_files';
import { walk } from './english/walk';

export const english = {
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
