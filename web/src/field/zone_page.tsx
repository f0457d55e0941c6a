/** The walk along a zone that is being built: its checks in the order of work, and one check of them. */
import { EngineText, engineText, WrittenInEnglish } from '../engine_text';
import { OutcomeMark } from '../outcome_mark';
import { addressOf } from '../places';
import { ProblemLines } from '../problem_list';
import { type Change, freshId, pointerTo, utcNow } from '../record/revision';
import { strings } from '../strings';
import { type Checklist, type PlacingCheck, useChecklist } from './checklist';
import { photosFrom } from './photo_input';
import { pointsIn } from './points_input';
import { OpenProblems } from './problem_forms';
import { observer } from './observer';
import {
  type Answers,
  answered,
  choicesOf,
  type Field,
  photosField,
  TaskForm,
  wholeOf,
} from './task_form';

const words = strings.walk;

function CheckLink({ zone, check, number }: { zone: string; check: PlacingCheck; number: number }) {
  return (
    <li>
      <a class="lot-link" href={addressOf({ at: 'zone', zone, check: check.id })}>
        <OutcomeMark outcome={check.outcome} size={32} />
        <span>
          <b>
            {number}. <EngineText text={check.title} />
          </b>
          <span class="line">
            {check.hold_point && <span class="hold-point">{words.holdPoint}</span>}{' '}
            <EngineText text={check.state} />
          </span>
        </span>
      </a>
    </li>
  );
}

function Walk({ checklist }: { checklist: Checklist }) {
  const { zone, name, outcome, sentence, next, cautions, checks } = checklist;
  return (
    <>
      <h1 id="walk-heading">{name}</h1>
      <div class="lot-verdict">
        <OutcomeMark outcome={outcome} size={40} />
        <p>
          <b>{strings.outcomes[outcome]}</b>
          <span class="sentence">
            <EngineText text={sentence} />
          </span>
        </p>
      </div>
      <p class="next-step">
        <EngineText text={next} />
      </p>
      <WrittenInEnglish />
      {cautions.map((caution) => (
        <p class="caution" key={caution}>
          <EngineText text={caution} />
        </p>
      ))}
      <h2>{words.checks}</h2>
      <ol class="lot-list">
        {checks.map((check, index) => (
          <CheckLink key={check.id} zone={zone} check={check} number={index + 1} />
        ))}
      </ol>
      <OpenProblems about={(problem) => problem.zone === zone} />
      <p class="new-rock">
        <a class="button quiet action" href={addressOf({ at: 'zone-problem', zone })}>
          {strings.field.problem}
        </a>
      </p>
    </>
  );
}

/** What is asked of one check, by what is taken down of it. */
function fieldsOf(check: PlacingCheck): Field[] {
  const note: Field = { name: 'note', label: strings.tasks.note, kind: 'text', long: true };
  const where: Field = { name: 'where', label: strings.tasks.where, kind: 'text' };
  const points: Field = {
    name: 'points',
    label: engineText(check.title),
    kind: 'points',
    unit: check.unit,
    fewest: check.fewest_points,
  };
  switch (check.takes) {
    case 'thicknesses':
      return [points, where, note, photosField];
    case 'lengths':
      return [
        points,
        { name: 'result', label: words.byEye, kind: 'choice', choices: choicesOf(words.measured) },
        where,
        note,
        photosField,
      ];
    case 'loads':
      return [
        ...check.materials.map(({ id, name }): Field => ({
          name: `loads.${id}`,
          label: words.loadsOf(name),
          kind: 'whole',
        })),
        where,
        note,
        photosField,
      ];
    default:
      return [
        { name: 'result', label: words.result, kind: 'choice', choices: choicesOf(words.results) },
        where,
        note,
        photosField,
      ];
  }
}

/** The item of the record that the answers make: a walk, or a survey of the layer. */
function changeFrom(zone: string, check: PlacingCheck, answers: Answers): Change {
  const points = pointsIn(answers.points ?? '');
  const seen = {
    name: check.title,
    zone,
    when: utcNow(),
    ...observer(),
    ...answered(answers, ['where']),
  };
  if (check.takes === 'thicknesses') {
    return {
      set: pointerTo('layer_surveys', freshId('survey')),
      to: {
        ...seen,
        thicknesses: points,
        ...answered(answers, ['note']),
        ...photosFrom(answers),
      },
    };
  }
  const loads = Object.fromEntries(
    check.materials.flatMap(({ id }) => {
      const text = answers[`loads.${id}`]?.trim() ?? '';
      return text === '' ? [] : [[id, wholeOf(text)]];
    }),
  );
  const entry = {
    ...answered(answers, ['result', 'note']),
    ...photosFrom(answers),
    ...(points.length > 0 ? { measured: points } : {}),
    ...(Object.keys(loads).length > 0 ? { loads } : {}),
  };
  return {
    set: pointerTo('placing_walks', freshId('walk')),
    to: { ...seen, checks: { [check.id]: entry } },
  };
}

function CheckForm({ zone, check }: { zone: string; check: PlacingCheck }) {
  return (
    <>
      <TaskForm
        back={{ at: 'zone', zone }}
        heading={engineText(check.title)}
        signed={true}
        about={
          <>
            <dl class="asked">
              <dt>{words.asked}</dt>
              <dd>
                <EngineText text={check.required} />
              </dd>
              <dt>{words.tolerance}</dt>
              <dd>
                <EngineText text={check.tolerance} />
              </dd>
              <dt>{words.how}</dt>
              <dd>
                <EngineText text={check.how} />
              </dd>
              <dt>{words.state}</dt>
              <dd>
                <EngineText text={check.state} />
              </dd>
            </dl>
            {check.evidence.length > 0 && (
              <ul class="taken">
                {check.evidence.map((line) => (
                  <li key={line}>
                    <EngineText text={line} />
                  </li>
                ))}
              </ul>
            )}
            <p class="next-step">
              <EngineText text={check.next} />
            </p>
            <WrittenInEnglish />
          </>
        }
        fields={() => fieldsOf(check)}
        changesFrom={(answers) => ({
          note: words.note(engineText(check.title)),
          changes: [changeFrom(zone, check, answers)],
        })}
      />
      <section class="field more">
        <a
          class="button quiet action"
          href={addressOf({ at: 'zone-problem', zone, check: check.id })}
        >
          {words.problem}
        </a>
      </section>
    </>
  );
}

export function ZonePage({ zone, check }: { zone: string; check?: string }) {
  const { told: checklist, problems } = useChecklist(zone);
  const one = check && checklist?.checks.find(({ id }) => id === check);
  if (one) return <CheckForm key={one.id} zone={zone} check={one} />;
  return (
    <section class="field" aria-labelledby="walk-heading">
      <p>
        <a href={addressOf({ at: 'field' })}>{strings.field.back}</a>
      </p>
      <ProblemLines problems={problems} />
      {checklist ? (
        <Walk checklist={checklist} />
      ) : (
        problems.length === 0 && <p role="status">{words.preparing}</p>
      )}
    </section>
  );
}
