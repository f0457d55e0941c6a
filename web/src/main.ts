/** Loads the words of the chosen language, then the screens that are made of them. */
import './theme.css';
import './page.css';
import './overview.css';
import './notices.css';
import './narrow_page.css';
import './field.css';
import './finding.css';
import { chosenLanguage, localeOf } from './language';
import { loadWords } from './strings';

const language = chosenLanguage();
document.documentElement.lang = localeOf(language, navigator.languages);
// Not awaited at the top: the screens share modules with this one, and each would wait for the other.
loadWords(language)
  .then(() => import('./start'))
  .catch((error: unknown) => {
    document.getElementById('not-loaded')?.removeAttribute('hidden');
    throw error;
  });
