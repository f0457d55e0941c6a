/** What the engine says of the photos so far, before they are kept. */
import { EngineText } from '../engine_text';
import type { AssessAnswer } from '../findings';
import { OutcomeMark } from '../outcome_mark';
import { ProblemLines } from '../problem_list';
import type { Draft } from '../record/record_database';
import { photoWords as words, strings } from '../strings';
import type { PhotoDraft } from './photo_draft';

export function LiveWords({ draft, answer }: { draft: Draft; answer: AssessAnswer | undefined }) {
  const { lot, look } = draft.about as PhotoDraft;
  const findings = answer?.findings?.findings ?? [];
  const together = findings.find(({ id }) => id === `gradation.${lot}`);
  const alone = findings.find(({ id }) => id === `gradation.${lot}.${look}`);
  const said = alone ?? together;
  const cautions = said?.cautions ?? [];
  return (
    <>
      <div class="live-words" role="status">
        {said ? (
          <>
            <OutcomeMark outcome={said.outcome} size={32} />
            <p>
              <b>{strings.outcomes[said.outcome]}</b>{' '}
              <span class="sentence">
                <EngineText text={said.sentence} />
              </span>{' '}
              <span class="sentence">
                <EngineText text={said.next || (together?.next ?? '')} />
              </span>
            </p>
          </>
        ) : answer?.problems?.length ? (
          <ProblemLines problems={answer.problems} />
        ) : (
          <p>{words.waiting}</p>
        )}
      </div>
      {cautions.length > 0 && (
        <details class="photo-guide">
          <summary>{words.mind}</summary>
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>
                <EngineText text={caution} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
