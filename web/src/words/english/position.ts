/** Words about where things were taken down. */
import type { PositionState } from '../../field/device_position';

export const position = {
  take: 'Note where this device is',
  states: {
    off: 'Only if you want it. It can be taken off again.',
    looking: 'Looking for it. Nothing waits for it.',
    found: 'Found.',
    refused: 'This browser does not allow it. All else goes on without it.',
    'not found': 'Not found yet. All else goes on without it.',
    'not available': 'This device does not tell where it is. All else goes on without it.',
  } satisfies Record<PositionState, string>,
  at: (latitude: string, longitude: string, accuracy = '') =>
    `${latitude}, ${longitude}${accuracy ? `, within ${accuracy}` : ''}`,
  takeOff: 'Take the position off',
  takeAllOff: (number: number) =>
    number === 1 ? 'Take the one position off' : `Take all ${number} positions off`,
  oneByOne: 'One by one',
  takenOff: 'Position taken off',
  heading: 'Where it was taken down',
  carry: (number: number) =>
    number === 1
      ? 'One thing says where it was taken down.'
      : `${number} things say where they were taken down.`,
  stillInHistory:
    'Earlier revisions keep it on this device. A copy that is saved can leave all of it out.',
  leaveOut: 'Leave out where things were taken down',
  leaveOutWhat:
    'In the copy that is saved; the record here keeps it. Photos that may tell their place stay here too.',
  photosLeft: (number: number) =>
    number === 1
      ? 'One photo stays here: it may tell where it was taken.'
      : `${number} photos stay here: they may tell where they were taken.`,
};
