/** What is taken down of rock in the field. */
import type { PhotoRefusal } from '../../record/photo';
import { counted, momentText } from '../sentences';

export const field = {
  field: {
    heading: 'In the field',
    kept: 'What you take down is kept on this device.',
    notKept: 'What you take down is kept on this device from the first tap on.',
    whichRock: 'Which rock?',
    noLots: 'This site has no lots yet. A lot is rock that is judged together, such as one pile.',
    whichZone: 'Which work is being placed?',
    noZones:
      'No part of the works is laid out yet. Its checks follow from its design, which is made at the desk.',
    toZones: 'Zones at the desk',
    zoneWalk: 'Checks from its design',
    noSuchLot: 'This site has no such lot.',
    noLook: 'not looked at yet',
    back: 'All of this site',
    backToLot: 'Back to this rock',
    actions: 'What to do',
    count: 'Count stones',
    goOnCounting: 'Go on counting',
    photo: 'Photo',
    goOnPhotos: 'Go on with photos',
    photoNotOpened:
      'The photo screens could not be loaded. Check the connection, then load this page again.',
    quickLook: 'Quick look',
    weigh: 'Weigh',
    load: 'Load',
    problem: 'Problem',
    soFar: 'Taken down so far',
    nothingYet:
      'Nothing yet. A quick look tells where to count; a count says after each stone how many more may be needed; loads are taken down as they come.',
    taken: (looks: number, loads: number) =>
      `${counted(looks, 'look', 'looks')}, ${counted(loads, 'load', 'loads')}`,
    seen: (when: string, who: string) => `${momentText(when)}${who ? `, ${who}` : ''}`,
    who: 'Your name',
  },

  count: {
    heading: (lot: string) => (lot ? `Count of ${lot}` : 'Count'),
    name: 'Stone count',
    nameAt: (place: string) => `Stone count, ${place}`,
    preparing: 'Preparing …',
    against: (lot: string, name: string) => `${lot} is counted against ${name}.`,
    picking: 'How are the stones picked?',
    pickings: { grid: 'Grid', line: 'Line', area: 'Area', whole: 'All of them' } as Record<
      string,
      string
    >,
    by: 'How are they measured?',
    ways: {
      bins: { name: 'By size', what: 'Each stone goes to the button of its size.' },
      axes: { name: 'With a tape', what: 'The middle axis of each stone is typed.' },
    },
    measureFirst:
      'Measure the middle axis of the first stone, neither the longest nor the shortest, and type it.',
    axis: 'Middle axis',
    addStone: 'Add this stone',
    lastAxes: (axes: string[]) => `Last: ${axes.join(', ')}`,
    place: 'Where on the pile?',
    caution: 'Keep off slopes that may slide, and out from under loads and buckets.',
    begin: 'Begin',
    tapFirst:
      'Tap the size of the first stone: its middle axis, neither the longest nor the shortest.',
    more: 'Go on: so few stones say nothing yet.',
    stones: (number: number): string => (number === 1 ? 'stone' : 'stones'),
    binsLabel: 'Size of the stone',
    /** The size of a button as the engine writes it: "3 to 6 in". */
    bin: (text: string) => text,
    undo: 'Take back',
    finish: 'Done',
    note: (number: number) => `Stone count: ${counted(number, 'stone', 'stones')}`,
    drop: 'Throw this count away',
    dropWhat: (number: number) =>
      `${counted(number, 'stone', 'stones')} will be gone. This cannot be taken back.`,
    dropYes: 'Throw it away',
    dropNo: 'Keep counting',
  },

  form: {
    keep: 'Keep it',
    notKept: 'This is not kept yet:',
    allowed: 'Allowed:',
    unitOf: (label: string) => `Unit: ${label}`,
  },

  tasks: {
    where: 'Where?',
    note: 'Note',
    quickLook: {
      heading: 'Quick look',
      name: 'Quick look',
      caution: 'A look by eye never accepts rock. Keep off slopes that may slide.',
      largest: 'Largest stone',
      smallest: 'Smallest stone, fines apart',
      mostCommon: 'Most common stone',
      shape: 'Shape',
      shapes: {
        blocky: 'Blocky',
        mixed: 'Mixed',
        'flat or long': 'Many flat or long ones',
      },
      fines: 'Fines',
      amounts: { none: 'None', little: 'Little', much: 'Much' },
    },
    load: {
      heading: 'Load',
      name: 'Load',
      caution: 'Keep clear of trucks that tip.',
      ticket: 'Ticket',
      mass: 'Mass',
      medianSize: 'Median stone, by look or measure',
    },
  },

  weigh: {
    heading: 'Weighed sample',
    caution: 'Keep off the pile and out from under loads. Let nobody lift what is too heavy.',
    how: (lot: string, name: string) =>
      `Spread a sample of ${lot} out, sort all of it by these sizes of ${name}, weigh each group and count its stones. Leave groups empty that hold none.`,
    mass: (unit: string) => `Mass, ${unit}`,
    stones: 'Stones',
  },

  photos: {
    legend: 'Photos',
    take: 'Take or choose photos',
    leaveOut: 'Leave out where they were taken',
    leaveOutWhat:
      'Place, device and remarks are taken out of the files; the pictures stay as they are.',
    reading: 'Reading the photos …',
    kept: (number: number) =>
      number === 0 ? '' : `${counted(number, 'photo', 'photos')} kept on this device.`,
    photo: (number: number) => `Photo ${number}`,
    remove: (number: number) => `Leave photo ${number} out`,
    elsewhere: 'This photo is kept on another device.',
    refused: (file: string, why: string) => `${file}: ${why}`,
    refusals: {
      'too large': 'this photo is larger than 40 MB, so it was not kept.',
      'too many pixels':
        'this photo has more than 60 megapixels, so it was not kept. Choose a smaller one.',
      'cut off': 'this file is cut off, so it was not kept. Copy the photo again.',
      'not readable': 'this browser cannot read the picture, so it was not kept. Choose a JPEG.',
      'heic not readable':
        'this is a HEIC photo, which this browser cannot read. Set the camera to save JPEG (“most compatible”) and take it again, or send the photo to yourself in a message: most phones make a JPEG of it.',
    } satisfies Record<PhotoRefusal, string>,
  },

  points: {
    next: (label: string, unit: string) => `${label}: next point, ${unit}`,
    add: 'Add',
    soFar: (number: number, fewest: number) =>
      `${counted(number, 'point', 'points')} of ${fewest} or more.`,
    takeBack: 'Take the last point back',
  },

  newRock: {
    heading: 'New rock',
    reading: 'Reading the classes …',
    name: 'What is it called?',
    rockClass: 'Class that was ordered',
    source: 'Where does it come from?',
    newSource: 'A quarry or pit not listed',
    sourceName: 'Name of that quarry or pit',
    specificGravity: 'Its specific gravity, as tested',
    angularity: 'Its rock is',
    angularities: { angular: 'Angular', rounded: 'Rounded' },
    note: (name: string) => `New rock: ${name}`,
  },
};
