/** An item of the document, or a part there is one of: its form, and beside it what follows. */
import { useState } from 'preact/hooks';
import { engine } from '../engine';
import type { Problem } from '../findings';
import { addressOf, go, type Place, studiesOf } from '../places';
import { ProblemLines } from '../problem_list';
import { type Change, pointerTo } from '../record/revision';
import { change, openedSite } from '../record/site_record';
import { standingAt } from '../record/undoing';
import { siteState, stateIsCurrent } from '../site_state';
import { strings } from '../strings';
import { groupsOf } from './arrangement';
import { Beside } from './beside';
import { type FormPart, provisionalId, useDeskForm } from './desk_form';
import {
  beginningOf,
  collections,
  resolved,
  type SchemaNode,
  shapeOf,
  singleParts,
} from './document_schema';
import { fieldName, helpFor, oneOfPart, partName } from './field_words';
import { FormFrame } from './form_frame';
import { trialRequest } from './trial';
import { ObjectFields, ValueInput } from './value_input';

const words = strings.desk;

/** The fields of an item in their groups. */
export function GroupedFields({
  part,
  node,
  pointer,
  value,
  only,
  onChange,
}: {
  part: string;
  node: SchemaNode;
  pointer: string;
  value: unknown;
  only?: readonly string[];
  onChange: (value: unknown) => void;
}) {
  const whole = resolved(node);
  if (shapeOf(whole) !== 'object') {
    const name = oneOfPart(part);
    return (
      <ValueInput node={whole} name={name} pointer={pointer} value={value} onChange={onChange} />
    );
  }
  const fields = (names: readonly string[]) => (
    <ObjectFields node={whole} pointer={pointer} value={value} only={names} onChange={onChange} />
  );
  if (only) return fields(only);
  const stands = (names: readonly string[]) =>
    names.some((name) => standingAt(value, `/${name}`) !== undefined);
  return (
    <>
      {groupsOf(part, whole).map(({ heading, fields: names, folded }) =>
        heading === '' ? (
          fields(names)
        ) : folded ? (
          <details class="field-group" key={heading} open={stands(names)}>
            <summary>
              <h2>{heading}</h2>
            </summary>
            {fields(names)}
          </details>
        ) : (
          <section class="field-group" key={heading}>
            <h2>{heading}</h2>
            {fields(names)}
          </section>
        ),
      )}
    </>
  );
}

/** Takes an item out of the site, if nothing else hangs on it; the engine says what does. */
function TakeOut({ pointer, name, part }: { pointer: string; name: string; part: string }) {
  const [asks, setAsks] = useState(false);
  const [problems, setProblems] = useState<Problem[]>([]);
  const takeOut = async () => {
    const site = openedSite.peek();
    if (!site) return;
    const changes: Change[] = [{ remove: pointer }];
    const judged = await engine.ask<{ problems?: Problem[] }>(
      trialRequest('validate', { site, changes, files: [] }),
    );
    setProblems(judged.problems ?? []);
    if (judged.problems?.length) return;
    await change(changes, words.form.removed(name));
    go({ at: 'desk', show: 'part', part });
  };
  if (!asks) {
    return (
      <button type="button" class="button quiet take-out" onClick={() => setAsks(true)}>
        {words.form.remove_}
      </button>
    );
  }
  return (
    <div class="take-out-asks">
      <p>{words.form.removeWhat(name)}</p>
      {problems.length > 0 && <h2>{words.form.elsewhere}</h2>}
      <ProblemLines problems={problems} />
      <div class="form-bar">
        <button
          type="button"
          class="button"
          // `recordTrouble` says why it could not be kept; nothing was changed.
          onClick={() => void takeOut().catch(() => undefined)}
        >
          {words.form.removeYes}
        </button>
        <button type="button" class="button quiet" onClick={() => setAsks(false)}>
          {words.form.removeNo}
        </button>
      </div>
    </div>
  );
}

/** Where an item is looked at and taken down in the field. */
function fieldPlace(part: string, id: string): Place | undefined {
  switch (part) {
    case 'lots':
      return { at: 'lot', lot: id };
    case 'zones':
      return { at: 'zone', zone: id };
    case 'nonconformances':
      return { at: 'problem', problem: id };
    default:
      return undefined;
  }
}

interface FormPageProps {
  part: string;
  node: SchemaNode;
  pointer: string;
  kept: unknown;
  /** Undefined for what is new. */
  id?: string | undefined;
}

function FormPage({ part, node, pointer, kept, id }: FormPageProps) {
  const whole = resolved(node);
  const form = useDeskForm(pointer, [{ pointer, kept, beginning: beginningOf(whole) }]);
  const value = form.values[pointer];
  const typed = standingAt(value, '/name');
  const several = collections.has(part);
  const isNew = several && id === undefined;
  const ownName = typeof typed === 'string' && typed !== '' ? typed : undefined;
  const name = ownName ?? id ?? oneOfPart(part);
  const help = helpFor(whole);
  const keep = async () => {
    const ids = await form.keep(isNew ? words.form.added(name) : words.form.changed(name));
    const fresh = ids?.[provisionalId(part)];
    if (fresh !== undefined) go({ at: 'desk', show: 'part', part, id: fresh });
  };
  const inField = id === undefined ? undefined : fieldPlace(part, id);
  const history = addressOf({ at: 'desk', show: 'timeline', of: pointer });
  return (
    <div class="desk-item">
      <section class="desk-main" aria-labelledby="item-heading">
        <p class="desk-ways">
          {several && (
            <a href={addressOf({ at: 'desk', show: 'part', part })}>
              {words.backTo(partName(part))}
            </a>
          )}
          {!isNew && <a href={history}>{words.history}</a>}
          {inField && <a href={addressOf(inField)}>{words.inField}</a>}
          {id !== undefined &&
            studiesOf(part).map((study) => (
              <a key={study} href={addressOf({ at: 'desk', show: 'study', part, id, study })}>
                {words.studies.names[study]}
              </a>
            ))}
          {inField?.at === 'lot' && (
            <a href={addressOf({ ...inField, task: 'photo' })}>{words.onPhotos}</a>
          )}
        </p>
        <h1 id="item-heading">
          {isNew ? words.newItem(ownName ?? oneOfPart(part)) : several ? name : partName(part)}
        </h1>
        {help && <p class="help">{help}</p>}
        <FormFrame
          form={form}
          onKeep={() => void keep()}
          more={several && !isNew && <TakeOut pointer={pointer} name={name} part={part} />}
        >
          <GroupedFields
            part={part}
            node={node}
            pointer={pointer}
            value={value}
            onChange={(next) => form.set(pointer, next)}
          />
        </FormFrame>
      </section>
      <Beside
        trial={form.trial}
        {...(several ? { item: { part, id: id ?? provisionalId(part) } } : {})}
      />
    </div>
  );
}

/** The name and the notes of the site, which stand at its top. */
const siteNode: SchemaNode = {
  properties: Object.fromEntries(['name', 'note'].map((key) => [key, singleParts.get(key) ?? {}])),
  required: ['name'],
};

export function SitePage() {
  const state = siteState.value as Record<string, unknown>;
  const pointer = '';
  const parts: FormPart[] = [{ pointer, kept: { name: state.name, note: state.note } }];
  const form = useDeskForm('site', parts);
  return (
    <div class="desk-item">
      <section class="desk-main" aria-labelledby="item-heading">
        <h1 id="item-heading">{words.siteItself}</h1>
        <FormFrame form={form} onKeep={() => void form.keep(words.form.changed(fieldName('name')))}>
          <ObjectFields
            node={siteNode}
            pointer={pointer}
            value={form.values[pointer]}
            onChange={(next) => form.set(pointer, next)}
          />
        </FormFrame>
      </section>
      <Beside trial={form.trial} />
    </div>
  );
}

export function ItemPage({ part, id }: { part: string; id: string }) {
  const node = collections.get(part);
  const kept = standingAt(siteState.value, pointerTo(part, id));
  if (!node) return <p>{words.noSuchPart}</p>;
  if (kept === undefined) {
    return <p role="status">{stateIsCurrent.value ? words.noSuchItem : words.form.looking}</p>;
  }
  const pointer = pointerTo(part, id);
  return <FormPage key={pointer} part={part} node={node} pointer={pointer} kept={kept} id={id} />;
}

export function NewItemPage({ part }: { part: string }) {
  const node = collections.get(part);
  if (!node) return <p>{words.noSuchPart}</p>;
  const pointer = pointerTo(part, provisionalId(part));
  return <FormPage key={pointer} part={part} node={node} pointer={pointer} kept={undefined} />;
}

/** A part that there is one of: what it holds so far, or nothing. */
export function SinglePage({ part }: { part: string }) {
  const node = singleParts.get(part);
  if (!node) return <p>{words.noSuchPart}</p>;
  const pointer = pointerTo(part);
  const kept = standingAt(siteState.value, pointer);
  return <FormPage key={pointer} part={part} node={node} pointer={pointer} kept={kept} />;
}
