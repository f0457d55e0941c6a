/** What the engine proposes for the document, shown before it is kept as one revision. */
import { useState } from 'preact/hooks';
import { engine } from '../engine';
import type { Problem } from '../findings';
import { go } from '../places';
import { placeName } from '../place_name';
import { ProblemLines } from '../problem_list';
import type { Change } from '../record/revision';
import { change, openedSite } from '../record/site_record';
import { standingAt } from '../record/undoing';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { useChoices } from './choices';
import { trialRequest } from './trial';
import { ValueInWords } from './value_in_words';

const words = strings.desk.studies.takeOver;

/** The parts of the document whose items a zone names, and the classes of the engine. */
const named = ['sources', 'classes', 'materials'] as const;

/** A value of the document; what it names is called by its name. */
function Value({ value }: { value: unknown }) {
  const choicesFor = useChoices();
  const name = named
    .flatMap((part) => choicesFor(part))
    .find((choice) => choice.value === value)?.label;
  if (value === undefined) return <i>{words.nothing}</i>;
  return name === undefined ? <ValueInWords value={value} /> : <span>{name}</span>;
}

function Proposed({ change: one }: { change: Change }) {
  const state = siteState.value;
  const pointer = 'set' in one ? one.set : one.remove;
  const stands = standingAt(state, pointer);
  return (
    <tr>
      <th scope="row">{placeName(pointer, state)}</th>
      <td data-name={words.stands}>
        <Value value={stands} />
      </td>
      <td data-name={words.proposed}>
        <Value value={'set' in one ? one.to : undefined} />
      </td>
    </tr>
  );
}

/** `note` says in the record what was taken over; `zone` is where the user is then. */
export function TakeOver({
  changes,
  note,
  zone,
}: {
  changes: readonly Change[];
  note: string;
  zone: string;
}) {
  const [problems, setProblems] = useState<Problem[]>([]);
  const [keeping, setKeeping] = useState(false);
  if (changes.length === 0) return null;
  const keep = async () => {
    const site = openedSite.peek();
    if (!site) return;
    const judged = await engine.ask<{ problems?: Problem[] }>(
      trialRequest('validate', { site, changes: [...changes], files: [] }),
    );
    setProblems(judged.problems ?? []);
    if (judged.problems?.length) return;
    await change([...changes], note);
    go({ at: 'desk', show: 'part', part: 'zones', id: zone });
  };
  return (
    <section class="take-over">
      <h2>{words.heading}</h2>
      <p class="help">{words.help}</p>
      <table class="compared-table">
        <thead>
          <tr>
            <td />
            <th scope="col">{words.stands}</th>
            <th scope="col">{words.proposed}</th>
          </tr>
        </thead>
        <tbody>
          {changes.map((one) => (
            <Proposed key={'set' in one ? one.set : one.remove} change={one} />
          ))}
        </tbody>
      </table>
      <ProblemLines problems={problems} />
      <p>
        <button
          type="button"
          class="button"
          disabled={keeping}
          onClick={() => {
            setKeeping(true);
            // `recordTrouble` says why it could not be kept; nothing was changed.
            void keep()
              .catch(() => undefined)
              .finally(() => setKeeping(false));
          }}
        >
          {words.keep}
        </button>
      </p>
    </section>
  );
}
