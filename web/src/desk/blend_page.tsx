/** Materials on offer brought together for a class: what they can do, what it costs, and why where they cannot. */
import { EngineText } from '../engine_text';
import { useState } from 'preact/hooks';
import { addressOf, go } from '../places';
import { PicturesPanel } from '../pictures_panel';
import { ProblemLines } from '../problem_list';
import { pointerTo } from '../record/revision';
import { change } from '../record/site_record';
import { pictureWidth } from '../site_assessment';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { useAsked } from './asked';
import { type Blend, type BlendAnswer, comparedProposals, proposalsOf } from './blend_answer';
import { useChoices } from './choices';
import { ComparedTable } from './compared_table';
import { oneOfPart } from './field_words';
import { idFromName, withPoint } from './item_changes';
import { itemsOf, nameOfItem } from './list_page';
import { StudyFrame } from './study_frame';
import { CheckedItems, StudyLine, StudySelect } from './study_inputs';

const words = strings.desk.studies.blend;

const amounts = ['mass', 'margin', 'buckets', 'scalp'] as const;
type Amounts = Partial<Record<(typeof amounts)[number], string>>;

/** Keeps a blend among the materials of the document. */
async function keep(material: Record<string, unknown>, rockClass: string): Promise<void> {
  const name = words.keptName(rockClass, String(material.name));
  const taken = Object.keys((siteState.peek() as { materials?: object }).materials ?? {});
  const id = idFromName(words.keptId(rockClass), taken, 'blend');
  await change(
    [{ set: pointerTo('materials', id), to: { ...material, name } }],
    strings.desk.form.added(name),
  );
  go({ at: 'desk', show: 'part', part: 'materials', id });
}

function Proposals({ blend }: { blend: Blend }) {
  const [asked, setAsked] = useState('');
  const proposals = proposalsOf(blend, siteState.value.prices?.currency ?? '');
  const chosen = proposals.find(({ id }) => id === asked) ?? proposals[0];
  if (!chosen) return null;
  return (
    <>
      <fieldset class="study-proposals">
        <legend>{words.which}</legend>
        {proposals.map(({ id, name }) => (
          <label key={id}>
            <input
              type="radio"
              name="proposal"
              checked={id === chosen.id}
              onChange={() => setAsked(id)}
            />
            {name}
          </label>
        ))}
      </fieldset>
      <div class="study-picture">
        <PicturesPanel pictures={chosen.picture ? [chosen.picture] : []} />
      </div>
      {chosen.serves && chosen.material && (
        <p>
          <button
            type="button"
            class="button"
            // `recordTrouble` says why it could not be kept; nothing was changed.
            onClick={() => void keep(chosen.material ?? {}, blend.name).catch(() => undefined)}
          >
            {words.keep(chosen.name)}
          </button>
        </p>
      )}
      <ComparedTable compared={comparedProposals(blend, proposals)} caption={words.heading} />
    </>
  );
}

function firstClass(): string {
  const zone = Object.values(siteState.peek().zones ?? {})[0] as { class?: string } | undefined;
  return zone?.class ?? '';
}

export function BlendPage() {
  const items = itemsOf('materials');
  const [rockClass, setRockClass] = useState(firstClass);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [typed, setTyped] = useState<Amounts>({});
  const choicesFor = useChoices();
  const materials = items.map(([id]) => id).filter((id) => !left.has(id));
  const stated = amounts.flatMap((key) => {
    const value = withPoint((typed[key] ?? '').trim());
    return value === '' ? [] : [[key, value] as const];
  });
  const question =
    rockClass === '' || materials.length === 0
      ? undefined
      : {
          ask: 'blend',
          class: rockClass,
          materials,
          pictures: { width: pictureWidth.value },
          ...Object.fromEntries(stated),
        };
  const { answer, looking } = useAsked<BlendAnswer>(question);
  const blend = question && answer?.blend;
  return (
    <StudyFrame heading={words.heading} help={words.help}>
      {items.length === 0 && <p>{strings.desk.teaches.materials}</p>}
      <form class="study-form" onSubmit={(event) => event.preventDefault()}>
        <StudySelect
          label={words.target}
          value={rockClass}
          options={choicesFor('classes')}
          none={words.chooseClass}
          onChange={setRockClass}
        />
        {amounts.map((key) => (
          <StudyLine
            key={key}
            label={words.amounts[key]}
            example={words.examples[key]}
            value={typed[key] ?? ''}
            onChange={(value) => setTyped({ ...typed, [key]: value })}
          />
        ))}
        <CheckedItems
          legend={words.onOffer}
          items={items.map(([id, item]) => ({ id, name: nameOfItem(id, item) }))}
          left={left}
          onChange={setLeft}
        />
      </form>
      <p>
        <a class="button quiet" href={addressOf({ at: 'desk', show: 'new', part: 'materials' })}>
          {strings.desk.newItem(oneOfPart('materials'))}
        </a>
      </p>
      <p class="muted" role="status">
        {question === undefined ? words.choose : looking ? strings.desk.form.looking : ''}
      </p>
      {question && <ProblemLines problems={answer?.problems ?? []} />}
      {blend && (
        <>
          <div class="study-verdict" data-outcome={blend.feasible ? 'meets' : 'falls short'}>
            <p>
              <b>
                <EngineText text={blend.sentence} />
              </b>
            </p>
            {blend.why.map((why) => (
              <p key={why}>
                <EngineText text={why} />
              </p>
            ))}
            {blend.cut_short.length > 0 && <p>{words.cutShort(blend.cut_short)}</p>}
          </div>
          <Proposals blend={blend} />
          <p class="help">{words.caution}</p>
        </>
      )}
    </StudyFrame>
  );
}
