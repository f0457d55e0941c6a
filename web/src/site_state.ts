/** The open site as its revisions leave it, told by the engine: what the screens list and edit. */
import { batch, computed, effect, signal } from '@preact/signals';
import { engine } from './engine';
import type { Position } from './record/position';
import type { Change } from './record/revision';
import { openedSite } from './record/site_record';
import type { SiteFiles } from './site_files';

/** The parts of the state that the screens read by name; the engine reads all of it. */
export interface SiteState {
  name?: string;
  lots?: Record<string, { name: string; class: string; source: string }>;
  looks?: Record<
    string,
    {
      name: string;
      kind: string;
      lot: string;
      when?: string;
      who?: string;
      photos?: string[];
      position?: Position;
      pictures?: { boards?: { edge: string; markers: { number: number }[] }[] }[];
    }
  >;
  loads?: Record<string, { lot: string; when: string; ticket?: string; mass?: string }>;
  sources?: Record<string, { name: string }>;
  zones?: Record<string, { name: string }>;
  nonconformances?: Record<string, NonconformanceState>;
  prices?: { currency?: string };
}

/** Somebody who saw or decided something, and when. */
export interface Signed {
  who?: string;
  when?: string;
  where?: string;
  note?: string;
  photos?: string[];
  position?: Position;
}

/** A problem from its finding to its closing. */
export interface NonconformanceState {
  name: string;
  lot?: string;
  zone?: string;
  check?: string;
  opened?: Signed;
  disposition?: Signed & { kind?: string; approved_by?: string };
  closed?: Signed;
}

/** One of two changes that cross, and who made it. */
export type ConflictSide = Change & { revision: string; author: string; time: string };

/** Changes of one thing, neither made knowing the other, that nobody has settled. */
export interface Conflict {
  pointer: string;
  stands: ConflictSide;
  passed_over: ConflictSide;
}

/** A revision and the pointers that it touched, as the engine plays it. */
export interface PlayedRevision {
  id: string;
  time: string;
  author: string;
  note: string;
  touches: string[];
}

interface StateAnswer {
  state?: SiteState;
  conflicts?: Conflict[];
  revisions?: PlayedRevision[];
}

export const siteState = signal<SiteState>({});
export const siteConflicts = signal<Conflict[]>([]);
export const siteRevisions = signal<PlayedRevision[]>([]);
/** The site that `siteState` tells of; another than the open one while the engine is at work. */
const stateOf = signal<SiteFiles | undefined>(undefined);
export const stateIsCurrent = computed(() => stateOf.value === openedSite.value);

/** Keeps `siteState` up to date with the open site. */
export function followSite(): void {
  effect(() => {
    const site = openedSite.value;
    if (!site) {
      siteState.value = {};
      siteConflicts.value = [];
      siteRevisions.value = [];
      return;
    }
    engine
      .ask<StateAnswer>({ ask: 'state', document: site.document })
      .then(({ state, conflicts, revisions }) => {
        if (openedSite.peek() !== site) return;
        batch(() => {
          siteState.value = state ?? {};
          siteConflicts.value = conflicts ?? [];
          siteRevisions.value = revisions ?? [];
          stateOf.value = site;
        });
      })
      // The assessment of the same site says what is wrong, and what to do.
      .catch(() => undefined);
  });
}
