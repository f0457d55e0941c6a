/** What was begun about a lot on this device and not ended: a count, photos. */
import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../record/record_database';
import { recordDatabase } from '../record/record_access';
import { openedSite } from '../record/site_record';

export interface BegunDraft {
  /** Whether the device has been asked. */
  known: boolean;
  draft: Draft | undefined;
}

export function useBegunDraft(lot: string, kind: Draft['kind']): BegunDraft {
  const [begun, setBegun] = useState<BegunDraft>({ known: false, draft: undefined });
  const opened = openedSite.value !== undefined;
  const site = openedSite.value?.kept;
  useEffect(() => {
    if (site === undefined) {
      setBegun({ known: opened, draft: undefined });
      return undefined;
    }
    let wanted = true;
    recordDatabase()
      .then((record) => record.drafts(site))
      .catch(() => [])
      .then((drafts) => {
        const draft = drafts.find(
          (one) => one.kind === kind && (one.about as { lot?: string }).lot === lot,
        );
        if (wanted) setBegun({ known: true, draft });
      });
    return () => {
      wanted = false;
    };
  }, [site, lot, kind, opened]);
  return begun;
}
