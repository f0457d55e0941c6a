import { afterEach, expect, it } from 'vitest';
import { chosenLanguage, firstLanguage, localeOf } from './language';

afterEach(() => localStorage.clear());

it('begins in the first language of the browser that it knows', () => {
  expect(firstLanguage(['en-GB', 'de'])).toBe('en');
  expect(firstLanguage(['de', 'ES-mx', 'en'])).toBe('es');
  expect(firstLanguage(['enx', 'de'])).toBe('en');
  expect(firstLanguage([])).toBe('en');
});

it('writes dates and numbers as the country of the browser does', () => {
  expect(localeOf('en', ['de', 'en-GB', 'en-US'])).toBe('en-GB');
  expect(localeOf('es', ['en', 'es-PE'])).toBe('es-PE');
  expect(localeOf('es', ['de'])).toBe('es');
});

it('holds to what was chosen, and to nothing that it does not know', () => {
  localStorage.setItem('proofstone.language', 'es');
  expect(chosenLanguage()).toBe('es');
  localStorage.setItem('proofstone.language', 'xx');
  expect(chosenLanguage()).toBe('en');
});
