/** What the zones take, as the engine counted it; asked for when it is unfolded. */
import { EngineText } from './engine_text';
import { Fragment } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Findings, Quantities, QuantitiesAnswer, QuantityRow } from './findings';
import { saveFile } from './save_file';
import { askOpenSite } from './site_assessment';
import { strings } from './strings';
import { type CopiedCell, CopyTable } from './table_copy';

const words = strings.quantities;

/** Numbers as numbers, one row a line. */
export function tableRows({ zones, totals }: Quantities): CopiedCell[][] {
  const line = (zone: string, row: QuantityRow) => [
    zone,
    row.what,
    row.value,
    row.unit,
    row.how,
    row.price,
    row.cost,
  ];
  return [
    words.columns,
    ...zones.flatMap((zone) => zone.rows.map((row) => line(zone.name, row))),
    ...totals.map((row) => line(words.all, row)),
  ];
}

function amountOf(row: QuantityRow): string {
  if (row.text === undefined) return words.notYetKnown;
  return row.partial ? words.inPart(row.text) : row.text;
}

function Rows({ name, rows, note }: { name: string; rows: QuantityRow[]; note: string[] }) {
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={3}>
          {name}
        </th>
      </tr>
      {rows.map((row) => (
        <tr key={`${row.item} ${row.of}`}>
          <th scope="row">
            <EngineText text={row.what} />
            <span class="how">
              <EngineText text={row.how} />
            </span>
          </th>
          <td class="amount">{amountOf(row)}</td>
          <td class="amount" title={row.price}>
            {row.cost_text ?? ''}
          </td>
        </tr>
      ))}
      {note.map((sentence) => (
        <tr key={sentence}>
          <td colSpan={3}>{sentence}</td>
        </tr>
      ))}
    </tbody>
  );
}

function Table({ answer }: { answer: QuantitiesAnswer }) {
  const { quantities, csv = '' } = answer;
  if (!quantities) return <p>{words.none}</p>;
  return (
    <Fragment>
      <table class="quantities">
        <thead>
          <tr>
            <th scope="col">{words.what}</th>
            <th scope="col">{words.amount}</th>
            <th scope="col">{words.cost}</th>
          </tr>
        </thead>
        {quantities.zones.map((zone) => (
          <Rows key={zone.zone} name={zone.name} rows={zone.rows} note={zone.missing} />
        ))}
        <Rows
          name={words.all}
          rows={quantities.totals}
          note={
            quantities.cost_text ? [words.costOf(quantities.cost_text, quantities.prices_from)] : []
          }
        />
      </table>
      <div class="save">
        <CopyTable rowsOf={() => tableRows(quantities)} />
        <button
          type="button"
          class="button quiet"
          onClick={() => saveFile('quantities.csv', 'text/csv', csv)}
        >
          {words.save}
        </button>
      </div>
    </Fragment>
  );
}

export interface QuantitiesPanelProps {
  findings: Findings;
  ask?: (what: string) => Promise<QuantitiesAnswer | undefined>;
}

export function QuantitiesPanel({ findings, ask = askOpenSite }: QuantitiesPanelProps) {
  const [open, setOpen] = useState(false);
  const [answer, setAnswer] = useState<QuantitiesAnswer | undefined>(undefined);

  // Other findings are of another site, revision or unit system: the table is asked for anew.
  useEffect(() => {
    setAnswer(undefined);
    if (!open) return undefined;
    let wanted = true;
    void ask('quantities').then((next) => {
      if (wanted) setAnswer(next);
    });
    return () => {
      wanted = false;
    };
  }, [findings, open, ask]);

  if (!findings.findings.some(({ topic }) => topic === 'quantities')) return null;
  return (
    <details class="quantities-panel" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.heading}</summary>
      {open && (answer ? <Table answer={answer} /> : <p role="status">{words.counting}</p>)}
    </details>
  );
}
