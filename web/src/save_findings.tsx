/** Keeps what the engine said as files on the device: the findings, and the printable report. */
import type { Findings } from './findings';
import { writeReport } from './site_assessment';
import { strings } from './strings';

function save(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the bytes once the click is handled.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}

export function SaveFindings({ findings }: { findings: Findings }) {
  return (
    <div class="save">
      <button
        type="button"
        class="button quiet"
        onClick={() =>
          save('findings.json', 'application/json', `${JSON.stringify(findings, null, 2)}\n`)
        }
      >
        {strings.save.findings}
      </button>
      <button
        type="button"
        class="button quiet"
        onClick={() =>
          void writeReport().then((html) => {
            if (html) save('report.html', 'text/html', html);
          })
        }
      >
        {strings.save.report}
      </button>
    </div>
  );
}
