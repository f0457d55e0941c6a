/** A problem: opened about rock or about work, decided upon, closed; each by somebody at a time. */
import { freshId, pointerTo, utcNow } from '../record/revision';
import { siteState } from '../site_state';
import { addressOf, type Place } from '../places';
import { strings } from '../strings';
import { PhotoStrip } from '../photo_strip';
import { PositionLine } from './position_line';
import { photosFrom } from './photo_input';
import { observer } from './observer';
import { type Answers, answered, choicesOf, type Field, photosField, TaskForm } from './task_form';

const words = strings.problemPage;

const whereAndNote: Field[] = [
  { name: 'where', label: strings.tasks.where, kind: 'text' },
  { name: 'note', label: strings.tasks.note, kind: 'text', long: true },
  photosField,
];

/** Now, by whoever holds the device, with what they add. */
function signed(answers: Answers) {
  return {
    when: utcNow(),
    ...observer(),
    ...answered(answers, ['where', 'note']),
    ...photosFrom(answers),
  };
}

/** A problem with a lot, a zone, or one check of a zone. */
export function ProblemForm({
  about,
  back,
}: {
  about: { lot: string } | { zone: string; check?: string };
  back: Place;
}) {
  return (
    <TaskForm
      back={back}
      heading={words.heading}
      signed={true}
      fields={() => [
        { name: 'name', label: words.what, kind: 'text', needed: true },
        ...whereAndNote,
      ]}
      changesFrom={(answers) => ({
        note: words.heading,
        changes: [
          {
            set: pointerTo('nonconformances', freshId('problem')),
            to: { ...answered(answers, ['name']), ...about, opened: signed(answers) },
          },
        ],
      })}
    />
  );
}

/** The place that a problem is about. */
function placeOf(about: { lot?: string; zone?: string }): Place {
  if (about.lot !== undefined) return { at: 'lot', lot: about.lot };
  return about.zone === undefined ? { at: 'field' } : { at: 'zone', zone: about.zone };
}

/** What happens next to a problem: the decision, then its closing. */
export function ProblemPage({ problem }: { problem: string }) {
  const found = siteState.value.nonconformances?.[problem];
  if (!found) {
    return (
      <section class="field">
        <p>{words.noSuchProblem}</p>
        <a class="button quiet action" href={addressOf({ at: 'field' })}>
          {strings.field.back}
        </a>
      </section>
    );
  }
  const back = placeOf(found);
  const seen = [found.opened, found.disposition, found.closed];
  const at = (field: string) => pointerTo('nonconformances', problem, field);
  const photos = (
    <>
      {(['opened', 'disposition', 'closed'] as const).map((step) => (
        <PositionLine
          key={step}
          position={found[step]?.position}
          pointer={`${at(step)}/position`}
        />
      ))}
      <PhotoStrip hashes={seen.flatMap((one) => one?.photos ?? [])} />
    </>
  );
  if (!found.disposition) {
    return (
      <TaskForm
        key="decide"
        back={back}
        heading={words.decide(found.name)}
        caution={words.whoDecides}
        about={photos}
        signed={true}
        fields={(answers) => [
          { name: 'kind', label: words.decision, kind: 'choice', choices: choicesOf(words.kinds) },
          ...(answers.kind === 'use as is'
            ? [
                {
                  name: 'approved_by',
                  label: words.approvedBy,
                  kind: 'text',
                  needed: true,
                } as const,
              ]
            : []),
          ...whereAndNote,
        ]}
        changesFrom={(answers) => ({
          note: words.decided(found.name),
          changes: [
            {
              set: at('disposition'),
              to: { ...answered(answers, ['kind', 'approved_by']), ...signed(answers) },
            },
          ],
        })}
      />
    );
  }
  if (!found.closed) {
    return (
      <TaskForm
        key="close"
        back={back}
        heading={words.close(found.name)}
        caution={words.beforeClosing(words.kinds[found.disposition.kind ?? ''] ?? '')}
        about={photos}
        signed={true}
        fields={() => whereAndNote}
        changesFrom={(answers) => ({
          note: words.closed(found.name),
          changes: [{ set: at('closed'), to: signed(answers) }],
        })}
      />
    );
  }
  return (
    <section class="field">
      <p>
        <a href={addressOf(back)}>{strings.field.back}</a>
      </p>
      <h1>{found.name}</h1>
      <p>{words.isClosed}</p>
      {photos}
    </section>
  );
}

/** The problems that are not closed, each leading to what happens next. */
export function OpenProblems({
  about,
}: {
  about: (problem: { lot?: string; zone?: string }) => boolean;
}) {
  const open = Object.entries(siteState.value.nonconformances ?? {}).filter(
    ([, one]) => about(one) && !one.closed,
  );
  if (open.length === 0) return null;
  return (
    <>
      <h2>{words.open}</h2>
      <ul class="lot-list">
        {open.map(([id, one]) => (
          <li key={id}>
            <a class="lot-link" href={addressOf({ at: 'problem', problem: id })}>
              <span>
                <b>{one.name}</b>
                <span class="line">{one.disposition ? words.toClose : words.toDecide}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </>
  );
}
