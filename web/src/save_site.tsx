/** Saves the whole site as one file, with the places where things were taken down or without. */
import { useMemo, useState } from 'preact/hooks';
import { mayTellPlace } from './record/photo';
import { photosOnDevice } from './record/drafts';
import { openedSite } from './record/site_record';
import { withoutPlaces } from './record/site_text';
import { saveFile } from './save_file';
import { archiveOf, photosNamedIn } from './site_archive';
import type { SiteFiles } from './site_files';
import { strings } from './strings';

const words = strings.position;

/** A name that every file system takes. */
function fileNameOf(name: string): string {
  const plain = name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '');
  return plain || 'site';
}

/** Packs the site with those of its photos that this device has; resolves with how many stay here. */
async function saveSite(site: SiteFiles, name: string, withPlaces: boolean): Promise<number> {
  const all = await photosOnDevice(photosNamedIn(site.document));
  const photos = withPlaces ? all : all.filter((photo) => !mayTellPlace(photo));
  const packed = withPlaces ? site : { ...site, document: withoutPlaces(site) };
  const archive = archiveOf(packed, photos) as Uint8Array<ArrayBuffer>;
  saveFile(`${name}.zip`, 'application/zip', archive);
  return all.length - photos.length;
}

/**
 * Whether a document names photos or positions, in any revision: earlier ones may hold what the state
 * no longer does. Its text is looked through, not read: it may be long.
 */
function namesPlaces(document: string): boolean {
  return /"(latitude|photos)"\s*:/.test(document);
}

export function SaveSite({ name }: { name: string }) {
  const [withPlaces, setWithPlaces] = useState(true);
  const [left, setLeft] = useState(0);
  const site = openedSite.value;
  const mayTell = useMemo(() => site !== undefined && namesPlaces(site.document), [site]);
  return (
    <div class="save-site">
      <button
        type="button"
        class="button quiet"
        onClick={() => {
          const open = openedSite.peek();
          if (open) void saveSite(open, fileNameOf(name), withPlaces).then(setLeft);
        }}
      >
        {strings.save.site}
      </button>
      {mayTell && (
        <label class="location">
          <input
            type="checkbox"
            name="leave-places-out"
            checked={!withPlaces}
            onChange={({ currentTarget }) => setWithPlaces(!currentTarget.checked)}
          />
          <span>
            {words.leaveOut}
            <span class="line">{words.leaveOutWhat}</span>
          </span>
        </label>
      )}
      <p role="status">{left > 0 ? words.photosLeft(left) : ''}</p>
    </div>
  );
}
