/** Several things beside one another, matter by matter: what differs is marked, what has steps opens. */
import { useRef, useState } from 'preact/hooks';
import { EngineText, engineText } from '../engine_text';
import type { Finding, Outcome } from '../findings';
import { FindingCard } from '../finding_card';
import { OutcomeMark } from '../outcome_mark';
import { strings } from '../strings';
import { type CopiedCell, CopyTable } from '../table_copy';

const words = strings.desk.studies.compared;

/** Where each matter stands as a block, only what differs is shown at first. As in study.css. */
const narrow = '(max-width: 43.99rem)';

/** A cell as the engine says it. */
export interface ComparedCell {
  text: string;
  /** More that belongs into the cell, one below the other. */
  lines?: string[];
  margin?: string;
  outcome?: Outcome;
  /** What it was read from. */
  finding?: Finding;
}

export interface ComparedRow {
  what: string;
  cells: ComparedCell[];
}

export interface Compared {
  columns: string[];
  rows: ComparedRow[];
}

function said({ text, lines, margin }: ComparedCell): string {
  if (lines) return lines.join('; ');
  return margin === undefined ? text : words.withMargin(text, margin);
}

/** Whether a cell says something else than the first of its row. */
function differs(row: ComparedRow, index: number): boolean {
  const [first] = row.cells;
  const cell = row.cells[index];
  return index > 0 && first !== undefined && cell !== undefined && said(first) !== said(cell);
}

/** Words of the engine, or of the screens themselves. */
function Words({ text, of, ofEngine }: { text: string; of?: 'title'; ofEngine: boolean }) {
  return ofEngine ? <EngineText text={text} {...(of ? { of } : {})} /> : <>{text}</>;
}

function CellSaid({ cell, ofEngine }: { cell: ComparedCell; ofEngine: boolean }) {
  if (cell.lines) {
    return (
      <ul class="cell-lines">
        {cell.lines.map((line) => (
          <li key={line}>
            <Words text={line} ofEngine={ofEngine} />
          </li>
        ))}
      </ul>
    );
  }
  return (
    <span>
      <Words text={cell.text} ofEngine={ofEngine} />
      {cell.margin !== undefined && (
        <span class="cell-margin">{strings.card.marginOf(engineText(cell.margin))}</span>
      )}
    </span>
  );
}

function Cell({
  cell,
  column,
  marked,
  ofEngine,
  onOpen,
}: {
  cell: ComparedCell;
  column: string;
  marked: boolean;
  ofEngine: boolean;
  onOpen: (finding: Finding) => void;
}) {
  const { finding, outcome } = cell;
  return (
    <td data-name={column} class={marked ? 'differs' : undefined}>
      <span class="cell">
        {marked && (
          <span class="differs-mark" role="img" aria-label={words.differs}>
            ≠
          </span>
        )}
        {outcome !== undefined && <OutcomeMark outcome={outcome} size={20} />}
        {finding === undefined ? (
          <CellSaid cell={cell} ofEngine={ofEngine} />
        ) : (
          <button type="button" class="as-link" onClick={() => onOpen(finding)}>
            <CellSaid cell={cell} ofEngine={ofEngine} />
            <span class="for-readers">{words.opens}</span>
          </button>
        )}
      </span>
    </td>
  );
}

/** A cell that was opened: where it stands, and what it was read from. */
interface Opened {
  column: string;
  what: string;
  finding: Finding;
}

/** The finding a cell was read from, over the page. */
function useOpenedFinding(stands: boolean, ofEngine: boolean) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [opened, setOpened] = useState<Opened | undefined>(undefined);
  const open = (next: Opened) => {
    setOpened(next);
    dialog.current?.showModal();
  };
  const shown = (
    <dialog
      class="opened-finding"
      ref={dialog}
      aria-labelledby="opened-heading"
      onClose={() => setOpened(undefined)}
    >
      {opened && (
        <>
          <h2 id="opened-heading">{opened.column}</h2>
          <h3>
            <Words text={opened.what} of="title" ofEngine={ofEngine} />
          </h3>
          <FindingCard finding={opened.finding} linked={false} printing stands={stands} />
        </>
      )}
      <button type="button" class="button quiet close" onClick={() => dialog.current?.close()}>
        {strings.desk.close}
      </button>
    </dialog>
  );
  return { open, shown };
}

function rowsToCopy({ columns, rows }: Compared, ofEngine: boolean): CopiedCell[][] {
  const shown = ofEngine ? engineText : (text: string) => text;
  return [
    [words.matter, ...columns],
    ...rows.map(({ what, cells }) => [
      shown(what, 'title'),
      ...cells.map((cell) => shown(said(cell))),
    ]),
  ];
}

/**
 * `marksDifferences` where the first column is what the others are compared with; `stands` where it is told of the
 * site as it is; `ofEngine` where its words are not those of the screens.
 */
export function ComparedTable({
  compared,
  caption,
  marksDifferences = false,
  stands = false,
  ofEngine = false,
}: {
  compared: Compared;
  caption: string;
  marksDifferences?: boolean;
  stands?: boolean;
  ofEngine?: boolean;
}) {
  const [onlyDifferent, setOnlyDifferent] = useState(
    () => marksDifferences && matchMedia(narrow).matches,
  );
  const { open, shown } = useOpenedFinding(stands, ofEngine);
  const columns = ofEngine
    ? compared.columns.map((column) => engineText(column))
    : compared.columns;
  const rows = compared.rows.filter(
    (row) => !onlyDifferent || row.cells.some((_, index) => differs(row, index)),
  );
  return (
    <section class="compared">
      {marksDifferences && (
        <p class="compared-choice">
          <label>
            <input
              type="checkbox"
              checked={onlyDifferent}
              onChange={({ currentTarget }) => setOnlyDifferent(currentTarget.checked)}
            />
            {words.onlyDifferent}
          </label>
          <span class="muted">{words.key}</span>
        </p>
      )}
      <table class="compared-table" data-columns={compared.columns.length}>
        <caption class="for-readers">{caption}</caption>
        <thead>
          <tr>
            <td />
            {compared.columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, place) => (
            <tr key={`${place} ${row.what}`}>
              <th scope="row">
                <Words text={row.what} of="title" ofEngine={ofEngine} />
              </th>
              {row.cells.map((cell, index) => (
                <Cell
                  key={index}
                  cell={cell}
                  column={columns[index] ?? ''}
                  ofEngine={ofEngine}
                  marked={marksDifferences && differs(row, index)}
                  onOpen={(finding) =>
                    open({
                      column: columns[index] ?? '',
                      what: row.what,
                      finding,
                    })
                  }
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length === 0 && <p class="muted">{words.nothingDiffers}</p>}
      <p>
        <CopyTable rowsOf={() => rowsToCopy({ columns, rows }, ofEngine)} />
      </p>
      {shown}
    </section>
  );
}
