/** What the engine says of a lot with the stones counted so far. The newest question wins. */
import type { AssessAnswer, UnitSystem } from '../findings';
import { LatestQuestion } from '../latest_question';
import type { SiteFiles } from '../site_files';
import { documentWith } from '../record/site_text';
import type { Change } from '../record/revision';

export interface LotQuestion {
  site: SiteFiles;
  lot: string;
  changes: Change[];
  units: UnitSystem;
  width: number;
}

export class LiveLot extends LatestQuestion<LotQuestion, AssessAnswer> {
  constructor(hear: (answer: AssessAnswer) => void) {
    super(
      ({ site, lot, changes, units, width }) => ({
        ask: 'lot',
        document: documentWith(site, changes),
        files: site.files,
        units,
        lot,
        pictures: { width },
      }),
      hear,
    );
  }
}
