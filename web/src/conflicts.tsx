/** Changes that cross, made by people who did not know of each other: told, and settled by a tap. */
import { useState } from 'preact/hooks';
import type { Change } from './record/revision';
import { change } from './record/site_record';
import { standingAt } from './record/undoing';
import { placeName, shortText } from './place_name';
import { type Conflict, type ConflictSide, siteConflicts, siteState } from './site_state';
import { strings } from './strings';

const words = strings.conflicts;

/** What a side wrote, shortly. */
function valueText(side: ConflictSide): string {
  return 'set' in side ? (shortText(side.to) ?? words.anew) : words.removed;
}

/** The change that puts the other side in the place of what stands; none where nothing is left to change. */
export function otherSide({ passed_over: other }: Conflict, state: unknown): Change | undefined {
  if (!('set' in other)) return { remove: other.remove };
  const outer = other.set.slice(0, other.set.lastIndexOf('/'));
  const inCollection = other.set.split('/').length <= 3;
  return inCollection || standingAt(state, outer) !== undefined
    ? { set: other.set, to: other.to }
    : undefined;
}

function Side({ heading, side }: { heading: string; side: ConflictSide }) {
  return (
    <p>
      <b>{heading}</b> {valueText(side)}
      <span class="line">{words.by(side.author, side.time)}</span>
    </p>
  );
}

function OneConflict({ conflict }: { conflict: Conflict }) {
  const [working, setWorking] = useState(false);
  const other = otherSide(conflict, siteState.value);
  const settle = (changes: Change[]) => {
    setWorking(true);
    change(changes, words.note, { settles: [conflict.pointer] })
      // `recordTrouble` says why it could not be kept; nothing was changed.
      .catch(() => undefined)
      .then(() => setWorking(false));
  };
  return (
    <li>
      <h3>{placeName(conflict.pointer, siteState.value)}</h3>
      <Side heading={words.stands} side={conflict.stands} />
      <Side heading={words.passedOver} side={conflict.passed_over} />
      <div class="choices">
        <button type="button" class="button" disabled={working} onClick={() => settle([])}>
          {words.right}
        </button>
        {other && (
          <button
            type="button"
            class="button quiet"
            disabled={working}
            onClick={() => settle([other])}
          >
            {words.takeOther}
          </button>
        )}
      </div>
    </li>
  );
}

export function Conflicts() {
  const conflicts = siteConflicts.value;
  if (conflicts.length === 0) return null;
  return (
    <section class="conflicts" aria-labelledby="conflicts-heading">
      <h2 id="conflicts-heading">{words.heading(conflicts.length)}</h2>
      <p>{words.intro}</p>
      <ul>
        {conflicts.map((conflict) => (
          <OneConflict
            key={`${conflict.pointer} ${conflict.stands.revision} ${conflict.passed_over.revision}`}
            conflict={conflict}
          />
        ))}
      </ul>
    </section>
  );
}
