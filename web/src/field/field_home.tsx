/** The field: which rock or which work, and then one big action. */
import { findingWithId } from '../finding_index';
import { positionsIn } from '../record/position';
import { openedSite } from '../record/site_record';
import { addressOf, type Place } from '../places';
import { view } from '../site_assessment';
import { RoomNotice } from '../room_notice';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { OutcomeMark } from '../outcome_mark';
import { AllPositions } from './position_line';
import type { Finding, Outcome } from '../findings';

const words = strings.field;

/** What the engine says of a lot against its class, if it has been looked at. */
export function verdictOf(findings: readonly Finding[], lot: string): Finding | undefined {
  return findingWithId(findings, `gradation.${lot}`);
}

function PlaceLink({
  to,
  name,
  outcome,
  line,
}: {
  to: Place;
  name: string;
  outcome: Outcome | undefined;
  line: string;
}) {
  return (
    <li>
      <a class="lot-link" href={addressOf(to)}>
        <OutcomeMark outcome={outcome ?? 'not yet known'} size={32} />
        <span>
          <b>{name}</b>
          <span class="line">{line}</span>
        </span>
      </a>
    </li>
  );
}

export function FieldHome() {
  const lots = Object.entries(siteState.value.lots ?? {});
  const zones = Object.entries(siteState.value.zones ?? {});
  const shown = view.value;
  const findings = shown.state === 'findings' ? shown.findings.findings : [];
  const kept = openedSite.value?.kept !== undefined;
  return (
    <section class="field" aria-labelledby="field-heading">
      <h1 id="field-heading">{siteState.value.name ?? words.heading}</h1>
      <p class="origin">{kept ? words.kept : words.notKept}</p>
      <RoomNotice />
      <h2>{words.whichRock}</h2>
      {lots.length === 0 && <p>{words.noLots}</p>}
      <ul class="lot-list">
        {lots.map(([id, { name }]) => {
          const verdict = verdictOf(findings, id);
          return (
            <PlaceLink
              key={id}
              to={{ at: 'lot', lot: id }}
              name={name}
              outcome={verdict?.outcome}
              line={verdict ? strings.outcomes[verdict.outcome] : words.noLook}
            />
          );
        })}
      </ul>
      <p class="new-rock">
        <a class="button quiet action" href={addressOf({ at: 'new-rock' })}>
          {strings.newRock.heading}
        </a>
      </p>
      <h2>{words.whichZone}</h2>
      {zones.length === 0 && (
        <p>
          {words.noZones}{' '}
          <a href={addressOf({ at: 'desk', show: 'part', part: 'zones' })}>{words.toZones}</a>
        </p>
      )}
      <ul class="lot-list">
        {zones.map(([id, { name }]) => (
          <PlaceLink
            key={id}
            to={{ at: 'zone', zone: id }}
            name={name}
            outcome={findingWithId(findings, `placing-checks.${id}`)?.outcome}
            line={words.zoneWalk}
          />
        ))}
      </ul>
      <p>
        <a href={addressOf({ at: 'help', page: 'words' })}>{strings.help.words}</a>
      </p>
      <AllPositions pointers={positionsIn(siteState.value)} />
    </section>
  );
}
