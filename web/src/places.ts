/** Where in the application the user is, as the address says it. */
import { signal } from '@preact/signals';
import { pointerTo, stepsOf } from './record/revision';

/** What is taken down about a lot. */
export const lotTasks = ['count', 'photo', 'quick-look', 'weigh', 'load', 'problem'] as const;
export type LotTask = (typeof lotTasks)[number];

/** What the desk shows beside the items of the document themselves. */
export const deskScreens = ['board', 'timeline', 'start', 'site', 'blend'] as const;

/** What is looked into of one item, by the part of the document it belongs to. */
export const deskStudies = {
  zones: ['other-rock', 'methods', 'filter', 'mix'],
  sources: ['submittals'],
  centrelines: ['plan'],
} as const satisfies Record<string, readonly string[]>;
export type DeskStudy = (typeof deskStudies)[keyof typeof deskStudies][number];

/** The studies there are of an item of a part. */
export function studiesOf(part: string): readonly DeskStudy[] {
  return (deskStudies as Record<string, readonly DeskStudy[] | undefined>)[part] ?? [];
}

/** A place at the desk: a screen, a collection of the document, one of its items, or a new one. */
export type DeskPlace =
  | { at: 'desk'; show: 'board' | 'site' | 'blend' }
  /** A new site, step by step; the first where none is named. */
  | { at: 'desk'; show: 'start'; step?: 2 | 3 }
  /** The record of the whole site, or of what lies under a pointer of it. */
  | { at: 'desk'; show: 'timeline'; of?: string }
  | { at: 'desk'; show: 'part'; part: string; id?: string }
  | { at: 'desk'; show: 'study'; part: string; id: string; study: DeskStudy }
  | { at: 'desk'; show: 'new'; part: string };

export type Place =
  | { at: 'findings' }
  | DeskPlace
  | { at: 'field' }
  /** The handbook; one page of it where it is named. */
  | { at: 'help'; page?: string }
  | { at: 'new-rock' }
  | { at: 'lot'; lot: string; task?: LotTask }
  /** The walk along a zone that is being built; with `check`, what is seen of one of its checks. */
  | { at: 'zone'; zone: string; check?: string }
  | { at: 'zone-problem'; zone: string; check?: string }
  | { at: 'problem'; problem: string };

function steps(hash: string): string[] {
  try {
    return hash.replace(/^#\//, '').split('/').map(decodeURIComponent);
  } catch {
    return [];
  }
}

/** `#/desk`, `#/desk/timeline/zones/outer-bank`, `#/desk/new/zones`, `#/desk/zones/outer-bank/methods`. */
function deskPlaceAt([part = '', ...rest]: string[]): DeskPlace {
  const id = rest[0] ?? '';
  const screen = deskScreens.find((one) => one === part);
  if (screen === 'timeline') {
    return { at: 'desk', show: screen, ...(id === '' ? {} : { of: pointerTo(...rest) }) };
  }
  if (screen === 'start') {
    const step = id === '2' ? 2 : id === '3' ? 3 : undefined;
    return { at: 'desk', show: screen, ...(step ? { step } : {}) };
  }
  if (screen !== undefined) return { at: 'desk', show: screen };
  if (part === 'new' && id !== '') return { at: 'desk', show: 'new', part: id };
  if (part === '' || part === 'new') return { at: 'desk', show: 'board' };
  const study = studiesOf(part).find((one) => one === rest[1]);
  if (id !== '' && study) return { at: 'desk', show: 'study', part, id, study };
  return { at: 'desk', show: 'part', part, ...(id === '' ? {} : { id }) };
}

function deskAddress(place: DeskPlace): (string | undefined)[] {
  switch (place.show) {
    case 'board':
      return [];
    case 'timeline':
      return ['timeline', ...stepsOf(place.of ?? '')];
    case 'start':
      return ['start', place.step === undefined ? undefined : String(place.step)];
    case 'new':
      return ['new', place.part];
    case 'part':
      return [place.part, place.id];
    case 'study':
      return [place.part, place.id, place.study];
    default:
      return [place.show];
  }
}

/** An address that means nothing here leads to the findings. */
export function placeAt(hash: string): Place {
  const [first = '', kind = '', id = '', task = '', rest = ''] = steps(hash);
  if (first === 'desk') return deskPlaceAt(steps(hash).slice(1));
  if (first === 'help') return kind === '' ? { at: 'help' } : { at: 'help', page: kind };
  if (first !== 'field') return { at: 'findings' };
  if (kind === 'lot' && id !== '') {
    const known = lotTasks.find((one) => one === task);
    return known ? { at: 'lot', lot: id, task: known } : { at: 'lot', lot: id };
  }
  if (kind === 'zone' && id !== '') {
    const about = { zone: id, ...(rest === '' ? {} : { check: rest }) };
    if (task === 'problem') return { at: 'zone-problem', ...about };
    return task === 'check' && rest !== '' ? { at: 'zone', ...about } : { at: 'zone', zone: id };
  }
  if (kind === 'problem' && id !== '') return { at: 'problem', problem: id };
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
    case 'desk':
      return path('desk', ...deskAddress(place));
    case 'help':
      return path('help', place.page);
    case 'lot':
      return path('field', 'lot', place.lot, place.task);
    case 'zone':
      return path('field', 'zone', place.zone, ...(place.check ? ['check', place.check] : []));
    case 'zone-problem':
      return path('field', 'zone', place.zone, 'problem', place.check);
    case 'problem':
      return path('field', 'problem', place.problem);
    case 'field':
      return path('field');
    case 'new-rock':
      return path('field', 'new-rock');
  }
}

/** Whether it is one of the screens of the field. */
export function isInField({ at }: Place): boolean {
  return at !== 'findings' && at !== 'desk' && at !== 'help';
}

/** Whether something is being taken down there. */
export function isTask(place: Place): boolean {
  switch (place.at) {
    case 'lot':
      return place.task !== undefined;
    case 'zone':
      return place.check !== undefined;
    default:
      return ['new-rock', 'zone-problem', 'problem'].includes(place.at);
  }
}

/** Whether what is typed there stands nowhere else until it is kept, and a reload would lose it. */
export function losesTyped(place: Place): boolean {
  if (place.at === 'desk') return place.show === 'blend' || place.show === 'study';
  return isTask(place);
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
