/**
 * Photos that were taken for a form that nobody kept: they are dropped when the application is
 * opened again and nothing names them. A window that has taken a photo holds all of them, so that
 * none is dropped while somebody is still at their form.
 */
import type { RecordDatabase } from './record_database';

const lockName = 'proofstone.photos';

let held: Promise<void> | undefined;

/** Holds the photos for as long as this window is open; resolves once that is so. */
export function holdPhotos(): Promise<void> {
  held ??= new Promise((settle) => {
    if (!('locks' in navigator)) {
      settle();
      return;
    }
    void navigator.locks.request(lockName, { mode: 'shared' }, () => {
      settle();
      return new Promise(() => undefined);
    });
  });
  return held;
}

/** What was typed into forms and waits there. */
function typedOnThisDevice(): string {
  try {
    return Object.values({ ...localStorage }).join('\n');
  } catch {
    return '';
  }
}

/** Drops photos that nothing names; none where another window holds them. */
export async function sweepPhotos(record: RecordDatabase): Promise<void> {
  // Without a way to learn of other windows nothing is dropped.
  if (!('locks' in navigator)) return;
  await navigator.locks.request(lockName, { ifAvailable: true }, async (lock) => {
    if (lock) await record.dropUnnamedPhotos(typedOnThisDevice());
  });
}
