/** What the engine says of a lot with the stones counted so far. The newest question wins. */
import { engine } from '../engine';
import type { AssessAnswer, UnitSystem } from '../findings';
import type { SiteFiles } from '../site_files';
import { documentWith } from '../record/site_record';
import type { Change } from '../record/revision';

export interface LotQuestion {
  site: SiteFiles;
  lot: string;
  changes: Change[];
  units: UnitSystem;
  width: number;
}

/** Asks one question at a time; of those that come meanwhile only the last is asked. */
export class LiveLot {
  private next: LotQuestion | undefined;
  private asking = false;

  constructor(private hear: (answer: AssessAnswer) => void) {}

  ask(question: LotQuestion): void {
    this.next = question;
    if (!this.asking) void this.run();
  }

  /** No answer is wanted any more. */
  stop(): void {
    this.next = undefined;
    this.hear = () => undefined;
  }

  private async run(): Promise<void> {
    this.asking = true;
    while (this.next) {
      const { site, lot, changes, units, width } = this.next;
      this.next = undefined;
      try {
        const answer = await engine.ask<AssessAnswer>({
          ask: 'lot',
          document: documentWith(site, changes),
          files: site.files,
          units,
          lot,
          pictures: { width },
        });
        if (!this.next) this.hear(answer);
      } catch {
        // The stones are kept all the same; the next tap asks again.
      }
    }
    this.asking = false;
  }
}
