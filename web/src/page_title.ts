/** The title of the page: what a screen reader says first, and what a tab and the history show. */
import { effect } from '@preact/signals';
import { isInField, type Place, place } from './places';
import { siteState } from './site_state';
import { strings } from './strings';

function partName(here: Place): string {
  if (here.at === 'help') return strings.help.place;
  if (isInField(here)) return strings.places.field;
  return here.at === 'desk' ? strings.places.desk : strings.places.findings;
}

export function followTitle(): void {
  effect(() => {
    const parts = [partName(place.value), siteState.value.name ?? '', strings.product];
    document.title = parts.filter((part) => part !== '').join(' · ');
  });
}
