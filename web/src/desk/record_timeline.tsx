/** The record of the site, or of one item: revisions in order, who, when, and what they touched. */
import { useMemo, useState } from 'preact/hooks';
import { addressOf } from '../places';
import { placeName } from '../place_name';
import { type Change, pointerTo, stepsOf } from '../record/revision';
import { openedSite } from '../record/site_record';
import { revisionsOf } from '../record/site_text';
import { type PlayedRevision, siteRevisions, siteState } from '../site_state';
import { strings } from '../strings';
import { collections } from './document_schema';
import { ValueInWords } from './value_in_words';

const words = strings.desk.timelinePage;

/** So many are shown at first, and so many more each time. */
const portion = 50;

function concerns(touched: string, of: string): boolean {
  return touched === of || touched.startsWith(`${of}/`) || of.startsWith(`${touched}/`);
}

/** The item that a pointer leads into, for its own history. */
function itemPointer(pointer: string): string {
  const [part = '', id] = stepsOf(pointer);
  return collections.has(part) && id !== undefined ? pointerTo(part, id) : pointerTo(part);
}

/** What a change wrote at a pointer, or inside what it wrote. */
function Written({ change }: { change: Change }) {
  const pointer = 'set' in change ? change.set : change.remove;
  return (
    <li>
      <a href={addressOf({ at: 'desk', show: 'timeline', of: itemPointer(pointer) })}>
        {placeName(pointer, siteState.value)}
      </a>{' '}
      {'set' in change ? <ValueInWords value={change.to} /> : <i>{words.removed}</i>}
    </li>
  );
}

/** So many items are named before the revision is opened. */
const namedItems = 6;

/** The items that a revision touched, by name. */
function touchedItems(changes: readonly Change[]): string {
  const items = new Set(
    changes.map((one) =>
      placeName(itemPointer('set' in one ? one.set : one.remove), siteState.value),
    ),
  );
  const named = [...items].slice(0, namedItems).join(', ');
  return items.size > namedItems ? `${named} …` : named;
}

function Entry({
  revision,
  changes,
  open,
}: {
  revision: PlayedRevision;
  changes: readonly Change[];
  open: boolean;
}) {
  const [unfolded, setUnfolded] = useState(open);
  return (
    <li class="revision">
      <p class="line">{words.by(revision.author, revision.time)}</p>
      <details open={open} onToggle={(event) => setUnfolded(event.currentTarget.open)}>
        <summary>
          <b>{revision.note || words.upon(revision.id)}</b>{' '}
          <span class="muted">{words.touched(changes.length)}</span>
          <span class="line">{touchedItems(changes)}</span>
        </summary>
        {unfolded && (
          <ul class="touched">
            {changes.map((change, index) => (
              <Written key={index} change={change} />
            ))}
          </ul>
        )}
      </details>
    </li>
  );
}

export function RecordTimeline({ of }: { of?: string }) {
  const [many, setMany] = useState(portion);
  const site = openedSite.value;
  const changesById = useMemo(
    () => new Map((site ? revisionsOf(site) : []).map(({ id, changes }) => [id, changes])),
    [site],
  );
  const about = (pointer: string) => of === undefined || concerns(pointer, of);
  const revisions = siteRevisions.value.filter(({ touches }) => touches.some(about)).reverse();
  const name = of === undefined ? '' : placeName(of, siteState.value);
  return (
    <section class="desk-main timeline" aria-labelledby="timeline-heading">
      {of !== undefined && (
        <p class="desk-ways">
          <a href={addressOf({ at: 'desk', show: 'timeline' })}>{words.whole}</a>
        </p>
      )}
      <h1 id="timeline-heading">{of === undefined ? words.heading : words.of(name)}</h1>
      <p class="help">{words.intro}</p>
      {revisions.length === 0 && <p>{words.nothing}</p>}
      <ol class="revisions">
        {revisions.slice(0, many).map((revision) => (
          <Entry
            key={revision.id}
            revision={revision}
            changes={(changesById.get(revision.id) ?? []).filter((change) =>
              about('set' in change ? change.set : change.remove),
            )}
            open={of !== undefined}
          />
        ))}
      </ol>
      {revisions.length > many && (
        <button type="button" class="button quiet" onClick={() => setMany(many + portion)}>
          {words.earlier(Math.min(portion, revisions.length - many))}
        </button>
      )}
    </section>
  );
}
