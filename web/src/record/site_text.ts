/**
 * The document of a site as the text that the engine reads, beside the revisions it was written of.
 * A record of years is long: neither is made anew of the other because of one revision more.
 */
import type { NamedText } from '../findings';
import type { SiteFiles } from '../site_files';
import type { KeptSite } from './record_database';
import { withoutPositions } from './position';
import {
  type Change,
  documentOf,
  freshId,
  headsOf,
  type Revision,
  type SiteDocument,
  utcNow,
  withParents,
} from './revision';

interface Held {
  revisions: readonly Revision[];
  /** Of `documentOf(revisions)`, without spaces: revisions can be appended to it as text. */
  text: string;
}

const held = new WeakMap<SiteFiles, Held>();

/** What closes the list of revisions and the document. */
const ending = ']}';

function textOf(revisions: Revision[]): string {
  return JSON.stringify(documentOf(revisions));
}

function appended(text: string, revisions: readonly Revision[]): string {
  if (revisions.length === 0) return text;
  const more = revisions.map((revision) => JSON.stringify(revision)).join(',');
  return `${text.slice(0, -ending.length)},${more}${ending}`;
}

/** The document of a text; undefined where the text is not one. */
export function documentIn(text: string): SiteDocument | undefined {
  try {
    const document = JSON.parse(text) as Partial<SiteDocument>;
    const revisions = document.revisions;
    const whole =
      document.proofstone === 'site' && Array.isArray(revisions) && revisions.length > 0;
    return whole ? documentOf(withParents(revisions)) : undefined;
  } catch {
    return undefined;
  }
}

/** What is held of a site; read once of its text where it was not made here. */
function heldOf(site: SiteFiles): Held | undefined {
  const known = held.get(site);
  if (known) return known;
  const document = documentIn(site.document);
  if (!document) return undefined;
  const fresh = { revisions: document.revisions, text: JSON.stringify(document) };
  held.set(site, fresh);
  return fresh;
}

/** A kept site as it stands with all its revisions. */
export function siteOf(
  kept: Pick<KeptSite, 'id' | 'name' | 'origin'>,
  revisions: Revision[],
  files: NamedText[],
): SiteFiles {
  const document = textOf(revisions);
  const { id, name, origin } = kept;
  const site: SiteFiles = { label: name, origin, kept: id, document, files };
  held.set(site, { revisions, text: document });
  return site;
}

/** The same site with what was appended to it since. */
export function siteWithMore(
  site: SiteFiles,
  more: readonly Revision[],
  files: NamedText[],
): SiteFiles {
  const before = heldOf(site);
  if (!before) return site;
  const text = appended(before.text, more);
  const next: SiteFiles = { ...site, document: text, files };
  held.set(next, { revisions: [...before.revisions, ...more], text });
  return next;
}

/** The revisions of a site in the order in which this device has them. */
export function revisionsOf(site: SiteFiles): readonly Revision[] {
  return heldOf(site)?.revisions ?? [];
}

/** The document of a site as it was before the revision at a place of `revisionsOf`. */
export function documentBefore(site: SiteFiles, place: number): string {
  const now = heldOf(site);
  if (!now) return site.document;
  const after = now.revisions.slice(place).map((revision) => JSON.stringify(revision).length);
  const length = after.reduce((sum, each) => sum + each + 1, ending.length);
  return place === 0 ? textOf([]) : `${now.text.slice(0, -length)}${ending}`;
}

/** The document of the open site with changes that are not in the record yet: what would be. */
export function documentWith(site: SiteFiles, changes: Change[]): string {
  const now = heldOf(site);
  if (!now) return site.document;
  const trial: Revision = {
    id: freshId('trial'),
    after: headsOf(now.revisions),
    time: utcNow(),
    author: 'trial',
    note: 'trial',
    changes,
  };
  return appended(now.text, [trial]);
}

/** The document of a site without the places where things were taken down, now or before. */
export function withoutPlaces(site: SiteFiles): string {
  const now = heldOf(site);
  if (!now) return site.document;
  const revisions = now.revisions.map(withoutPositions);
  const told = revisions.some((revision, index) => revision !== now.revisions[index]);
  return told ? textOf(revisions) : site.document;
}
