/** Beside a form: what the engine says of the item, as kept or as it would be. */
import { EngineText, WrittenInEnglish } from '../engine_text';
import type { Finding, Outcome } from '../findings';
import { FindingCard } from '../finding_card';
import { usePortion } from '../more_button';
import { OutcomeMark } from '../outcome_mark';
import { PicturesPanel } from '../pictures_panel';
import { placeName } from '../place_name';
import { view } from '../site_assessment';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { changedOutcomes, findingsAbout, type ItemPlace, picturesAbout } from './findings_about';
import { placedProblems, type Trial } from './trial';

const words = strings.desk.beside;

function Changed({ changed }: { changed: { finding: Finding; was: Outcome | undefined }[] }) {
  if (changed.length === 0) return null;
  return (
    <ul class="changed-outcomes">
      {changed.map(({ finding, was }) => (
        <li key={finding.id}>
          <OutcomeMark outcome={finding.outcome} size={24} />
          <span>
            <b>
              <EngineText text={finding.title} of="title" />
            </b>{' '}
            {strings.outcomes[finding.outcome]}{' '}
            <span class="muted">
              {was === undefined ? words.fresh : words.was(strings.outcomes[was])}
            </span>
          </span>
        </li>
      ))}
    </ul>
  );
}

/** So many are named; the rest shows up once they are put right. */
const mostNamed = 5;

/** What the engine still needs before it can say what would be. */
function InTheWay({ trial }: { trial: Trial | undefined }) {
  const problems = placedProblems(trial?.answer.problems ?? [], trial?.changes ?? []);
  if (problems.length === 0) return null;
  return (
    <div class="in-the-way">
      <p>{words.needs}</p>
      <ul>
        {problems.slice(0, mostNamed).map(({ file, where, what }) => (
          <li key={`${where} ${what}`}>
            <b>{file ? `${file}, ${where}` : placeName(where, siteState.value)}</b> {what}
          </li>
        ))}
      </ul>
      {problems.length > mostNamed && <p>{words.andMore(problems.length - mostNamed)}</p>}
    </div>
  );
}

/** So many are listed at a time. */
const portion = 60;
const step = 10;

export function Beside({ item, trial }: { item?: ItemPlace; trial: Trial | undefined }) {
  const standing = view.value;
  const kept = standing.state === 'findings' ? standing : undefined;
  const would = trial?.answer.findings ? trial.answer : undefined;
  const findings = would?.findings?.findings ?? kept?.findings.findings ?? [];
  const pictures = would?.pictures ?? kept?.pictures ?? [];
  const state = siteState.value;
  const about = item ? findingsAbout(item, findings, state) : [];
  const { shown, more } = usePortion(about, portion, { step });
  const drawn = item ? picturesAbout(item, pictures, state) : [];
  const changed = would
    ? changedOutcomes(kept?.findings.findings ?? [], would.findings?.findings ?? [])
    : [];
  return (
    <aside class="desk-beside" aria-labelledby="beside-heading">
      <h2 id="beside-heading">{words.heading}</h2>
      <p class="muted" role="status" data-trial={would !== undefined}>
        {would ? words.asItWouldBe : words.asKept}
      </p>
      <WrittenInEnglish />
      <InTheWay trial={trial} />
      <Changed changed={changed} />
      <PicturesPanel pictures={drawn} />
      {about.length === 0 && changed.length === 0 && <p>{item ? words.nothing : words.change}</p>}
      {about.length > 0 && <h3>{words.all(about.length)}</h3>}
      <div class="findings">
        {shown.map((finding) => (
          <FindingCard key={finding.id} finding={finding} linked={false} printing={false} />
        ))}
        {more}
      </div>
    </aside>
  );
}
