/** A sample sorted by size and weighed group by group: masses, and how many stones each group holds. */
import { ProblemLines } from '../problem_list';
import { freshId, pointerTo, utcNow } from '../record/revision';
import { units } from '../settings';
import { strings } from '../strings';
import { type CountSheet, useCountSheet } from './count_sheet';
import { quantityText } from './quantity_input';
import { observer } from './observer';
import { type Answers, answered, TaskForm, wholeOf } from './task_form';

const words = strings.weigh;

/** The groups that hold something; a group half filled in stays half filled, for the engine to name. */
export function groupsFrom(sheet: CountSheet, answers: Answers, unit: string) {
  return sheet.bins.flatMap(({ larger_than, not_larger_than }, index) => {
    const mass = quantityText(answers[`mass.${index}`] ?? '', unit);
    const stones = answers[`stones.${index}`]?.trim() ?? '';
    if (mass === '' && stones === '') return [];
    return [
      {
        ...(larger_than === undefined ? {} : { larger_than }),
        not_larger_than,
        ...(mass === '' ? {} : { mass }),
        ...(stones === '' ? {} : { stones: wholeOf(stones) }),
      },
    ];
  });
}

export function WeighForm({ lot }: { lot: string }) {
  const { told: sheet, problems } = useCountSheet(lot);
  const unit = units.value === 'us' ? 'lb' : 'kg';
  if (problems.length > 0) return <ProblemLines problems={problems} />;
  if (!sheet) return <p role="status">{strings.count.preparing}</p>;
  return (
    <TaskForm
      back={{ at: 'lot', lot }}
      heading={words.heading}
      caution={words.caution}
      about={<p>{words.how(sheet.name, sheet.class)}</p>}
      fields={() => [
        ...sheet.bins.map(({ text }, index) => ({
          name: String(index),
          label: strings.count.bin(text),
          kind: 'group' as const,
          unit,
        })),
        { name: 'where', label: strings.tasks.where, kind: 'text' },
        { name: 'note', label: strings.tasks.note, kind: 'text', long: true },
      ]}
      changesFrom={(answers) => ({
        note: words.heading,
        changes: [
          {
            set: pointerTo('looks', freshId('weighed')),
            to: {
              name: words.heading,
              kind: 'weighed sample',
              lot,
              when: utcNow(),
              ...observer(),
              ...answered(answers, ['where', 'note']),
              groups: { groups: groupsFrom(sheet, answers, unit) },
            },
          },
        ],
      })}
    />
  );
}
