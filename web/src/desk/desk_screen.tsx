/** The desk: the parts of the site at the side, one of them in the middle, what follows beside it. */
import { useLayoutEffect } from 'preact/hooks';
import './desk.css';
import './desk_form.css';
import './board.css';
import './study.css';
import './compared_table.css';
import './map_view.css';
import { UndoNotice } from '../field/undo_notice';
import { takePageWidth } from '../pictures_panel';
import { addressOf, type DeskPlace } from '../places';
import { BlendPage } from './blend_page';
import { DeskKeys, useDeskKeys } from './desk_keys';
import { DeskNavigation } from './desk_navigation';
import { singleParts } from './document_schema';
import { FindingsBoard } from './findings_board';
import { ItemPage, NewItemPage, SinglePage, SitePage } from './item_page';
import { ListPage } from './list_page';
import { NewSiteSteps } from './new_site_steps';
import { RecordTimeline } from './record_timeline';
import { StudyPage } from './study_page';

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

export function DeskScreen({ place }: { place: DeskPlace }) {
  useDeskKeys();
  useLayoutEffect(takePageWidth, []);
  return (
    <div class="desk">
      <div class="desk-side">
        <DeskNavigation key={addressOf(place)} here={place} />
        <DeskKeys />
      </div>
      <div class="desk-content">
        <UndoNotice />
        <DeskPart place={place} />
      </div>
    </div>
  );
}
