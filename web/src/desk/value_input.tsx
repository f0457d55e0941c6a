/** The input for any value of the document, made from its schema: lines, tables, forms within forms. */
import { useState } from 'preact/hooks';
import { strings } from '../strings';
import {
  beginningOf,
  isOfVariant,
  isSimple,
  resolved,
  type SchemaNode,
  shapeOf,
} from './document_schema';
import { fieldName, helpFor, plainWord } from './field_words';
import { FileInput } from './file_input';
import { elementAt, useForm } from './form_context';
import { type InputProps, LabelledLine, LineInput, ProblemsHere } from './line_input';
import { pointerTo } from '../record/revision';
import { itemOf, ListInput, MapInput, withField } from './several_inputs';
import { columnsOf, TableInput } from './table_input';

const words = strings.desk.form;

/** Fields of an object: those of one line, those that are there, and what can be added. */
export function ObjectFields({
  node,
  pointer,
  value,
  only,
  onChange,
}: Omit<InputProps, 'name'> & { only?: readonly string[] }) {
  const item = itemOf(value);
  const required = node.required ?? [];
  const fields = Object.entries(node.properties ?? {})
    .filter(([key]) => only === undefined || only.includes(key))
    .map(([key, field]): [string, SchemaNode] => [key, resolved(field)])
    .filter(([, field]) => shapeOf(field) !== 'fixed');
  if (only) fields.sort(([one], [other]) => only.indexOf(one) - only.indexOf(other));
  const shown = fields.filter(
    ([key, field]) => isSimple(field) || required.includes(key) || item[key] !== undefined,
  );
  const absent = fields.filter(([key]) => !shown.some(([other]) => other === key));
  const set = (key: string, field: unknown) => onChange(withField(item, key, field));
  return (
    <div class="object-fields">
      {shown.map(([key, field]) => (
        <ValueInput
          key={key}
          node={field}
          name={fieldName(key, field)}
          pointer={`${pointer}${pointerTo(key)}`}
          value={item[key] ?? (required.includes(key) ? beginningOf(field) : undefined)}
          needed={required.includes(key)}
          {...(required.includes(key) || isSimple(field)
            ? {}
            : { onRemove: () => set(key, undefined) })}
          onChange={(next) => set(key, next)}
        />
      ))}
      {absent.length > 0 && (
        <p class="additions">
          {absent.map(([key, field]) => (
            <button
              key={key}
              type="button"
              class="button quiet"
              onClick={() => set(key, beginningOf(field))}
            >
              {words.add(fieldName(key, field))}
            </button>
          ))}
        </p>
      )}
    </div>
  );
}

function variantName(variant: SchemaNode, index: number): string {
  if (variant.title !== undefined) return plainWord(variant.title);
  if ('const' in variant) return plainWord(String(variant.const));
  const fixed = Object.values(variant.properties ?? {}).find((field) => 'const' in resolved(field));
  return fixed ? plainWord(String(resolved(fixed).const)) : String(index + 1);
}

/** One of several forms that a value can have. */
function VariantsInput(props: InputProps) {
  const { node, name, pointer, value, onChange } = props;
  const variants = (node.oneOf ?? []).map(resolved);
  const stands = Math.max(
    variants.findIndex((variant) => isOfVariant(variant, value)),
    0,
  );
  const variant = variants[stands] ?? {};
  // What was filled in under one form comes back with it.
  const [left, setLeft] = useState<Record<number, unknown>>({});
  const choose = (index: number) => {
    setLeft({ ...left, [stands]: value });
    onChange(left[index] ?? beginningOf(variants[index] ?? {}));
  };
  return (
    <>
      <LabelledLine name={words.which(name)} help="" needed={false} pointer={`${pointer}#which`}>
        <select
          id={elementAt(`${pointer}#which`)}
          value={String(stands)}
          onChange={({ currentTarget }) => choose(Number(currentTarget.value))}
        >
          {variants.map((one, index) => (
            <option key={index} value={String(index)}>
              {variantName(one, index)}
            </option>
          ))}
        </select>
      </LabelledLine>
      {shapeOf(variant) !== 'fixed' && <InnerInput {...props} node={variant} />}
    </>
  );
}

/** Whether a value names a file beside the document. */
function isFile(node: SchemaNode): boolean {
  return node.properties !== undefined && Object.keys(node.properties).join() === 'file';
}

/** The input without name and frame. */
function InnerInput(props: InputProps) {
  const { node } = props;
  switch (shapeOf(node)) {
    case 'object':
      return isFile(node) ? <FileInput {...props} /> : <ObjectFields {...props} />;
    case 'variants':
      return <VariantsInput {...props} />;
    case 'list':
      return columnsOf(node) ? <TableInput {...props} /> : <ListInput {...props} />;
    case 'map':
      return <MapInput {...props} />;
    default:
      return <LineInput {...props} />;
  }
}

export function ValueInput(props: InputProps & { onRemove?: () => void }) {
  const { node, name, pointer, onRemove } = props;
  const problems = useForm().problemsAt(pointer);
  const remove = onRemove && (
    <button type="button" class="button quiet small" onClick={onRemove}>
      {words.remove(name)}
    </button>
  );
  if (isSimple(node)) {
    return (
      <>
        <LineInput {...props} />
        {remove}
      </>
    );
  }
  const help = helpFor(node);
  return (
    <fieldset class="inner" data-pointer={pointer}>
      <legend>{name}</legend>
      {help && <p class="help">{help}</p>}
      <InnerInput {...props} />
      <ProblemsHere problems={problems} />
      {remove}
    </fieldset>
  );
}
