/** What is taken down of a lot with a short form: a quick look, a load. */
import { freshId, pointerTo, utcNow } from '../record/revision';
import { strings } from '../strings';
import { photosFrom } from './photo_input';
import { observer } from './observer';
import { type Answers, answered, choicesOf, photosField, TaskForm } from './task_form';

const words = strings.tasks;

export function QuickLookForm({ lot }: { lot: string }) {
  return (
    <TaskForm
      back={{ at: 'lot', lot }}
      heading={words.quickLook.heading}
      caution={words.quickLook.caution}
      fields={() => [
        { name: 'largest', label: words.quickLook.largest, kind: 'size', needed: true },
        { name: 'smallest', label: words.quickLook.smallest, kind: 'size', needed: true },
        { name: 'most_common', label: words.quickLook.mostCommon, kind: 'size' },
        {
          name: 'shape',
          label: words.quickLook.shape,
          kind: 'choice',
          choices: choicesOf(words.quickLook.shapes),
        },
        {
          name: 'fines',
          label: words.quickLook.fines,
          kind: 'choice',
          choices: choicesOf(words.quickLook.amounts),
        },
        { name: 'where', label: words.where, kind: 'text' },
        { name: 'note', label: words.note, kind: 'text', long: true },
        photosField,
      ]}
      changesFrom={(answers: Answers) => ({
        note: words.quickLook.name,
        changes: [
          {
            set: pointerTo('looks', freshId('quick-look')),
            to: {
              name: words.quickLook.name,
              kind: 'quick look',
              lot,
              when: utcNow(),
              ...observer(),
              ...answered(answers, [
                'largest',
                'smallest',
                'most_common',
                'shape',
                'fines',
                'where',
                'note',
              ]),
              ...photosFrom(answers),
            },
          },
        ],
      })}
    />
  );
}

export function LoadForm({ lot }: { lot: string }) {
  return (
    <TaskForm
      back={{ at: 'lot', lot }}
      heading={words.load.heading}
      caution={words.load.caution}
      fields={() => [
        { name: 'ticket', label: words.load.ticket, kind: 'text' },
        { name: 'mass', label: words.load.mass, kind: 'mass' },
        { name: 'median_size', label: words.load.medianSize, kind: 'size' },
        { name: 'note', label: words.note, kind: 'text', long: true },
      ]}
      changesFrom={(answers: Answers) => ({
        note: words.load.name,
        changes: [
          {
            set: pointerTo('loads', freshId('load')),
            to: {
              lot,
              when: utcNow(),
              ...observer(),
              ...answered(answers, ['ticket', 'mass', 'median_size', 'note']),
            },
          },
        ],
      })}
    />
  );
}
