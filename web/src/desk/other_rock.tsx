/** Other rock for a zone, beside the rock that is specified. */
import { useState } from 'preact/hooks';
import type { Asking } from '../engine';
import type { Finding, Problem } from '../findings';
import { ProblemLines } from '../problem_list';
import type { Change } from '../record/revision';
import { strings } from '../strings';
import { useAsked } from './asked';
import { useChoices } from './choices';
import { type Compared, ComparedTable } from './compared_table';
import { withPoint } from './item_changes';
import { nameOfItem } from './list_page';
import { StudyCautions, StudyFindings, StudyFrame, StudyVerdict } from './study_frame';
import { StudyLine, StudySelect } from './study_inputs';
import { TakeOver } from './take_over';

const words = strings.desk.studies.otherRock;

interface SubstitutionAnswer {
  /** With what makes the substitute as safe, where the document can hold it. */
  substitution?: Compared & { finding: Finding; changes?: Change[] };
  problems?: Problem[];
}

/** What may be other than specified, as the engine's request names it. */
const matters = ['source', 'class', 'angularity', 'specific_gravity'] as const;
type Other = Partial<Record<(typeof matters)[number], string>>;

function OtherRockForm({ other, onChange }: { other: Other; onChange: (other: Other) => void }) {
  const choicesFor = useChoices();
  const take = (matter: keyof Other) => (value: string) => onChange({ ...other, [matter]: value });
  return (
    <form class="study-form" onSubmit={(event) => event.preventDefault()}>
      <StudySelect
        none={words.asSpecified}
        label={words.source}
        value={other.source ?? ''}
        options={choicesFor('sources')}
        onChange={take('source')}
      />
      <StudySelect
        none={words.asSpecified}
        label={words.class}
        value={other.class ?? ''}
        options={choicesFor('classes')}
        onChange={take('class')}
      />
      <StudySelect
        none={words.asSpecified}
        label={words.angularity}
        value={other.angularity ?? ''}
        options={words.angularities}
        onChange={take('angularity')}
      />
      <StudyLine
        label={words.specificGravity}
        example={words.asSpecified}
        value={other.specific_gravity ?? ''}
        onChange={take('specific_gravity')}
      />
    </form>
  );
}

/** The question, without what stays as specified; undefined where all does. */
function questionOf(zone: string, other: Other): Asking | undefined {
  const chosen = matters.flatMap((matter) => {
    const value = withPoint((other[matter] ?? '').trim());
    return value === '' ? [] : [[matter, value] as const];
  });
  return chosen.length === 0
    ? undefined
    : { ask: 'substitution', zone, ...Object.fromEntries(chosen) };
}

export function OtherRock({ id, zone }: { id: string; zone: Record<string, unknown> }) {
  const [other, setOther] = useState<Other>({});
  const question = questionOf(id, other);
  const { answer, looking } = useAsked<SubstitutionAnswer>(question);
  const study = question && answer?.substitution;
  const name = nameOfItem(id, zone);
  return (
    <StudyFrame heading={words.heading(name)} help={words.help} back={{ part: 'zones', id, name }}>
      <OtherRockForm other={other} onChange={setOther} />
      <p class="muted" role="status">
        {question === undefined ? words.choose : looking ? strings.desk.form.looking : ''}
      </p>
      {question && <ProblemLines problems={answer?.problems ?? []} />}
      {study && (
        <>
          <StudyVerdict finding={study.finding} />
          <ComparedTable compared={study} caption={words.heading(name)} marksDifferences ofEngine />
          {study.changes ? (
            <TakeOver changes={study.changes} note={words.note(name)} zone={id} />
          ) : (
            (other.angularity || other.specific_gravity) && <p class="help">{words.needsSource}</p>
          )}
          <StudyCautions findings={[study.finding]} />
          <StudyFindings heading={words.steps} of={name} findings={[study.finding]} />
        </>
      )}
    </StudyFrame>
  );
}
