/** A table for a spreadsheet: one line a row, cells apart by tabs, handed to the clipboard. */
import { useState } from 'preact/hooks';
import { strings } from './strings';

export type CopiedCell = string | number | undefined;

/** What a spreadsheet takes from the clipboard; a cell is one line, whatever stood in it. */
export function tabbed(rows: readonly (readonly CopiedCell[])[]): string {
  const line = (row: readonly CopiedCell[]) =>
    row.map((cell) => String(cell ?? '').replaceAll(/[\t\r\n]+/g, ' ')).join('\t');
  return [...rows.map(line), ''].join('\n');
}

/** `rowsOf` is asked for when the button is pressed; numbers stay numbers. */
export function CopyTable({ rowsOf }: { rowsOf: () => readonly (readonly CopiedCell[])[] }) {
  const [said, setSaid] = useState('');
  const copy = () => {
    navigator.clipboard.writeText(tabbed(rowsOf())).then(
      () => setSaid(strings.tables.copied),
      () => setSaid(strings.tables.notCopied),
    );
  };
  return (
    <span class="copy-table">
      <button type="button" class="button quiet" onClick={copy}>
        {strings.tables.copy}
      </button>
      <span role="status">{said}</span>
    </span>
  );
}
