/** Which findings and pictures of the engine are about an item of the site. */
import type { About, Finding, Outcome, Picture } from '../findings';
import { readingOrder } from '../finding_groups';
import { findingsNaming, findingsOf } from '../finding_index';

export interface ItemPlace {
  part: string;
  id: string;
}

const aboutKeys: Record<string, keyof About> = {
  zones: 'zone',
  reaches: 'reach',
  flow_cases: 'flow_case',
  lots: 'lot',
  looks: 'look',
};

/** Items that findings are told of by name. */
const told = ['zones', 'lots'] as const;

function names(value: unknown, id: string): boolean {
  if (typeof value === 'string') return value === id;
  if (value === null || typeof value !== 'object') return false;
  return Object.entries(value).some(([key, inner]) => key === id || names(inner, id));
}

function aboutItem(item: ItemPlace, findings: readonly Finding[]): readonly Finding[] {
  const key = aboutKeys[item.part];
  return key === undefined ? findingsNaming(findings, item.id) : findingsOf(findings, key, item.id);
}

/** Zones and lots that name the item: what it is used for. */
export function usersOf({ part, id }: ItemPlace, state: unknown): ItemPlace[] {
  return told.flatMap((user) => {
    const items = (state as Record<string, Record<string, unknown> | undefined>)[user] ?? {};
    return user === part
      ? []
      : Object.entries(items)
          .filter(([, item]) => names(item, id))
          .map(([other]) => ({ part: user, id: other }));
  });
}

/** In the order in which they must be acted on; of one outcome, in that of the engine. */
export function inReadingOrder(findings: readonly Finding[]): Finding[] {
  const rank = (outcome: Outcome) => readingOrder.indexOf(outcome);
  return [...findings].sort((one, other) => rank(one.outcome) - rank(other.outcome));
}

/** Findings about the item itself; where there are none, about what it is used for. */
export function findingsAbout(
  item: ItemPlace,
  findings: readonly Finding[],
  state: unknown,
): Finding[] {
  const own = aboutItem(item, findings);
  if (own.length > 0) return inReadingOrder(own);
  const ofUsers = usersOf(item, state).map((user) => new Set(aboutItem(user, findings)));
  if (ofUsers.length === 0) return [];
  return inReadingOrder(findings.filter((finding) => ofUsers.some((some) => some.has(finding))));
}

/** What is looked at first where a design is edited. */
const pictureOrder = ['section', 'typical section', 'profile', 'plan', 'gradation', 'filter'];

function inPictureOrder(pictures: readonly Picture[]): Picture[] {
  const rank = ({ kind }: Picture) => {
    const place = pictureOrder.indexOf(kind);
    return place < 0 ? pictureOrder.length : place;
  };
  return [...pictures].sort((one, other) => rank(one) - rank(other));
}

/** The same of pictures, whose ids end in those of the items they show. */
export function picturesAbout(
  item: ItemPlace,
  pictures: readonly Picture[],
  state: unknown,
): Picture[] {
  const shows = (id: string) => (picture: Picture) => picture.id.split('.').slice(1).includes(id);
  const own = pictures.filter(shows(item.id));
  if (own.length > 0) return inPictureOrder(own);
  const users = usersOf(item, state);
  return inPictureOrder(pictures.filter((picture) => users.some(({ id }) => shows(id)(picture))));
}

/** Outcomes that are other ones than before, and what was not there and does not simply meet. */
export function changedOutcomes(
  before: readonly Finding[],
  after: readonly Finding[],
): { finding: Finding; was: Outcome | undefined }[] {
  const known = new Map(before.map(({ id, outcome }) => [id, outcome]));
  const changed = after.filter(({ id, outcome }) => {
    const was = known.get(id);
    return was !== outcome && (was !== undefined || outcome !== 'meets');
  });
  return inReadingOrder(changed).map((finding) => ({ finding, was: known.get(finding.id) }));
}
