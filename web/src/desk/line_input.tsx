/** What one line takes: a text, a quantity, a word of a list, an item that is named. */
import { ProblemWords } from '../engine_problem';
import type { ComponentChildren } from 'preact';
import type { Problem } from '../findings';
import { strings } from '../strings';
import { type SchemaNode, shapeOf } from './document_schema';
import { examplesOf, helpFor, plainWord } from './field_words';
import { type Choice, elementAt, useForm } from './form_context';
import { withPoint } from './item_changes';

const words = strings.desk.form;

export interface InputProps<Value = unknown> {
  node: SchemaNode;
  name: string;
  pointer: string;
  value: Value;
  needed?: boolean;
  onChange: (value: unknown) => void;
}

/** What is wrong. */
export function ProblemsHere({ id, problems }: { id?: string; problems: readonly Problem[] }) {
  if (problems.length === 0) return null;
  return (
    <span class="wrong" role="alert" {...(id === undefined ? {} : { id })}>
      {problems.map((problem) => (
        <span key={`${problem.where} ${problem.what}`}>
          {problem.file && <b>{`${problem.file}, ${problem.where}: `}</b>}
          <ProblemWords problem={problem} />
        </span>
      ))}
    </span>
  );
}

/** What goes into the document: a whole number where one belongs and was typed. */
function typed(node: SchemaNode, text: string): unknown {
  if (shapeOf(node) === 'number') return /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
  return withPoint(text);
}

function optionsOf(node: SchemaNode, known: readonly Choice[], value: string): Choice[] {
  const options = node.enum
    ? node.enum.map((word) => ({ value: word, label: plainWord(word) }))
    : [...known];
  const stands = value === '' || options.some((option) => option.value === value);
  return stands ? options : [...options, { value, label: value }];
}

/** Whether only what is listed can be named there. */
function isClosed({ refers_to, pattern }: SchemaNode): boolean {
  return refers_to !== undefined && (pattern !== undefined || refers_to === 'classes');
}

/** The control alone; `label` is read aloud where no label stands beside it. */
export function LineControl({
  node,
  pointer,
  value,
  needed = false,
  label,
  onChange,
}: Omit<InputProps, 'name'> & { label?: string }) {
  const form = useForm();
  const problems = form.problemsAt(pointer);
  const text = typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  const known = node.refers_to === undefined ? [] : form.choicesFor(node.refers_to);
  const common = {
    id: elementAt(pointer),
    value: text,
    'aria-invalid': problems.length > 0,
    'aria-describedby': `${elementAt(pointer)}-words`,
    ...(label === undefined ? {} : { 'aria-label': label }),
    onBlur: () => {
      if (text !== '') form.touch(pointer);
    },
  };
  if (node.enum || isClosed(node)) {
    return (
      <select
        {...common}
        onChange={({ currentTarget }) => {
          form.touch(pointer);
          onChange(currentTarget.value);
        }}
      >
        <option value="">{needed ? '' : words.notStated}</option>
        {optionsOf(node, known, text).map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    );
  }
  const list = known.length > 0 ? `${elementAt(pointer)}-list` : undefined;
  return (
    <>
      <input
        {...common}
        type="text"
        autocomplete="off"
        maxLength={2000}
        placeholder={examplesOf(node)}
        {...(list === undefined ? {} : { list })}
        onInput={({ currentTarget }) => onChange(typed(node, currentTarget.value))}
      />
      {list !== undefined && (
        <datalist id={list}>
          {known.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </datalist>
      )}
    </>
  );
}

/** A label, what belongs below it, and what is wrong. */
export function LabelledLine({
  name,
  help,
  needed,
  pointer,
  children,
}: {
  name: string;
  help: string;
  needed: boolean;
  pointer: string;
  children: ComponentChildren;
}) {
  const problems = useForm().problemsAt(pointer);
  return (
    <div class="line-field">
      <label for={elementAt(pointer)}>
        {name} {needed && <span class="needed">{words.needed}</span>}
      </label>
      {children}
      <span class="below" id={`${elementAt(pointer)}-words`}>
        {help && <span class="help">{help}</span>}
        <ProblemsHere problems={problems} />
      </span>
    </div>
  );
}

export function LineInput({ node, name, pointer, value, needed = false, onChange }: InputProps) {
  return (
    <LabelledLine
      name={name}
      help={isClosed(node) ? '' : helpFor(node)}
      needed={needed}
      pointer={pointer}
    >
      <LineControl
        node={node}
        pointer={pointer}
        value={value}
        needed={needed}
        onChange={onChange}
      />
    </LabelledLine>
  );
}
