/** What the user chose for this device: units, appearance, what photos tell. Kept in local storage. */
import { computed, effect, signal } from '@preact/signals';
import type { UnitSystem } from './findings';

export type Appearance = 'system' | 'light' | 'dark';

export const appearances: readonly Appearance[] = ['system', 'light', 'dark'];
const unitSystems: readonly UnitSystem[] = ['us', 'si'];

/** Reads one choice; storage may be switched off, and may hold anything. */
export function remembered<Choice extends string>(
  key: string,
  allowed: readonly Choice[],
  first: Choice,
): Choice {
  try {
    const text = localStorage.getItem(key);
    return allowed.find((choice) => choice === text) ?? first;
  } catch {
    return first;
  }
}

export function remember(key: string, choice: string): void {
  try {
    localStorage.setItem(key, choice);
  } catch {
    // Without storage the choice holds until the page is closed.
  }
}

/** Reads a text the user typed once; nothing where there is none. */
function rememberedText(key: string): string {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
}

const authorKey = 'proofstone.author';
const unitsKey = 'proofstone.units';
const appearanceKey = 'proofstone.appearance';

export const units = signal<UnitSystem>(remembered(unitsKey, unitSystems, 'us'));
export const appearance = signal<Appearance>(remembered(appearanceKey, appearances, 'system'));

/** Who signs what is put into the record on this device. */
export const author = signal(rememberedText(authorKey));

const locationKey = 'proofstone.location';

/** Whether photos keep what they say of where they were taken. */
export const keepsLocation = signal(
  remembered(locationKey, ['left out', 'kept'], 'left out') === 'kept',
);

const keysKey = 'proofstone.keys';

/** Whether the key ? alone opens the list of keys. */
export const markOpensKeys = signal(remembered(keysKey, ['on', 'off'], 'on') === 'on');

const positionKey = 'proofstone.position';

/** Whether what is taken down carries where this device is. */
export const takesPosition = signal(
  remembered(positionKey, ['left out', 'taken'], 'left out') === 'taken',
);

const deviceIsDark = signal(false);
const theme = computed(() =>
  appearance.value === 'system' ? (deviceIsDark.value ? 'dark' : 'light') : appearance.value,
);

/** The appearance after the present one, in the order of the button. */
export function nextAppearance(): Appearance {
  return appearances[(appearances.indexOf(appearance.value) + 1) % appearances.length] ?? 'system';
}

/** Applies the settings to the page and keeps them from now on. */
export function startSettings(): void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  deviceIsDark.value = dark.matches;
  dark.addEventListener('change', () => (deviceIsDark.value = dark.matches));
  effect(() => {
    document.documentElement.dataset.theme = theme.value;
  });
  effect(() => remember(unitsKey, units.value));
  effect(() => remember(appearanceKey, appearance.value));
  effect(() => remember(authorKey, author.value));
  effect(() => remember(keysKey, markOpensKeys.value ? 'on' : 'off'));
  effect(() => remember(positionKey, takesPosition.value ? 'taken' : 'left out'));
  effect(() => remember(locationKey, keepsLocation.value ? 'kept' : 'left out'));
}
