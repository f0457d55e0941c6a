/** What the record holds of a finding, where the screen shows it in another language. */
import type { Finding } from './findings';
import { strings } from './strings';

export function AsWritten({ finding }: { finding: Finding }) {
  if (strings.asWritten.lang === undefined) return null;
  const { title, sentence, next, reasons } = finding;
  return (
    <details class="in-words">
      <summary>{strings.card.asWritten}</summary>
      <div {...strings.asWritten}>
        <p>
          <b>{title}</b>
        </p>
        {[sentence, next, ...reasons].map((text) => text && <p>{text}</p>)}
      </div>
    </details>
  );
}
