/** What falls short, what is not yet known, and who must decide: each opens to its finding. */
import { EngineText } from '../engine_text';
import { useState } from 'preact/hooks';
import { findingAddress } from '../deep_link';
import { groupFindings } from '../finding_groups';
import type { Finding, Outcome } from '../findings';
import { Headline } from '../headline';
import { usePortion } from '../more_button';
import { OutcomeMark } from '../outcome_mark';
import { addressOf } from '../places';
import { placeName } from '../place_name';
import { view } from '../site_assessment';
import { siteConflicts, siteState } from '../site_state';
import { strings } from '../strings';
import { plainWord } from './field_words';

const words = strings.desk.boardPage;

/** So many of one group stand open. */
const openInGroup = 3;
/** And so many more each time. */
const morePortion = 100;

/** So many groups of a column are shown at a time. */
const groupPortion = 20;

/** One line about a finding that opens to all of it. */
function FindingLine({ finding }: { finding: Finding }) {
  return (
    <li>
      <a class="finding-line" href={findingAddress(finding.id)}>
        <b>
          <EngineText text={finding.title} of="title" />
        </b>
        <span class="line">
          <EngineText text={finding.sentence} />
        </span>
        {finding.next && (
          <span class="line to-do">
            <EngineText text={finding.next} />
          </span>
        )}
      </a>
    </li>
  );
}

function Group({ heading, findings }: { heading: string; findings: Finding[] }) {
  const [many, setMany] = useState(openInGroup);
  const shown = findings.slice(0, many);
  const zone = findings[0]?.about.zone;
  const name = zone === undefined ? undefined : siteState.value.zones?.[zone]?.name;
  return (
    <section class="board-group">
      <h3>{heading}</h3>
      <ul>
        {shown.map((finding) => (
          <FindingLine key={finding.id} finding={finding} />
        ))}
      </ul>
      {shown.length < findings.length && (
        <button type="button" class="button quiet" onClick={() => setMany(many + morePortion)}>
          {words.more(Math.min(morePortion, findings.length - many))}
        </button>
      )}
      {zone !== undefined && name !== undefined && (
        <a
          class="board-edit"
          href={addressOf({ at: 'desk', show: 'part', part: 'zones', id: zone })}
        >
          {words.edit(name)}
        </a>
      )}
    </section>
  );
}

/** Findings on one matter come together, wherever the engine tells them. */
function together(findings: readonly Finding[]) {
  const groups = new Map<string, Finding[]>();
  for (const { heading, findings: some } of groupFindings(findings)) {
    const there = groups.get(heading);
    if (there) there.push(...some);
    else groups.set(heading, some);
  }
  return [...groups];
}

function Column({ outcome, findings }: { outcome: Outcome; findings: readonly Finding[] }) {
  const own = findings.filter((finding) => finding.outcome === outcome);
  const { shown, more } = usePortion(together(own), groupPortion);
  return (
    <section class="board-column" data-outcome={outcome}>
      <h2>
        <OutcomeMark outcome={outcome} size={32} /> {words.columns[outcome]}{' '}
        <span class="number">{own.length}</span>
      </h2>
      {own.length === 0 && <p class="muted">{words.emptyColumn}</p>}
      {shown.map(([heading, some]) => (
        <Group key={heading} heading={heading} findings={some} />
      ))}
      {more}
    </section>
  );
}

/** Problems not closed and entries that cross: somebody is waited for. */
function People() {
  const open = Object.entries(siteState.value.nonconformances ?? {}).filter(
    ([, { closed }]) => closed === undefined,
  );
  const crossing = siteConflicts.value;
  return (
    <section class="board-people" aria-labelledby="people-heading">
      <h2 id="people-heading">{words.people}</h2>
      {open.length + crossing.length === 0 && <p class="muted">{words.nobody}</p>}
      <ul>
        {open.map(([id, { name, disposition }]) => (
          <li key={id}>
            <a class="finding-line" href={addressOf({ at: 'problem', problem: id })}>
              <b>{name}</b>
              <span class="line">
                {disposition ? words.toClose(plainWord(disposition.kind ?? '')) : words.toDecide}
              </span>
            </a>
          </li>
        ))}
        {crossing.map(({ pointer, stands, passed_over }) => (
          <li key={`${pointer} ${stands.revision} ${passed_over.revision}`}>
            <a class="finding-line" href={addressOf({ at: 'desk', show: 'timeline', of: pointer })}>
              <b>{placeName(pointer, siteState.value)}</b>
              <span class="line">{words.crossing}</span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function FindingsBoard() {
  const shown = view.value;
  if (shown.state !== 'findings') return <p role="status">{strings.headline.opening}</p>;
  const findings = shown.findings.findings;
  const outcomes: Outcome[] = ['falls short', 'not yet known', 'ask the designer'];
  const allMeet = findings.length > 0 && findings.every(({ outcome }) => outcome === 'meets');
  return (
    <div class="board">
      <Headline findings={shown.findings} site={shown.site} />
      <p class="help">{allMeet ? words.allMeet : words.intro}</p>
      <People />
      <div class="board-columns">
        {outcomes.map((outcome) => (
          <Column key={outcome} outcome={outcome} findings={findings} />
        ))}
      </div>
    </div>
  );
}
