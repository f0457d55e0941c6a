/** The language of the screens: kept on this device, the first time that of the browser. */
import { remember, remembered } from './settings';

export type Language = 'en' | 'es';

/** Each language is called as those who speak it call it. */
export const languageNames: Record<Language, string> = {
  en: 'English',
  es: 'Español',
};
export const languages = Object.keys(languageNames) as Language[];

const languageKey = 'proofstone.language';

function isIn(language: Language, locale: string): boolean {
  return locale.toLowerCase().split('-')[0] === language;
}

/** The first language that is preferred and known; English where none is. */
export function firstLanguage(preferred: readonly string[]): Language {
  for (const locale of preferred) {
    const known = languages.find((language) => isIn(language, locale));
    if (known) return known;
  }
  return 'en';
}

/** How dates and numbers are written: as the country that the browser names does, where it speaks it. */
export function localeOf(language: Language, preferred: readonly string[]): string {
  return preferred.find((locale) => isIn(language, locale)) ?? language;
}

export function chosenLanguage(): Language {
  return remembered(languageKey, languages, firstLanguage(navigator.languages));
}

/** Keeps the choice and begins anew in it; what is kept on the device stands as it was. */
export function chooseLanguage(language: Language): void {
  remember(languageKey, language);
  location.reload();
}
