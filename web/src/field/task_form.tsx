/**
 * A short form whose answers become one item of the record. The engine judges it before it is
 * kept: nothing that it would refuse gets in, and what was typed stays until it is kept.
 */
import { ProblemWords } from '../engine_problem';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { engine, failureFrom } from '../engine';
import type { Problem } from '../findings';
import { addressOf, go, type Place } from '../places';
import { RecordFailure } from '../record/record_access';
import { change, openedSite } from '../record/site_record';
import { documentWith } from '../record/site_text';
import type { Change } from '../record/revision';
import { fieldName } from '../desk/field_words';
import { strings } from '../strings';
import { AuthorField } from './author_field';
import { PhotoInput } from './photo_input';
import { PointsInput } from './points_input';
import { QuantityInput } from './quantity_input';

export interface Choice {
  value: string;
  label: string;
}

/** One thing that is asked. A quantity is a number and one of the units that are usual for it. */
export type Field =
  | { name: string; label: string; kind: 'text'; needed?: boolean; long?: boolean }
  | { name: string; label: string; kind: 'size' | 'mass'; needed?: boolean }
  | { name: string; label: string; kind: 'whole' }
  | { name: string; label: string; kind: 'choice'; choices: Choice[] }
  /** Stones of one size together: their mass and their number. */
  | { name: string; label: string; kind: 'group'; unit: string }
  | { name: string; label: string; kind: 'points'; unit: string; fewest: number }
  | { name: string; kind: 'photos' };

/** Photos as evidence of what was seen. */
export const photosField: Field = { name: 'photos', kind: 'photos' };

/** Choices in the order in which their words stand. */
export function choicesOf(labels: Record<string, string>): Choice[] {
  return Object.entries(labels).map(([value, label]) => ({ value, label }));
}

export type Answers = Record<string, string>;

function FieldInput({
  field,
  answer,
  onAnswer,
}: {
  field: Exclude<Field, { kind: 'group' | 'photos' }>;
  answer: string;
  onAnswer: (text: string) => void;
}) {
  switch (field.kind) {
    case 'text':
      return field.long ? (
        <textarea
          name={field.name}
          rows={3}
          maxLength={2000}
          required={field.needed ?? false}
          value={answer}
          onInput={({ currentTarget }) => onAnswer(currentTarget.value)}
        />
      ) : (
        <input
          type="text"
          name={field.name}
          maxLength={200}
          required={field.needed ?? false}
          value={answer}
          onInput={({ currentTarget }) => onAnswer(currentTarget.value)}
        />
      );
    case 'choice':
      return (
        <select
          name={field.name}
          value={answer}
          onChange={({ currentTarget }) => onAnswer(currentTarget.value)}
        >
          {field.choices.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      );
    case 'whole':
      return (
        <input
          type="text"
          inputMode="numeric"
          name={field.name}
          maxLength={6}
          value={answer}
          onInput={({ currentTarget }) => onAnswer(currentTarget.value)}
        />
      );
    case 'points':
      return (
        <PointsInput
          label={field.label}
          unit={field.unit}
          fewest={field.fewest}
          answer={answer}
          onAnswer={onAnswer}
        />
      );
    default:
      return (
        <QuantityInput
          name={field.name}
          label={field.label}
          kind={field.kind}
          needed={field.needed ?? false}
          onAnswer={onAnswer}
        />
      );
  }
}

function GroupInput({
  field: { name, label, unit },
  answers,
  onAnswer,
}: {
  field: Field & { kind: 'group' };
  answers: Answers;
  onAnswer: (name: string, text: string) => void;
}) {
  const input = (what: 'mass' | 'stones', says: string, mode: 'decimal' | 'numeric') => (
    <label class="field-label">
      <span>{says}</span>
      <input
        type="text"
        inputMode={mode}
        maxLength={12}
        value={answers[`${what}.${name}`] ?? ''}
        onInput={({ currentTarget }) => onAnswer(`${what}.${name}`, currentTarget.value)}
      />
    </label>
  );
  return (
    <fieldset class="weighed-group">
      <legend>{label}</legend>
      {input('mass', strings.weigh.mass(unit), 'decimal')}
      {input('stones', strings.weigh.stones, 'numeric')}
    </fieldset>
  );
}

export interface TaskFormProps {
  /** Where the way back leads, and where the user is once it is kept. */
  back: Place;
  heading: string;
  caution?: string;
  /** What is shown of the matter before anything is asked. */
  about?: ComponentChildren;
  /** Nobody may leave out their name. */
  signed?: boolean;
  /** What is asked, given what was answered so far. */
  fields: (answers: Answers) => Field[];
  /** The revision that the answers make. */
  changesFrom: (answers: Answers) => { changes: Change[]; note: string };
}

/** First answers: a choice begins with its first. */
function begin(fields: readonly Field[]): Answers {
  return Object.fromEntries(
    fields.map((field) => [
      field.name,
      field.kind === 'choice' ? (field.choices[0]?.value ?? '') : '',
    ]),
  );
}

/** What was asked at a pointer of the item, in the words of the form. */
function labelAt(where: string, asked: readonly Field[]): string {
  const key = where.slice(where.lastIndexOf('/') + 1);
  const field = asked.find(({ name }) => name === key);
  return field !== undefined && 'label' in field ? field.label : fieldName(key);
}

const backWords: Partial<Record<Place['at'], string>> = {
  lot: strings.field.backToLot,
  zone: strings.walk.back,
  problem: strings.problemPage.back,
};

export function TaskForm({
  back,
  heading,
  caution,
  about,
  signed = false,
  fields,
  changesFrom,
}: TaskFormProps) {
  const [given, setGiven] = useState<Answers>(() => begin(fields({})));
  const asked = fields(given);
  // What is asked only after an answer begins with its first choice too.
  const answers = { ...begin(asked), ...given };
  const [problems, setProblems] = useState<Problem[]>([]);
  const [trouble, setTrouble] = useState('');
  const [keeping, setKeeping] = useState(false);

  const keep = async () => {
    const site = openedSite.peek();
    if (!site) return;
    setKeeping(true);
    try {
      const { changes, note } = changesFrom(answers);
      const judged = await engine.ask<{ problems?: Problem[] }>({
        ask: 'validate',
        document: documentWith(site, changes),
        files: site.files,
      });
      setProblems(judged.problems ?? []);
      if (judged.problems?.length) return;
      await change(changes, note);
      go(back);
    } catch (error) {
      setTrouble(
        error instanceof RecordFailure
          ? strings.record.troubles[error.trouble]
          : strings.failures.sentences[failureFrom(error).kind],
      );
    } finally {
      setKeeping(false);
    }
  };

  return (
    <section class="field" aria-labelledby="form-heading">
      <p>
        <a href={addressOf(back)}>{backWords[back.at] ?? strings.field.back}</a>
      </p>
      <h1 id="form-heading">{heading}</h1>
      {caution && <p class="caution">{caution}</p>}
      {about}
      <form
        class="task-form"
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        {asked.map((field) => {
          if (field.kind === 'group') {
            return (
              <GroupInput
                key={field.name}
                field={field}
                answers={answers}
                onAnswer={(name, text) => setGiven((now) => ({ ...now, [name]: text }))}
              />
            );
          }
          if (field.kind === 'photos') {
            return (
              <PhotoInput
                key={field.name}
                answer={answers[field.name] ?? ''}
                onAnswer={(text) => setGiven((now) => ({ ...now, [field.name]: text }))}
              />
            );
          }
          const input = (
            <FieldInput
              key={field.name}
              field={field}
              answer={answers[field.name] ?? ''}
              onAnswer={(text) => setGiven((now) => ({ ...now, [field.name]: text }))}
            />
          );
          // Points have a label of their own beside the list of those typed.
          return field.kind === 'points' ? (
            input
          ) : (
            <label class="field-label" key={field.name}>
              <span>{field.label}</span>
              {input}
            </label>
          );
        })}
        <AuthorField needed={signed} />
        {problems.length > 0 && (
          <div class="form-problems" role="alert">
            <p>{strings.form.notKept}</p>
            <ul>
              {problems.map((problem) => (
                <li key={problem.where}>
                  <b>{labelAt(problem.where, asked)}</b> <ProblemWords problem={problem} />
                </li>
              ))}
            </ul>
          </div>
        )}
        {trouble && (
          <p class="trouble" role="alert">
            {trouble}
          </p>
        )}
        <button type="submit" class="button action main" disabled={keeping}>
          {strings.form.keep}
        </button>
      </form>
    </section>
  );
}

/** Answers without those left empty. */
export function answered(answers: Answers, names: readonly string[]): Answers {
  return Object.fromEntries(
    names.flatMap((name) => {
      const text = answers[name]?.trim() ?? '';
      return text === '' ? [] : [[name, text]];
    }),
  );
}

/** A whole number as typed; what is none stays as it is, for the engine to name. */
export function wholeOf(text: string): number | string {
  return /^\d+$/.test(text) ? Number(text) : text;
}
