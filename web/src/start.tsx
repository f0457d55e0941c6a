/** Starts the screens; the words are there. */
import { render } from 'preact';
import { Application } from './application';
import { followAddress } from './deep_link';
import { drawAllNow } from './drawing_queue';
import { startStoring } from './offline_readiness';
import { followTitle } from './page_title';
import { followPlaces } from './places';
import { followRoom } from './record/device_room';
import { startRecord, whenMade } from './record/site_record';
import { noteMade } from './record/undo_history';
import { startSettings } from './settings';
import { startAssessing } from './site_assessment';
import { followSite } from './site_state';

startSettings();
addEventListener('beforeprint', drawAllNow);
followAddress();
followPlaces();
const place = document.getElementById('application');
if (place) render(<Application />, place);
startAssessing();
startRecord();
whenMade(noteMade);
followSite();
followTitle();
followRoom();
startStoring();
