/** Inputs for several values: short answers, forms one after another, values by a key. */
import { useState } from 'preact/hooks';
import { pointerTo, stepsOf } from '../record/revision';
import { strings } from '../strings';
import { inputsOf } from './choices';
import { beginningOf, isSimple, resolved, type SchemaNode } from './document_schema';
import { fieldName, plainWord } from './field_words';
import { type Choice, elementAt, useForm } from './form_context';
import { type InputProps, LineControl, ProblemsHere } from './line_input';
import { ValueInput } from './value_input';

const words = strings.desk.form;

type Item = Record<string, unknown>;

/** The fields of what should be an object. */
export function itemOf(value: unknown): Item {
  return value !== null && typeof value === 'object' && !Array.isArray(value)
    ? (value as Item)
    : {};
}

/** The item with one field changed; a field that is nothing any more is not there. */
export function withField(item: Item, key: string, value: unknown): Item {
  const { [key]: _, ...rest } = item;
  return value === undefined ? rest : { ...item, [key]: value };
}

/** Several short answers side by side. */
function TextsInput({
  node,
  name,
  pointer,
  list,
  onChange,
}: Omit<InputProps, 'value'> & { list: readonly unknown[] }) {
  const { problemsAt } = useForm();
  return (
    <div class="texts-input" id={elementAt(pointer)} tabIndex={-1}>
      {list.map((one, index) => (
        <span key={index}>
          <LineControl
            node={node}
            pointer={`${pointer}/${index}`}
            value={one}
            label={words.rowOf(name, index + 1)}
            onChange={(next) => onChange(list.map((old, place) => (place === index ? next : old)))}
          />
          <button
            type="button"
            class="button quiet small"
            aria-label={words.removeRow(index + 1)}
            onClick={() => onChange(list.filter((_, place) => place !== index))}
          >
            ×
          </button>
          <span id={`${elementAt(`${pointer}/${index}`)}-words`}>
            <ProblemsHere problems={problemsAt(`${pointer}/${index}`)} />
          </span>
        </span>
      ))}
      <button type="button" class="button quiet" onClick={() => onChange([...list, ''])}>
        {words.addRow}
      </button>
    </div>
  );
}

/** Several, each with its own form. */
export function ListInput({ node, name, pointer, value, onChange }: InputProps) {
  const list = Array.isArray(value) ? (value as unknown[]) : [];
  const item = resolved(node.items ?? {});
  const { choicesFor } = useForm();
  const choices = item.refers_to
    ? choicesFor(item.refers_to)
    : (item.enum ?? []).map((word) => ({ value: word, label: plainWord(word) }));
  if (isSimple(item) && (item.refers_to !== undefined || item.enum)) {
    return (
      <div class="choices-input" id={elementAt(pointer)} tabIndex={-1}>
        {choices.length === 0 && <span class="help">{strings.desk.none}</span>}
        {choices.map(({ value: one, label }) => (
          <label key={one}>
            <input
              type="checkbox"
              checked={list.includes(one)}
              onChange={({ currentTarget }) =>
                onChange(
                  currentTarget.checked ? [...list, one] : list.filter((other) => other !== one),
                )
              }
            />
            {label}
          </label>
        ))}
      </div>
    );
  }
  if (isSimple(item)) return <TextsInput node={item} {...{ name, pointer, list, onChange }} />;
  const replace = (index: number, next: unknown) =>
    onChange(list.map((one, place) => (place === index ? next : one)));
  const moved = (index: number) =>
    list.map((one, place) =>
      place === index - 1 ? list[index] : place === index ? list[index - 1] : one,
    );
  return (
    <div class="list-input" id={elementAt(pointer)} tabIndex={-1}>
      {list.map((one, index) => {
        const itemName = `${name} ${index + 1}`;
        return (
          <div class="list-item" key={index}>
            <ValueInput
              node={item}
              name={itemName}
              pointer={`${pointer}/${index}`}
              value={one}
              onChange={(next) => replace(index, next)}
              onRemove={() => onChange(list.filter((_, place) => place !== index))}
            />
            {index > 0 && (
              <button
                type="button"
                class="button quiet small"
                onClick={() => onChange(moved(index))}
              >
                {words.up(itemName)}
              </button>
            )}
          </div>
        );
      })}
      <button
        type="button"
        class="button quiet"
        onClick={() => onChange([...list, beginningOf(item)])}
      >
        {words.add(name)}
      </button>
    </div>
  );
}

/**
 * What the keys of a map may be. Inputs of "the method" are those of the method that is itself a
 * key above, the nearest one.
 */
function keyChoices(
  refersTo: string | undefined,
  pointer: string,
  choicesFor: (collection: string) => readonly Choice[],
): readonly Choice[] {
  if (refersTo === undefined) return [];
  if (refersTo !== inputsOf('the method')) return choicesFor(refersTo);
  const above = stepsOf(pointer).map((step) => choicesFor(inputsOf(step)));
  return above.findLast((choices) => choices.length > 0) ?? [];
}

/** Values by a key: by flow case, by method, by the input of a method. */
export function MapInput({ node, name, pointer, value, onChange }: InputProps) {
  const item = itemOf(value);
  const [key, setKey] = useState('');
  const inner =
    typeof node.additionalProperties === 'object' ? resolved(node.additionalProperties) : {};
  const keys: SchemaNode = node.propertyNames ? resolved(node.propertyNames) : {};
  const { choicesFor } = useForm();
  const choices = keyChoices(keys.refers_to, pointer, choicesFor);
  const nameOf = (one: string) =>
    choices.find(({ value: id }) => id === one)?.label ?? fieldName(one);
  const add = () => {
    if (key.trim() === '' || key in item) return;
    onChange({ ...item, [key.trim()]: beginningOf(inner) });
    setKey('');
  };
  return (
    <div class="map-input" id={elementAt(pointer)} tabIndex={-1}>
      {Object.entries(item).map(([one, field]) => (
        <ValueInput
          key={one}
          node={inner}
          name={nameOf(one)}
          pointer={`${pointer}${pointerTo(one)}`}
          value={field}
          onChange={(next) => onChange({ ...item, [one]: next })}
          onRemove={() => onChange(withField(item, one, undefined))}
        />
      ))}
      <p class="map-key">
        <label>
          <span>{words.key(name)}</span>
          {choices.length > 0 ? (
            <select value={key} onChange={({ currentTarget }) => setKey(currentTarget.value)}>
              <option value="" />
              {choices
                .filter(({ value: one }) => !(one in item))
                .map((choice) => (
                  <option key={choice.value} value={choice.value}>
                    {choice.label}
                  </option>
                ))}
            </select>
          ) : (
            <input
              type="text"
              value={key}
              onInput={({ currentTarget }) => setKey(currentTarget.value)}
            />
          )}
        </label>
        <button type="button" class="button quiet" disabled={key.trim() === ''} onClick={add}>
          {words.add(name)}
        </button>
      </p>
    </div>
  );
}
