/** What the record of a site is made of. Revisions are appended and never rewritten. */

import { withoutPositions } from './position';

/** A value put at a place of the site ("/looks/north-face"), or taken away. */
export type Change = { set: string; to: unknown } | { remove: string };

export interface Revision {
  id: string;
  /** The revisions it was made upon; a file may leave it out where that is the one before. */
  after: string[];
  /** RFC 3339 in UTC, to the second. */
  time: string;
  author: string;
  note: string;
  changes: Change[];
  /** Pointers of changes that cross and are right as they stand after this revision. */
  settles?: string[];
}

/** The part of a site document that the screens write. */
export interface SiteDocument {
  proofstone: 'site';
  format: 1;
  revisions: Revision[];
}

export function documentOf(revisions: Revision[]): SiteDocument {
  return { proofstone: 'site', format: 1, revisions };
}

/** Now, as the record writes it: "2026-05-04T15:10:00Z". */
export function utcNow(now: Date = new Date()): string {
  return now.toISOString().replace(/\.\d+Z$/, 'Z');
}

/** Letters and digits that no two devices come up with at once. */
function unlikely(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(5));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** An id that says when it was made and is nobody else's: "count-20260504-151000-3f9a0c1b2d". */
export function freshId(kind: string, now: Date = new Date()): string {
  const stamp = utcNow(now).replaceAll(/[-:Z]/g, '').replace('T', '-');
  return `${kind}-${stamp}-${unlikely()}`;
}

/** The revisions with what each was made upon said, so that they mean the same in any order. */
export function withParents(revisions: readonly Revision[]): Revision[] {
  return revisions.map((revision, place) => {
    const before = revisions[place - 1];
    const said = Array.isArray(revision.after) && revision.after.length > 0;
    return said || !before ? revision : { ...revision, after: [before.id] };
  });
}

/** The revisions that no other stands upon. */
export function headsOf(revisions: readonly Revision[]): string[] {
  const stoodUpon = new Set(withParents(revisions).flatMap(({ after }) => after));
  return revisions.map(({ id }) => id).filter((id) => !stoodUpon.has(id));
}

/** A step of a JSON pointer, with the two characters escaped that mean something there. */
export function pointerTo(...steps: string[]): string {
  return steps.map((step) => `/${step.replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** The steps of a JSON pointer, plain again. */
export function stepsOf(pointer: string): string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** What two copies of one site have in common: its first revision. The same on every device. */
export async function siteIdOf(first: Revision): Promise<string> {
  const { id, time, author, changes } = withoutPositions(first);
  const text = JSON.stringify([id, time, author, changes]);
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest).slice(0, 12), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
}
