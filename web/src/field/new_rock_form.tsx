/** Rock that is new on the site: a lot of a class, from a source that is known or new. */
import { useEffect, useState } from 'preact/hooks';
import { engine } from '../engine';
import { type Change, freshId, pointerTo } from '../record/revision';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { type Answers, answered, type Choice, choicesOf, type Field, TaskForm } from './task_form';

const words = strings.newRock;

/** The choice of a source that the site does not have yet. */
const unlisted = '';

interface ClassAnswer {
  classes?: { id: string; family: string; name: string }[];
}

function useClasses(): Choice[] | undefined {
  const [classes, setClasses] = useState<Choice[] | undefined>(undefined);
  useEffect(() => {
    engine
      .ask<ClassAnswer>({ ask: 'classes' })
      .then((answer) =>
        setClasses(
          (answer.classes ?? []).map(({ id, family, name }) => ({
            value: id,
            label: `${name} · ${family}`,
          })),
        ),
      )
      .catch(() => setClasses([]));
  }, []);
  return classes;
}

const sourceFields: Field[] = [
  { name: 'source_name', label: words.sourceName, kind: 'text', needed: true },
  { name: 'specific_gravity', label: words.specificGravity, kind: 'text', needed: true },
  {
    name: 'angularity',
    label: words.angularity,
    kind: 'choice',
    choices: choicesOf(words.angularities),
  },
];

function changesFrom(answers: Answers): { changes: Change[]; note: string } {
  const changes: Change[] = [];
  let source = answers.source ?? unlisted;
  if (source === unlisted) {
    source = freshId('source');
    changes.push({
      set: pointerTo('sources', source),
      to: {
        name: answers.source_name?.trim() ?? '',
        specific_gravity: answers.specific_gravity?.trim().replace(',', '.') ?? '',
        ...answered(answers, ['angularity']),
      },
    });
  }
  const name = answers.name?.trim() ?? '';
  changes.push({
    set: pointerTo('lots', freshId('lot')),
    to: { name, class: answers.class, source, zones: [] },
  });
  return { changes, note: words.note(name) };
}

export function NewRockForm() {
  const classes = useClasses();
  if (!classes) return <p role="status">{words.reading}</p>;
  const sources = Object.entries(siteState.value.sources ?? {});
  return (
    <TaskForm
      back={{ at: 'field' }}
      heading={words.heading}
      fields={(answers) => [
        { name: 'name', label: words.name, kind: 'text', needed: true },
        { name: 'class', label: words.rockClass, kind: 'choice', choices: classes },
        {
          name: 'source',
          label: words.source,
          kind: 'choice',
          choices: [
            ...sources.map(([value, { name }]) => ({ value, label: name })),
            { value: unlisted, label: words.newSource },
          ],
        },
        ...(answers.source === unlisted ? sourceFields : []),
      ]}
      changesFrom={changesFrom}
    />
  );
}
