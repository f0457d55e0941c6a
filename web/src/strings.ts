/**
 * The words of the screens in the language of this device. They are loaded before any screen is,
 * so that a module may take its part of them when it begins.
 */
import type { Language } from './language';
import type { english } from './words/english';

export type Strings = typeof english;

/** One file for each language; only the chosen one is loaded. */
const wordsIn: Record<Language, () => Promise<Strings>> = {
  en: async () => (await import('./words/english')).english,
  es: async () => (await import('./words/spanish')).spanish,
};

export let strings: Strings;
/** Those of the photo screens. */
export let photoWords: Strings['photoScreens'];

/** Loads the words of a language; rejects where they cannot be had. */
export async function loadWords(language: Language): Promise<void> {
  strings = await wordsIn[language]();
  photoWords = strings.photoScreens;
}
