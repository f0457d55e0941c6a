/** A count of a lot that was begun on this device and not ended. */
import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../record/record_database';
import { openedSite, recordDatabase } from '../record/site_record';

export interface BegunCount {
  /** Whether the device has been asked. */
  known: boolean;
  draft: Draft | undefined;
}

export function useBegunCount(lot: string): BegunCount {
  const [begun, setBegun] = useState<BegunCount>({ known: false, draft: undefined });
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
        const draft = drafts.find(({ about }) => (about as { lot?: string }).lot === lot);
        if (wanted) setBegun({ known: true, draft });
      });
    return () => {
      wanted = false;
    };
  }, [site, lot, opened]);
  return begun;
}
