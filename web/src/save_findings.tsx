/** Keeps what the engine said as files on the device: findings, report and specification sheet. */
import type { Findings } from './findings';
import { Papers } from './papers';
import { saveFile } from './save_file';
import { SaveSite } from './save_site';
import { writePage } from './site_assessment';
import { strings } from './strings';

function SavePage({ ask, label }: { ask: 'report' | 'specification'; label: string }) {
  return (
    <button
      type="button"
      class="button quiet"
      onClick={() =>
        void writePage(ask).then((html) => {
          if (html) saveFile(`${ask}.html`, 'text/html', html);
        })
      }
    >
      {label}
    </button>
  );
}

export function SaveFindings({ findings }: { findings: Findings }) {
  return (
    <>
      <div class="save">
        <button
          type="button"
          class="button quiet"
          onClick={() =>
            saveFile('findings.json', 'application/json', `${JSON.stringify(findings, null, 2)}\n`)
          }
        >
          {strings.save.findings}
        </button>
        <SavePage ask="report" label={strings.save.report} />
        <SavePage ask="specification" label={strings.save.specification} />
      </div>
      <SaveSite name={findings.site.name} />
      <Papers />
    </>
  );
}
