/** Rows of short answers as a table; cells copied from a spreadsheet can be put in. */
import { strings } from '../strings';
import { type CopiedCell, CopyTable } from '../table_copy';
import { isSimple, resolved, type SchemaNode, shapeOf } from './document_schema';
import { fieldName, helpFor } from './field_words';
import { elementAt, useForm } from './form_context';
import { type InputProps, LineControl, ProblemsHere } from './line_input';

const words = strings.desk.form;

type Row = Record<string, unknown>;

/** More rows than this are kept as a file. */
const mostRows = 300;
const mostColumns = 5;

/** The columns of a list whose rows are of a few short answers; undefined for any other list. */
export function columnsOf(list: SchemaNode): [string, SchemaNode][] | undefined {
  const item = resolved(list.items ?? {});
  if (shapeOf(item) !== 'object') return undefined;
  const columns = Object.entries(item.properties ?? {}).map(([key, node]): [string, SchemaNode] => [
    key,
    resolved(node),
  ]);
  const fits = columns.length <= mostColumns && columns.every(([, node]) => isSimple(node));
  return fits ? columns : undefined;
}

/** The rows with cells of a spreadsheet put in from one cell on. */
export function withCells(
  rows: readonly Row[],
  columns: readonly string[],
  at: { row: number; column: number },
  text: string,
): Row[] {
  const cells = text
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((line) => line.split('\t'));
  const next = rows.map((row) => ({ ...row }));
  cells.forEach((line, down) => {
    const row = (next[at.row + down] ??= {});
    line.forEach((cell, across) => {
      const column = columns[at.column + across];
      if (column !== undefined) row[column] = cell.trim();
    });
  });
  return next;
}

/** The rows as `withCells` takes them. */
export function cellsOf(rows: readonly Row[], columns: readonly string[]): CopiedCell[][] {
  return rows.map((row) =>
    columns.map((key) => {
      const cell = row[key];
      return typeof cell === 'number' || typeof cell === 'string' ? cell : '';
    }),
  );
}

export function TableInput({ node, name, pointer, value, onChange }: InputProps) {
  const { problemsAt } = useForm();
  const rows = (Array.isArray(value) ? value : []) as Row[];
  const columns = columnsOf(node) ?? [];
  const keys = columns.map(([key]) => key);
  const required = resolved(node.items ?? {}).required ?? [];
  if (rows.length > mostRows) return <p>{words.tooLong(rows.length)}</p>;
  const set = (row: number, key: string, cell: unknown) =>
    onChange(rows.map((one, index) => (index === row ? { ...one, [key]: cell } : one)));
  return (
    <div class="table-input" id={elementAt(pointer)} tabIndex={-1}>
      {rows.length > 0 && (
        <table>
          <thead>
            <tr>
              {columns.map(([key, column]) => (
                <th key={key} scope="col" title={helpFor(column)}>
                  {fieldName(key, column)}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <tr key={index}>
                {columns.map(([key, column], place) => (
                  <td
                    key={key}
                    data-name={fieldName(key, column)}
                    onPaste={(event) => {
                      const text = event.clipboardData?.getData('text/plain') ?? '';
                      if (!/[\t\n]/.test(text)) return;
                      event.preventDefault();
                      onChange(withCells(rows, keys, { row: index, column: place }, text));
                    }}
                  >
                    <LineControl
                      node={column}
                      pointer={`${pointer}/${index}/${key}`}
                      value={row[key]}
                      needed={required.includes(key)}
                      label={`${fieldName(key, column)}, ${words.rowOf(name, index + 1)}`}
                      onChange={(cell) => set(index, key, cell)}
                    />
                    <span id={`${elementAt(`${pointer}/${index}/${key}`)}-words`}>
                      <ProblemsHere problems={problemsAt(`${pointer}/${index}/${key}`)} />
                    </span>
                  </td>
                ))}
                <td>
                  <button
                    type="button"
                    class="button quiet small"
                    aria-label={words.removeRow(index + 1)}
                    onClick={() => onChange(rows.filter((_, other) => other !== index))}
                  >
                    ×
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p class="form-bar">
        <button type="button" class="button quiet" onClick={() => onChange([...rows, {}])}>
          {words.addRow}
        </button>
        {rows.length > 0 && <CopyTable rowsOf={() => cellsOf(rows, keys)} />}
      </p>
    </div>
  );
}
