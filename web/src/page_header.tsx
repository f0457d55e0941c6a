/** The top of the page: the name, units and appearance. */
import type { UnitSystem } from './findings';
import { chooseLanguage, type Language, languageNames, languages } from './language';
import { addressOf, isInField, type Place, place, losesTyped } from './places';
import { type Appearance, appearance, nextAppearance, units } from './settings';
import { strings } from './strings';

function UnitsSwitch() {
  const words = strings.units;
  return (
    <fieldset class="units">
      <legend class="for-readers">{words.label}</legend>
      {(['us', 'si'] as UnitSystem[]).map((system) => (
        <label key={system}>
          <input
            type="radio"
            name="units"
            value={system}
            checked={units.value === system}
            onChange={() => (units.value = system)}
            aria-label={words.meanings[system]}
          />
          <span aria-hidden="true">{words.names[system]}</span>
        </label>
      ))}
    </fieldset>
  );
}

/**
 * Beginning anew in another language would lose what is typed where nothing holds it yet; there
 * the choice is not offered.
 */
function LanguageChoice() {
  if (losesTyped(place.value)) return null;
  return (
    <label class="language">
      <span class="for-readers">{strings.language}</span>
      <select
        name="language"
        value={strings.code}
        onChange={({ currentTarget }) => chooseLanguage(currentTarget.value as Language)}
      >
        {languages.map((language) => (
          <option key={language} value={language} lang={language}>
            {languageNames[language]}
          </option>
        ))}
      </select>
      <span class="code" aria-hidden="true">
        {strings.code}
      </span>
    </label>
  );
}

const appearanceDrawings: Record<Appearance, string> = {
  system: 'M4 5h16v11H4zM9 20h6M12 16v4',
  light:
    'M12 8a4 4 0 1 0 0 8 4 4 0 0 0 0-8M12 2v2.5M12 19.5V22M2 12h2.5M19.5 12H22M5 5l1.7 1.7M17.3 17.3 19 19M5 19l1.7-1.7M17.3 6.7 19 5',
  dark: 'M19.5 14.5A8 8 0 0 1 9.5 4.5a8 8 0 1 0 10 10Z',
};

function AppearanceButton() {
  const { names, button } = strings.appearance;
  const now = appearance.value;
  return (
    <button
      type="button"
      class="appearance"
      aria-label={button(names[now], names[nextAppearance()])}
      onClick={() => (appearance.value = nextAppearance())}
    >
      <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
        <path d={appearanceDrawings[now]} class="outline" />
      </svg>
      <span class="name">{names[now]}</span>
    </button>
  );
}

/** The parts of the application; the present one is marked for eye and reader. */
function PlacesNavigation() {
  const words = strings.places;
  const here = place.value;
  const { at } = here;
  const link = (to: Place, name: string, isHere: boolean) => (
    <a href={addressOf(to)} {...(isHere ? { 'aria-current': 'page' as const } : {})}>
      {name}
    </a>
  );
  return (
    <nav class="places" aria-label={words.label}>
      {link({ at: 'findings' }, words.findings, at === 'findings')}
      {link({ at: 'field' }, words.field, isInField(here))}
      {link({ at: 'desk', show: 'board' }, words.desk, at === 'desk')}
      {link({ at: 'help' }, strings.help.place, at === 'help')}
    </nav>
  );
}

export function PageHeader() {
  const onFindings = place.value.at === 'findings';
  const skipTarget = onFindings ? 'findings' : 'content';
  // The address names the place in the application, so that it stays as it is.
  const skip = (event: Event) => {
    event.preventDefault();
    document.getElementById(skipTarget)?.focus();
  };
  return (
    <header class="page-header">
      <a class="skip" href={`#${skipTarget}`} onClick={skip}>
        {onFindings ? strings.skipToFindings : strings.skipToContent}
      </a>
      <span class="product">
        <svg viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
          <path class="stone" d="M7.5 5.5 20.5 3 29 12 27 23.5 15 29 3.5 21.5 3 12.5Z" />
          <path
            class="water"
            d="M3.2 17.2c3.2-2.4 6-2.2 8.9-.2s6.1 1.9 9 0c2.4-1.6 4.5-1.7 6.800-.5L27 23.5 15 29 3.5 21.5Z"
          />
        </svg>
        <span class="name">{strings.product}</span>
      </span>
      <PlacesNavigation />
      <div class="tools">
        <UnitsSwitch />
        <LanguageChoice />
        <AppearanceButton />
      </div>
    </header>
  );
}
