/** The record of this device and entries that cross. */
import type { RecordTrouble } from '../../record/record_access';
import { counted, momentText } from '../sentences';

export const record = {
  record: {
    troubles: {
      'no room':
        'This device has no room left, so the last entry was not kept. Free some room, then enter it again.',
      'not available':
        'This browser lets nothing be kept on the device, so the last entry was not kept. Leave private browsing, then enter it again.',
      'ended elsewhere':
        'This count was ended in another window. What was counted until then is in the record.',
      'reads otherwise':
        'This device keeps another copy of this site, in which the same revision or file reads otherwise. What you opened is shown, and not kept.',
      'not written': 'The last entry could not be written to this device. Enter it again.',
    } satisfies Record<RecordTrouble, string>,
    keptNow: (note: string) => `Kept: ${note}.`,
    undo: 'Undo',
    undone: (note: string) => `Undone: ${note}`,
    redo: 'Redo',
    redone: (note: string) => `Made again: ${note}`,
    onThisDevice: 'Kept on this device',
    open: (name: string) => `Open “${name}”`,
  },

  conflicts: {
    heading: (number: number) => `${counted(number, 'entry crosses', 'entries cross')} another`,
    intro:
      'Two people changed the same thing, and neither knew of the other. Both entries are in the record; say which is right.',
    stands: 'Stands:',
    passedOver: 'Does not stand:',
    removed: 'removed',
    anew: 'written anew',
    by: (author: string, time: string) => `${author}, ${momentText(time)}`,
    right: 'What stands is right',
    takeOther: 'Take the other',
    note: 'Crossing entries settled',
  },
};
