/** The items of a part of the document, and what the engine says of each in counts. */
import { countOutcomes } from '../finding_groups';
import type { Finding } from '../findings';
import { usePortion } from '../more_button';
import { OutcomeMark } from '../outcome_mark';
import { addressOf } from '../places';
import { view } from '../site_assessment';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { oneOfPart, partName } from './field_words';
import { findingsAbout } from './findings_about';

const words = strings.desk;

function Counts({ findings }: { findings: readonly Finding[] }) {
  return (
    <span class="counts">
      {countOutcomes(findings).map(({ outcome, number }) => (
        <span key={outcome} class="count">
          <OutcomeMark outcome={outcome} size={20} /> {number} {strings.outcomes[outcome]}
        </span>
      ))}
    </span>
  );
}

export function itemsOf(part: string): [string, Record<string, unknown>][] {
  const items = (siteState.value as Record<string, unknown>)[part];
  return items !== null && typeof items === 'object'
    ? (Object.entries(items) as [string, Record<string, unknown>][])
    : [];
}

/** What an item is called: its name, or when it has none what tells it apart. */
export function nameOfItem(id: string, item: Record<string, unknown>): string {
  const name = item.name ?? item.ticket;
  return typeof name === 'string' ? name : id;
}

/** One line of what was put in, without the name. */
function gist(item: Record<string, unknown>): string {
  return Object.entries(item)
    .flatMap(([key, value]) =>
      key !== 'name' && typeof value === 'string' ? [words.words[value] ?? value] : [],
    )
    .slice(0, 4)
    .join(' · ');
}

/** So many are shown at first, and so many more each time. */
const portion = 60;

export function ListPage({ part }: { part: string }) {
  const shown = view.value;
  const findings = shown.state === 'findings' ? shown.findings.findings : [];
  const items = itemsOf(part);
  const { shown: listed, more } = usePortion(items, portion);
  const state = siteState.value;
  return (
    <section class="desk-main" aria-labelledby="list-heading">
      <h1 id="list-heading">{partName(part)}</h1>
      {(items.length === 0 || words.teaches[part]) && (
        <p class="help">{words.teaches[part] ?? words.none}</p>
      )}
      <ul class="item-list">
        {listed.map(([id, item]) => (
          <li key={id}>
            <a class="item-link" href={addressOf({ at: 'desk', show: 'part', part, id })}>
              <b>{nameOfItem(id, item)}</b>
              <span class="line">{gist(item)}</span>
              <Counts findings={findingsAbout({ part, id }, findings, state)} />
            </a>
          </li>
        ))}
      </ul>
      {more}
      <p>
        <a class="button" href={addressOf({ at: 'desk', show: 'new', part })}>
          {words.newItem(oneOfPart(part))}
        </a>
      </p>
    </section>
  );
}
