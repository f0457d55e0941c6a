/** A table kept in a file beside the document: picked, dropped anywhere, or edited as text. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { fileTaker } from '../open_site';
import { strings } from '../strings';
import { helpFor } from './field_words';
import { elementAt, useForm } from './form_context';
import { type InputProps, ProblemsHere } from './line_input';

const words = strings.desk.file;

const largestBytes = 8 * 1024 * 1024;
/** Longer tables are not edited here: a text of this length can still be scrolled through. */
const longestText = 200_000;

async function textOf(file: File): Promise<string | undefined> {
  if (file.size > largestBytes) return undefined;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
  } catch {
    return undefined;
  }
}

export function FileInput({ node, name, pointer, value, onChange }: InputProps) {
  const form = useForm();
  const picker = useRef<HTMLInputElement>(null);
  const [trouble, setTrouble] = useState('');
  const kept = (value as { file?: string } | undefined)?.file ?? '';
  const text = form.files.find((file) => file.name === kept)?.text;
  const problems = [...form.problemsIn(kept), ...form.problemsAt(`${pointer}/file`)];

  const take = async (file: File) => {
    const content = await textOf(file);
    setTrouble(content === undefined ? words.notRead : '');
    if (content === undefined) return;
    onChange({ file: form.addFile(file.name, content) });
    form.touch(`${pointer}/file`);
  };

  // A table let go anywhere on the page is meant for the form that stands there.
  const taking = useRef(take);
  taking.current = take;
  useEffect(() => {
    fileTaker.value = {
      words: words.dropHere,
      takes: /\.(csv|txt)$/i,
      take: (file) => void taking.current(file),
    };
    return () => {
      fileTaker.value = undefined;
    };
  }, []);

  return (
    <div class="file-input" id={elementAt(`${pointer}/file`)} tabIndex={-1}>
      <p>
        {kept === '' ? words.none : words.inFile(kept)}
        {kept !== '' && text === undefined && <span class="wrong">{words.missing}</span>}
      </p>
      {node.description && <p class="help">{helpFor(node)}</p>}
      <p class="file-choice">
        <button type="button" class="button quiet" onClick={() => picker.current?.click()}>
          {words.choose}
        </button>{' '}
        {words.drop}
      </p>
      <input
        ref={picker}
        type="file"
        hidden
        accept=".csv,.txt"
        aria-label={`${name}: ${words.choose}`}
        data-picks="table"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file) void take(file);
          currentTarget.value = '';
        }}
      />
      {text !== undefined && text.length <= longestText && (
        <details class="table-text">
          <summary>{words.edit(kept)}</summary>
          <textarea
            rows={12}
            spellcheck={false}
            aria-label={words.edit(kept)}
            value={text}
            onChange={({ currentTarget }) => {
              onChange({ file: form.addFile(kept, currentTarget.value) });
              form.touch(`${pointer}/file`);
            }}
          />
        </details>
      )}
      {trouble && (
        <p class="wrong" role="alert">
          {trouble}
        </p>
      )}
      <ProblemsHere problems={problems} />
    </div>
  );
}
