/** Where in the application the user is, as the address says it. */
import { signal } from '@preact/signals';

/** What is taken down about a lot. */
export const lotTasks = ['count', 'quick-look', 'load', 'problem'] as const;
export type LotTask = (typeof lotTasks)[number];

export type Place =
  | { at: 'findings' }
  | { at: 'field' }
  | { at: 'new-rock' }
  | { at: 'lot'; lot: string; task?: LotTask };

function steps(hash: string): string[] {
  try {
    return hash.replace(/^#\//, '').split('/').map(decodeURIComponent);
  } catch {
    return [];
  }
}

/** An address that means nothing here leads to the findings. */
export function placeAt(hash: string): Place {
  const [first = '', kind = '', id = '', task = ''] = steps(hash);
  if (first !== 'field') return { at: 'findings' };
  if (kind === 'lot' && id !== '') {
    const known = lotTasks.find((one) => one === task);
    return known ? { at: 'lot', lot: id, task: known } : { at: 'lot', lot: id };
  }
  return kind === 'new-rock' ? { at: 'new-rock' } : { at: 'field' };
}

export function addressOf(place: Place): string {
  const path = (...parts: (string | undefined)[]) =>
    `#/${parts
      .filter((part) => part !== undefined)
      .map(encodeURIComponent)
      .join('/')}`;
  switch (place.at) {
    case 'findings':
      return '#/';
    case 'lot':
      return path('field', 'lot', place.lot, place.task);
    case 'field':
      return path('field');
    case 'new-rock':
      return path('field', 'new-rock');
  }
}

/** Whether something is being taken down there. */
export function isTask(place: Place): boolean {
  return place.at === 'new-rock' || (place.at === 'lot' && place.task !== undefined);
}

export const place = signal<Place>(placeAt(location.hash));

export function go(to: Place): void {
  location.hash = addressOf(to);
}

export function followPlaces(): void {
  addEventListener('hashchange', () => {
    place.value = placeAt(location.hash);
    scrollTo(0, 0);
  });
}
