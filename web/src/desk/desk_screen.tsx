/** The desk: the parts of the site at the side, one of them in the middle, what follows beside it. */
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import './desk.css';
import './study.css';
import { UndoNotice } from '../field/undo_notice';
import { takePageWidth } from '../pictures_panel';
import { addressOf, type DeskPlace } from '../places';
import { redo, undo } from '../record/undo_history';
import { strings } from '../strings';
import { BlendPage } from './blend_page';
import { DeskNavigation } from './desk_navigation';
import { singleParts } from './document_schema';
import { FindingsBoard } from './findings_board';
import { ItemPage, NewItemPage, SinglePage, SitePage } from './item_page';
import { ListPage } from './list_page';
import { NewSiteSteps } from './new_site_steps';
import { RecordTimeline } from './record_timeline';
import { StudyPage } from './study_page';

const words = strings.desk;

function DeskPart({ place }: { place: DeskPlace }) {
  switch (place.show) {
    case 'board':
      return <FindingsBoard />;
    case 'timeline':
      return <RecordTimeline key={place.of ?? ''} {...(place.of ? { of: place.of } : {})} />;
    case 'start':
      return <NewSiteSteps step={place.step ?? 1} />;
    case 'site':
      return <SitePage />;
    case 'new':
      return <NewItemPage part={place.part} />;
    case 'study':
      return <StudyPage part={place.part} id={place.id} study={place.study} />;
    case 'blend':
      return <BlendPage />;
    default:
      if (singleParts.has(place.part)) return <SinglePage part={place.part} />;
      return place.id === undefined ? (
        <ListPage part={place.part} />
      ) : (
        <ItemPage part={place.part} id={place.id} />
      );
  }
}

/** Whether the key belongs to what is being typed. */
function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLInputElement ||
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement
  );
}

function useDeskKeys(): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      const key = event.key.toLowerCase();
      if (key === 's') {
        event.preventDefault();
        document.querySelector<HTMLFormElement>('form.desk-form')?.requestSubmit();
      } else if ((key === 'z' || key === 'y') && !isTyping(event.target)) {
        event.preventDefault();
        // `recordTrouble` says why it could not be kept; nothing was changed.
        void (key === 'y' || event.shiftKey ? redo() : undo()).catch(() => undefined);
      }
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, []);
}

function Keys() {
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" class="button quiet keys" onClick={() => dialog.current?.showModal()}>
        {words.keys}
      </button>
      <dialog ref={dialog} aria-labelledby="keys-heading">
        <h2 id="keys-heading">{words.keysHeading}</h2>
        <dl class="keys-list">
          {words.keysList.map(([keys, what]) => (
            <div key={keys}>
              <dt>
                <kbd>{keys}</kbd>
              </dt>
              <dd>{what}</dd>
            </div>
          ))}
        </dl>
        <button type="button" class="button quiet close" onClick={() => dialog.current?.close()}>
          {words.close}
        </button>
      </dialog>
    </>
  );
}

export function DeskScreen({ place }: { place: DeskPlace }) {
  useDeskKeys();
  useLayoutEffect(takePageWidth, []);
  return (
    <div class="desk">
      <div class="desk-side">
        <DeskNavigation key={addressOf(place)} here={place} />
        <Keys />
      </div>
      <div class="desk-content">
        <UndoNotice />
        <DeskPart place={place} />
      </div>
    </div>
  );
}
