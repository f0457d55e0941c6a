import './theme.css';
import './page.css';
import './finding.css';
import { render } from 'preact';
import { Application } from './application';
import { followAddress } from './deep_link';
import { startStoring } from './offline_readiness';
import { startSettings } from './settings';
import { startAssessing } from './site_assessment';

startSettings();
followAddress();
const place = document.getElementById('application');
if (place) render(<Application />, place);
startAssessing();
startStoring();
