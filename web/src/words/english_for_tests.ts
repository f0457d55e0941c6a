/** Tests read the screens in English. */
import { loadWords } from '../strings';

await loadWords('en');
if (globalThis.document) document.documentElement.lang = 'en';
