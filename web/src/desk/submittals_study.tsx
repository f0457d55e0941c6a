/** What is required of the rock of a source beside what its submittals show. */
import type { Finding, Problem } from '../findings';
import { ProblemLines } from '../problem_list';
import { addressOf } from '../places';
import { strings } from '../strings';
import { useAsked } from './asked';
import { type Compared, ComparedTable } from './compared_table';
import { nameOfItem } from './list_page';
import { StudyCautions, StudyFrame, StudyVerdict } from './study_frame';

const words = strings.desk.studies.submittals;

interface SubmittalsAnswer {
  submittals?: Compared & { findings: Finding[] };
  problems?: Problem[];
}

export function SubmittalsStudy({ id, source }: { id: string; source: Record<string, unknown> }) {
  const { answer } = useAsked<SubmittalsAnswer>({ ask: 'submittals', source: id });
  const compared = answer?.submittals;
  const name = nameOfItem(id, source);
  return (
    <StudyFrame
      heading={words.heading(name)}
      help={words.help}
      back={{ part: 'sources', id, name }}
    >
      {!answer && <p role="status">{strings.desk.form.looking}</p>}
      <ProblemLines problems={answer?.problems ?? []} />
      {answer?.problems && (
        <p>
          <a class="button" href={addressOf({ at: 'desk', show: 'new', part: 'submittals' })}>
            {strings.desk.newItem(strings.desk.parts.submittals?.[1] ?? '')}
          </a>
        </p>
      )}
      {compared && (
        <>
          {compared.findings.map((finding) => (
            <section key={finding.id}>
              <h2>{finding.title}</h2>
              <StudyVerdict finding={finding} />
            </section>
          ))}
          <ComparedTable compared={compared} caption={words.heading(name)} stands ofEngine />
          <StudyCautions findings={compared.findings} />
        </>
      )}
    </StudyFrame>
  );
}
