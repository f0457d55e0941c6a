/** A value of the document as it is read, not as it is written. */
import type { JSX } from 'preact';
import { fieldName } from './field_words';

/** A longer list is told in its beginning and its length. */
const mostRows = 20;

export function ValueInWords({ value }: { value: unknown }): JSX.Element {
  if (Array.isArray(value)) {
    const rows = value.slice(0, mostRows) as unknown[];
    const rest = value.length > rows.length ? ` … (${value.length})` : '';
    if (rows.every((row) => typeof row !== 'object')) {
      return <span>{rows.map(String).join(', ') + rest}</span>;
    }
    return (
      <ol>
        {rows.map((row, index) => (
          <li key={index}>
            <ValueInWords value={row} />
          </li>
        ))}
        {rest && <li>{rest}</li>}
      </ol>
    );
  }
  if (value !== null && typeof value === 'object') {
    return (
      <dl class="in-fields">
        {Object.entries(value).map(([key, inner]) => (
          <div key={key}>
            <dt>{fieldName(key)}</dt>
            <dd>
              <ValueInWords value={inner} />
            </dd>
          </div>
        ))}
      </dl>
    );
  }
  return <span>{String(value)}</span>;
}
