/** The one record of this device, and why it could not be written where it could not. */
import { signal } from '@preact/signals';
import { DraftEnded, RecordDatabase } from './record_database';

/** Why the record cannot be kept on this device, where it cannot. */
export type RecordTrouble =
  'not available' | 'no room' | 'not written' | 'reads otherwise' | 'ended elsewhere';
export const recordTrouble = signal<RecordTrouble | undefined>(undefined);

/** What was tapped or filled in could not be kept. */
export class RecordFailure extends Error {
  constructor(
    readonly trouble: RecordTrouble,
    readonly detail: string,
  ) {
    super(`${trouble}: ${detail}`);
  }
}

let opening: Promise<RecordDatabase> | undefined;

/** The record of this device; opened when it is first asked for. */
export function recordDatabase(): Promise<RecordDatabase> {
  opening ??= RecordDatabase.open();
  opening.catch(() => (opening = undefined));
  return opening;
}

function failureOf(error: unknown): RecordFailure {
  if (error instanceof RecordFailure) return error;
  if (error instanceof DraftEnded) return new RecordFailure('ended elsewhere', error.message);
  const name = error instanceof DOMException ? error.name : '';
  const trouble: RecordTrouble =
    name === 'QuotaExceededError' ? 'no room' : name === '' ? 'not written' : 'not available';
  return new RecordFailure(trouble, String(error));
}

/** Notes what stands in the way of the record, for the screens to say. */
export function noteTrouble(error: unknown): RecordFailure {
  const failure = failureOf(error);
  recordTrouble.value = failure.trouble;
  return failure;
}

/** Does what writes to the record; where it fails, the screen says so and nothing is pretended. */
export async function writing<Result>(
  work: (record: RecordDatabase) => Promise<Result>,
): Promise<Result> {
  try {
    const result = await work(await recordDatabase());
    recordTrouble.value = undefined;
    return result;
  } catch (error) {
    throw noteTrouble(error);
  }
}
