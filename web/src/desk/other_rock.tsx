/** Other rock for a zone, beside the rock that is specified. */
import { useState } from 'preact/hooks';
import type { Finding, Problem } from '../findings';
import { FindingCard } from '../finding_card';
import { ProblemLines } from '../problem_list';
import { strings } from '../strings';
import { useAsked } from './asked';
import { useChoices } from './choices';
import { type Compared, ComparedTable } from './compared_table';
import { nameOfItem } from './list_page';
import { StudyCautions, StudyFrame, StudyVerdict } from './study_frame';
import { withPoint } from './item_changes';

const words = strings.desk.studies.otherRock;

interface SubstitutionAnswer {
  substitution?: Compared & { finding: Finding };
  problems?: Problem[];
}

/** What may be other than specified, as the engine's request names it. */
const matters = ['source', 'class', 'angularity', 'specific_gravity'] as const;
type Other = Partial<Record<(typeof matters)[number], string>>;

interface Option {
  value: string;
  label: string;
}

function Choice({
  label,
  value,
  options,
  onChange,
}: {
  label: string;
  value: string;
  options: readonly Option[];
  onChange: (value: string) => void;
}) {
  return (
    <label class="study-choice">
      <span>{label}</span>
      <select value={value} onChange={({ currentTarget }) => onChange(currentTarget.value)}>
        <option value="">{words.asSpecified}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </label>
  );
}

function OtherRockForm({ other, onChange }: { other: Other; onChange: (other: Other) => void }) {
  const choicesFor = useChoices();
  const take = (matter: keyof Other) => (value: string) => onChange({ ...other, [matter]: value });
  return (
    <form class="study-form" onSubmit={(event) => event.preventDefault()}>
      <Choice
        label={words.source}
        value={other.source ?? ''}
        options={choicesFor('sources')}
        onChange={take('source')}
      />
      <Choice
        label={words.class}
        value={other.class ?? ''}
        options={choicesFor('classes')}
        onChange={take('class')}
      />
      <Choice
        label={words.angularity}
        value={other.angularity ?? ''}
        options={words.angularities}
        onChange={take('angularity')}
      />
      <label class="study-choice">
        <span>{words.specificGravity}</span>
        <input
          type="text"
          inputMode="decimal"
          maxLength={12}
          placeholder={words.asSpecified}
          value={other.specific_gravity ?? ''}
          onInput={({ currentTarget }) => take('specific_gravity')(currentTarget.value)}
        />
      </label>
    </form>
  );
}

/** The question, without what stays as specified; undefined where all does. */
function questionOf(zone: string, other: Other): object | undefined {
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
          <ComparedTable compared={study} caption={words.heading(name)} marksDifferences />
          <StudyCautions findings={[study.finding]} />
          <h2>{words.steps}</h2>
          <div class="findings">
            <FindingCard finding={study.finding} linked={false} printing={false} stands={false} />
          </div>
        </>
      )}
    </StudyFrame>
  );
}
