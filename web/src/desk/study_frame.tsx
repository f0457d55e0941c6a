/** What every page that looks into one item has: the way back, a heading, what it comes to. */
import type { ComponentChildren } from 'preact';
import { EngineText, engineText, WrittenInEnglish } from '../engine_text';
import type { Finding } from '../findings';
import { FindingCard } from '../finding_card';
import { OutcomeMark } from '../outcome_mark';
import { addressOf } from '../places';
import { strings } from '../strings';

const words = strings.desk.studies;

export function StudyFrame({
  heading,
  help,
  back,
  children,
}: {
  heading: string;
  help: string;
  back?: { part: string; id: string; name: string };
  children: ComponentChildren;
}) {
  return (
    <section class="study" aria-labelledby="study-heading">
      {back && (
        <p class="desk-ways">
          <a href={addressOf({ at: 'desk', show: 'part', part: back.part, id: back.id })}>
            {strings.desk.backTo(back.name)}
          </a>
        </p>
      )}
      <h1 id="study-heading">{heading}</h1>
      <p class="help">{help}</p>
      <WrittenInEnglish />
      {children}
    </section>
  );
}

/** What a finding says and what to do about it, before the table that shows why. */
export function StudyVerdict({ finding }: { finding: Finding }) {
  return (
    <div class="study-verdict" data-outcome={finding.outcome}>
      <p class="study-phrase">
        <OutcomeMark outcome={finding.outcome} size={32} />{' '}
        <b>{strings.outcomes[finding.outcome]}</b>{' '}
        {finding.margin && <span>{strings.card.marginOf(engineText(finding.margin.text))}</span>}
      </p>
      <p>
        <EngineText text={finding.sentence} />
      </p>
      {finding.next && (
        <p class="to-do">
          <b>{words.next}</b>{' '}
          <span>
            <EngineText text={finding.next} />
          </span>
        </p>
      )}
    </div>
  );
}

/** Where rock can hurt, or a figure is easily taken for more than it says. */
export function StudyCautions({ findings }: { findings: readonly Finding[] }) {
  const cautions = [...new Set(findings.flatMap((finding) => finding.cautions))];
  if (cautions.length === 0) return null;
  return (
    <section class="study-cautions">
      <h2>{strings.card.cautions}</h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>
            <EngineText text={caution} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Findings to be opened one by one; `of` is what they are about. */
export function StudyFindings({
  heading,
  of,
  findings,
  stands = false,
}: {
  heading: string;
  of: string;
  findings: readonly Finding[];
  stands?: boolean;
}) {
  if (findings.length === 0) return null;
  return (
    <section class="study-findings">
      <h2>{heading}</h2>
      <h3>{of}</h3>
      <div class="findings">
        {findings.map((finding) => (
          <FindingCard
            key={finding.id}
            finding={finding}
            linked={false}
            printing={false}
            stands={stands}
          />
        ))}
      </div>
    </section>
  );
}
