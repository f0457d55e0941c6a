/** The field: which rock, and then one big action. */
import { openedSite } from '../record/site_record';
import { addressOf } from '../places';
import { view } from '../site_assessment';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { OutcomeMark } from '../outcome_mark';
import type { Finding } from '../findings';

const words = strings.field;

/** What the engine says of a lot against its class, if it has been looked at. */
export function verdictOf(findings: readonly Finding[], lot: string): Finding | undefined {
  return findings.find(({ id }) => id === `gradation.${lot}`);
}

function LotLink({ id, name, verdict }: { id: string; name: string; verdict?: Finding }) {
  return (
    <li>
      <a class="lot-link" href={addressOf({ at: 'lot', lot: id })}>
        <OutcomeMark outcome={verdict?.outcome ?? 'not yet known'} size={32} />
        <span>
          <b>{name}</b>
          <span class="line">{verdict?.outcome ?? words.noLook}</span>
        </span>
      </a>
    </li>
  );
}

export function FieldHome() {
  const lots = Object.entries(siteState.value.lots ?? {});
  const shown = view.value;
  const findings = shown.state === 'findings' ? shown.findings.findings : [];
  const kept = openedSite.value?.kept !== undefined;
  return (
    <section class="field" aria-labelledby="field-heading">
      <h1 id="field-heading">{siteState.value.name ?? words.heading}</h1>
      <p class="origin">{kept ? words.kept : words.notKept}</p>
      <h2>{words.whichRock}</h2>
      {lots.length === 0 && <p>{words.noLots}</p>}
      <ul class="lot-list">
        {lots.map(([id, { name }]) => {
          const verdict = verdictOf(findings, id);
          return <LotLink key={id} id={id} name={name} {...(verdict ? { verdict } : {})} />;
        })}
      </ul>
      <p class="new-rock">
        <a class="button quiet action" href={addressOf({ at: 'new-rock' })}>
          {strings.newRock.heading}
        </a>
      </p>
    </section>
  );
}
