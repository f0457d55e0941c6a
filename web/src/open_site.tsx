/** Opening another site: an example, picked files, a folder, or a drop anywhere on the page. */
import { signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { droppedFiles, pickedFiles } from './dropped_files';
import { keptSites } from './record/kept_sites';
import { examples, openExample, openKept, openSite } from './site_assessment';
import { NewSite } from './new_site';
import { readDroppedFiles, readPickedFiles } from './site_files';
import { strings } from './strings';

const words = strings.open;

function FileButton({
  label,
  folder,
  onPick,
}: {
  label: string;
  folder: boolean;
  onPick: (files: FileList) => void;
}) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="button" onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        type="file"
        multiple
        hidden
        {...(folder ? { webkitdirectory: true } : { accept: '.json,.csv,.txt,.zip' })}
        data-picks={folder ? 'folder' : 'files'}
        onChange={({ currentTarget }) => {
          if (currentTarget.files?.length) onPick(currentTarget.files);
          currentTarget.value = '';
        }}
      />
    </>
  );
}

/** Sites to choose from; nothing where there are none. */
function SiteList({
  heading,
  sites,
  onOpen,
}: {
  heading: string;
  sites: { key: string; name: string; open: () => void }[];
  onOpen: () => void;
}) {
  if (sites.length === 0) return null;
  return (
    <>
      <h3>{heading}</h3>
      <ul class="example-list">
        {sites.map(({ key, name, open }) => (
          <li key={key}>
            <button
              type="button"
              class="button quiet"
              onClick={() => {
                onOpen();
                open();
              }}
            >
              {name}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

export function OpenSite() {
  const dialog = useRef<HTMLDialogElement>(null);
  const close = () => dialog.current?.close();
  const pick = (files: FileList) => {
    const list = pickedFiles(files);
    close();
    openSite(readPickedFiles(list));
  };
  return (
    <>
      <button type="button" class="button open-site" onClick={() => dialog.current?.showModal()}>
        {words.button}
      </button>
      <dialog ref={dialog} aria-labelledby="open-heading">
        <h2 id="open-heading">{words.heading}</h2>
        <p>{words.what}</p>
        <div class="choices">
          <FileButton label={words.chooseFiles} folder={false} onPick={pick} />
          <FileButton label={words.chooseFolder} folder={true} onPick={pick} />
        </div>
        <NewSite onBegun={close} />
        <SiteList
          heading={strings.record.onThisDevice}
          sites={keptSites.value.map(({ id, name }) => ({
            key: id,
            name: strings.record.open(name),
            open: () => openKept(id),
          }))}
          onOpen={close}
        />
        <SiteList
          heading={words.examples}
          sites={examples.value.map((example) => ({
            key: example.folder,
            name: words.openExample(example.folder.replaceAll('-', ' ')),
            open: () => openExample(example),
          }))}
          onOpen={close}
        />
        <button type="button" class="button quiet close" onClick={close}>
          {words.close}
        </button>
      </dialog>
    </>
  );
}

/** What takes a file let go over the page, by the ends of names, and what the page then says. */
export const fileTaker = signal<
  { words: string; takes: RegExp; take: (file: File) => void } | undefined
>(undefined);

/** The one file of a drop that is wanted; a document, an archive, a folder or several are a site. */
function droppedFile(transfer: DataTransfer): File | undefined {
  const [only, second] = transfer.files;
  return only && !second && fileTaker.value?.takes.test(only.name) ? only : undefined;
}

/** While files hover over the page it says that they can be let go. */
export function DropPlace() {
  const hovering = useSignal(false);
  useEffect(() => {
    const carriesFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const over = (event: DragEvent) => {
      if (!carriesFiles(event)) return;
      event.preventDefault();
      hovering.value = true;
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) hovering.value = false;
    };
    const drop = (event: DragEvent) => {
      if (!carriesFiles(event) || !event.dataTransfer) return;
      event.preventDefault();
      hovering.value = false;
      const file = droppedFile(event.dataTransfer);
      if (file && fileTaker.value) fileTaker.value.take(file);
      else openSite(readDroppedFiles(droppedFiles(event.dataTransfer)));
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, [hovering]);
  return hovering.value ? (
    <div class="drop-place">{fileTaker.value?.words ?? words.dropHere}</div>
  ) : null;
}
