/** Measuring on photos. */
import { counted } from '../sentences';

export const photoScreens = {
  heading: (lot: string) => `Photos: ${lot}`,
  name: 'Photos',
  nameAt: (place: string) => `Photos, ${place}`,
  note: (photos: number) => `Measured on ${counted(photos, 'photo', 'photos')}`,

  how: 'How are the stones measured?',
  ways: {
    outlines: {
      name: 'Find the stones',
      what: 'The stones on each photo are outlined on this device; you look them over and mend them.',
    },
    taps: {
      name: 'Tap the stones',
      what: 'You tap both ends of both visible axes of the stone under each point of a grid: some three minutes a photo.',
    },
  },
  lies: 'How does the rock lie?',
  lying: { heap: 'In a heap or pile', layer: 'In a placed layer' },
  place: 'Where on it?',
  caution: 'Keep off slopes that may slide, and out from under loads and buckets.',
  begin: 'Begin',

  guide: {
    heading: 'Taking the photo',
    points: [
      'Stand square to the face of the rock: an oblique photo tells less.',
      'Let the picture be 12 to 14 median stones wide, and fill it with rock.',
      'Lay two balls of known size on the rock, one high and one low, or a staff with two marks. Both must lie on the rock, not in front of it.',
      'A printed marker board on a stiff plate does as well, laid flat on the rock; two of them in an oblique view.',
      'Clouds or open shade are better than sun. Hold still; wipe the lens.',
      'Take three or more photos of places that do not overlap.',
    ],
  },
  printBoards: 'Marker boards to print, for a sheet of Letter or A4',
  printBoard: (board: number) => `Board ${board}`,
  boardFile: (board: number) => `marker-board-${board}.svg`,
  take: 'Take or choose a photo',
  another: 'Another photo',
  working: (share: number) => `Finding the stones: ${Math.round(100 * share)} %`,
  readingPhoto: 'Reading the photo …',
  cancel: 'Stop',
  cancelled: 'Stopped. Nothing was measured on that photo.',
  twice: 'This photo is measured here already.',
  refused: (file: string, why: string) => `${file}: ${why}`,
  photos: 'Photos',
  photo: (number: number) => `Photo ${number}`,
  leaveOut: 'Leave this photo out',
  elsewhere: 'The picture is kept on another device; what was drawn on it is here.',

  steps: { scale: 'Scale', stones: 'Stones', largest: 'Largest stone', check: 'Check' },
  step: 'What is drawn',
  zoomIn: 'Nearer',
  zoomOut: 'Farther',
  whole: 'Whole photo',
  keys: 'Arrow keys move the cross, Enter taps, plus and minus zoom, 0 shows the whole photo, Escape gives up a line.',
  picture: (number: number, tool: string) => `Photo ${number}: ${tool}`,

  view: 'How did you look at the rock?',
  views: {
    'straight on': 'Square to its face, up to 30° off',
    oblique: 'Obliquely, as one stands in front of a pile',
  },
  scaleBy: 'What tells the scale?',
  scales: { balls: 'Balls on the rock', staffs: 'A staff on the rock' },
  tapBall: 'Tap the middle of a ball, then its edge. Drag either to mend it.',
  tapStaff: 'Tap both marks of the staff. Drag either to mend it.',
  ball: (number: number) => `Ball ${number}: diameter`,
  staff: (number: number) => `Staff ${number}: length between its marks`,
  unitOf: (label: string) => `Unit: ${label}`,
  boardOn: (board: number, edge: string) =>
    edge === '' ? `Board ${board}` : `Board ${board}: ${edge}`,
  board: (board: number) => `Board ${board}: edge of a dark square, as printed`,
  knownBoard: (board: number) =>
    `Board ${board} is on this photo. Its size is stated elsewhere in this site; measure the print where you are not sure that it is the same.`,
  newBoard: (board: number) =>
    `Board ${board} is on this photo, and this site does not know it: measure the edge of one of its dark squares on the print.`,
  takeEdge: (edge: string) => `It is ${edge}, as stated`,
  removeBoard: (board: number) => `Remove board ${board}`,
  removeBall: (number: number) => `Remove ball ${number}`,
  removeStaff: (number: number) => `Remove staff ${number}`,
  scaleError: 'How far off may the scale be, in two cases of three?',
  scaleErrors: {
    '': 'Choose',
    '2 %': '2 %',
    '3 %': '3 %',
    '5 %': '5 %',
    '8 %': '8 %',
    '10 %': '10 %',
  },
  noMark: 'Nothing tells the scale yet.',
  statedBalls: 'Look that each circle fits its ball, then state its diameter.',
  largest: 'Largest stone in sight, by tape',

  largestStart:
    'Tap one end of the largest stone in sight, where it is longest. Drag an end to mend it.',
  largestEnd: 'Tap its other end.',
  largestElsewhere:
    'The largest stone is marked on another photo: tap here where this one shows a larger one.',
  removeLargest: 'Remove the largest stone',

  check: {
    what: 'Do the outlines hold? You look at 30 of them, spread over the photos, and say of each whether it is right. Then you are told how far sizes are off, and whether the result may stand.',
    begin: 'Look at 30 outlines',
    anew: 'Begin the check anew',
    nothing: 'There is nothing to look at: no stone is outlined.',
    done: (done: number, all: number) => `${done} of ${all} outlines looked at`,
    look: 'Does the yellow outline go round the stone under the cross? If not, tap one end of the longest visible axis of that stone.',
    answers: {
      'as outlined': 'The outline is right',
      'mostly hidden': 'Mostly hidden: skip',
      'not rock': 'No rock here',
    },
    back: 'Last answer back',
  },

  tool: 'Tool',
  tools: {
    look: { name: 'Look', what: 'Drag to move, two fingers or the wheel to zoom.' },
    join: { name: 'Join', what: 'Tap the pieces of one stone, one after the other.' },
    cut: { name: 'Cut', what: 'Draw a line across a stone, from side to side.' },
    remove: { name: 'Remove', what: 'Tap an outline that is no stone.' },
    draw: { name: 'Draw', what: 'Draw once round a stone that was missed.' },
    'not rock': { name: 'Not rock', what: 'Draw round what is no rock: all outlines within go.' },
  },
  undo: 'Take back',
  stones: (number: number) => `${counted(number, 'stone', 'stones')} outlined on this photo.`,
  missed: 'There is no outline there.',

  ends: [
    'Tap one end of the longest visible axis of the stone under the cross.',
    'Tap its other end.',
    'Now across: tap one end of the widest visible axis across it.',
    'Tap its other end.',
  ],
  tapBack: 'Last tap back',
  hidden: 'Mostly hidden: skip',
  noRock: 'No rock here',
  nodesDone: (done: number, all: number) => `${done} of ${all} points`,
  allDone: 'All points of this photo are done. Take another photo, or keep it.',

  waiting: 'Nothing is measured yet: set the scale, then tap the first stone.',
  mind: 'What to mind',
  keep: 'Keep it',
  notKept: 'This is not kept yet:',
  drop: 'Throw this away',
  dropWhat: (photos: number) =>
    `What was drawn on ${counted(photos, 'photo', 'photos')} will be gone. This cannot be taken back.`,
  dropYes: 'Throw it away',
  dropNo: 'Go on measuring',
};
