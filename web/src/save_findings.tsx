/** Keeps what the engine said as files on the device: findings, report and specification sheet. */
import type { Findings } from './findings';
import { openedSite, photosOnDevice } from './record/site_record';
import { saveFile } from './save_file';
import { Papers } from './papers';
import { archiveOf, photosNamedIn } from './site_archive';
import { writePage } from './site_assessment';
import type { SiteFiles } from './site_files';
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

/** A name that every file system takes. */
function fileNameOf(name: string): string {
  const plain = name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '');
  return plain || 'site';
}

/** Packs the site with those of its photos that this device has. */
async function saveSite(site: SiteFiles, name: string): Promise<void> {
  const photos = await photosOnDevice(photosNamedIn(site.document));
  const archive = archiveOf(site, photos) as Uint8Array<ArrayBuffer>;
  saveFile(`${name}.zip`, 'application/zip', archive);
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
        <button
          type="button"
          class="button quiet"
          onClick={() => {
            const site = openedSite.peek();
            if (site) void saveSite(site, fileNameOf(findings.site.name));
          }}
        >
          {strings.save.site}
        </button>
        <SavePage ask="report" label={strings.save.report} />
        <SavePage ask="specification" label={strings.save.specification} />
      </div>
      <Papers />
    </>
  );
}
