/**
 * Every word of the screens, in one place, so that another language is another object of this
 * shape. Names, phrases and sentences about the site come from the engine and are not here.
 */
import { deskEnglish } from './desk/desk_strings';
import type { FailureKind } from './engine_messages';
import { positionEnglish } from './field/position_strings';
import type { Problem, UnitSystem } from './findings';
import { helpEnglish } from './help/help_strings';
import type { PhotoRefusal } from './record/photo';
import type { RecordTrouble } from './record/site_record';
import type { Appearance } from './settings';

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}

function problem(code: string, file: string, what: string, allowed: string): Problem {
  return { code, what, file, where: '', allowed };
}

const english = {
  product: 'Proofstone',
  skipToFindings: 'Skip to the findings',
  skipToContent: 'Skip to the page',

  units: {
    label: 'Units',
    names: { us: 'US', si: 'SI' } satisfies Record<UnitSystem, string>,
    meanings: {
      us: 'US customary units',
      si: 'SI units',
    } satisfies Record<UnitSystem, string>,
  },
  appearance: {
    names: {
      system: 'As device',
      light: 'Light',
      dark: 'Dark',
    } satisfies Record<Appearance, string>,
    button: (now: string, next: string) => `Appearance: ${now}. Change to: ${next}`,
  },

  headline: {
    opening: 'Opening the site and computing its findings …',
    working: 'Computing …',
    example: 'Invented example site',
    device: 'Read from files on this device and kept here. Nothing is sent anywhere.',
    deviceNotKept: 'Read from files on this device. Nothing is sent anywhere.',
    changedExample: 'Invented example site, with what you put into it. Kept on this device.',
    revision: (id: string) => `Revision ${id}`,
  },

  pictures: {
    heading: 'Pictures',
    inWords: 'The picture in words',
    notDrawable: 'This picture could not be drawn. Its description and the findings still hold.',
  },

  findings: {
    heading: 'Findings',
    show: 'Show findings by outcome',
    all: 'All',
    counted: (number: number) => (number === 1 ? 'finding' : 'findings'),
    none: 'The engine has nothing to say about this site yet.',
    reach: (id: string) => `reach ${id}`,
    zone: (id: string) => `zone ${id}`,
    lot: (id: string) => `lot ${id}`,
  },

  card: {
    governs: 'governs',
    next: 'What to do',
    margin: 'Margin',
    marginOf: (text: string) => `margin ${text}`,
    confidence: 'Confidence that it holds',
    values: 'Values',
    steps: 'Steps of the calculation',
    reasons: 'Why',
    limits: 'Limits of the method',
    kept: 'kept',
    notKept: 'not kept',
    sources: 'Sources',
    cautions: 'Cautions',
    link: 'Link to this finding',
    symbol: 'Symbol',
    meaning: 'Meaning',
    formula: 'Formula',
    value: 'Value',
    unit: 'Unit',
    source: 'Source',
    given: (origin: string) => (origin ? `given: ${origin}` : 'given'),
  },

  places: {
    label: 'Parts of Proofstone',
    findings: 'Findings',
    field: 'Field',
    desk: 'Desk',
  },

  desk: deskEnglish,

  help: helpEnglish,

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
      `${count(looks, 'look', 'looks')}, ${count(loads, 'load', 'loads')}`,
    seen: (when: string, who: string) =>
      `${new Date(when).toLocaleString()}${who ? `, ${who}` : ''}`,
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
    stones: (number: number) => (number === 1 ? 'stone' : 'stones'),
    binsLabel: 'Size of the stone',
    undo: 'Take back',
    finish: 'Done',
    note: (number: number) => `Stone count: ${count(number, 'stone', 'stones')}`,
    drop: 'Throw this count away',
    dropWhat: (number: number) =>
      `${count(number, 'stone', 'stones')} will be gone. This cannot be taken back.`,
    dropYes: 'Throw it away',
    dropNo: 'Keep counting',
  },

  form: {
    keep: 'Keep it',
    notKept: 'This is not kept yet:',
    allowed: (text: string) => `Allowed: ${text}`,
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
      number === 0 ? '' : `${count(number, 'photo', 'photos')} kept on this device.`,
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
    } satisfies Record<PhotoRefusal, string>,
  },

  position: positionEnglish,

  points: {
    next: (label: string, unit: string) => `${label}: next point, ${unit}`,
    add: 'Add',
    soFar: (number: number, fewest: number) =>
      `${count(number, 'point', 'points')} of ${fewest} or more.`,
    takeBack: 'Take the last point back',
  },

  walk: {
    back: 'Back to the walk',
    preparing: 'Preparing …',
    checks: 'Checks, in the order of work',
    holdPoint: 'hold point',
    asked: 'Asked',
    tolerance: 'Tolerance',
    how: 'Measured by',
    state: 'State',
    result: 'What do you see?',
    results: { pass: 'It passes', fail: 'It fails', 'not yet known': 'Not yet known' },
    byEye: 'And by eye?',
    measured: { '': 'As measured', pass: 'It passes', fail: 'It fails' },
    loadsOf: (material: string) => `Loads of ${material} since the last walk`,
    problem: 'Report a problem here',
    note: (check: string) => `Walk: ${check}`,
  },

  problemPage: {
    heading: 'Problem',
    back: 'Back',
    what: 'What is not as designed?',
    noSuchProblem: 'This site has no such problem.',
    open: 'Problems not closed',
    toDecide: 'To be decided',
    toClose: 'To be carried out and closed',
    decide: (name: string) => `Decide: ${name}`,
    whoDecides:
      'What is done about work that is not as designed is decided by whoever answers for the design; work is used as it is only with the approval of the engineer, by name.',
    decision: 'What is to be done?',
    kinds: {
      rework: 'Rework it',
      'remove and replace': 'Remove and replace it',
      'use as is': 'Use it as it is',
      'measure further': 'Measure further',
    } as Record<string, string>,
    approvedBy: 'Engineer who approves',
    decided: (name: string) => `Decided: ${name}`,
    close: (name: string) => `Close: ${name}`,
    beforeClosing: (decision: string) =>
      `Decided: ${decision}. Close it once that is done and has been looked at again.`,
    closed: (name: string) => `Closed: ${name}`,
    isClosed: 'This problem is closed.',
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

  newSite: {
    heading: 'Begin a new site',
    name: 'What is the site called?',
    begin: 'Begin it',
    note: 'A new site',
  },

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

  room: {
    held: (used: string, all: string) => `This device holds ${used} for it, of about ${all}.`,
    short:
      'Room on this device is getting short. Save the site, and free some room before more is taken down.',
  },

  conflicts: {
    heading: (number: number) => `${count(number, 'entry crosses', 'entries cross')} another`,
    intro:
      'Two people changed the same thing, and neither knew of the other. Both entries are in the record; say which is right.',
    stands: 'Stands:',
    passedOver: 'Does not stand:',
    removed: 'removed',
    anew: 'written anew',
    by: (author: string, time: string) => `${author}, ${new Date(time).toLocaleString()}`,
    right: 'What stands is right',
    takeOther: 'Take the other',
    note: 'Crossing entries settled',
  },

  open: {
    button: 'Open another site',
    heading: 'Open another site',
    what: 'A site is a file site.json together with the CSV files it names, or one ZIP of them. Choose all of them, choose their folder, or drop either anywhere on this page. They are read on this device and sent nowhere.',
    chooseFiles: 'Choose files',
    chooseFolder: 'Choose a folder',
    examples: 'Examples',
    openExample: (label: string) => `Open the example “${label}”`,
    close: 'Close',
    dropHere: 'Drop the files or the folder of a site',
    yourFiles: 'Your files',
    reading: 'Reading the files …',
  },

  save: {
    findings: 'Save the findings (JSON)',
    report: 'Save the report (HTML)',
    specification: 'Save the specification sheet (HTML)',
    site: 'Save the whole site (ZIP)',
  },

  papers: {
    heading: 'Papers to print and sign',
    'design-book': 'Design book',
    'placing-record': 'Placing record',
    lotAcceptance: (lot: string) => `Lot acceptance: ${lot}`,
    day: 'Day',
    'daily-report': 'Daily report',
    failed: 'The paper could not be written. Try again.',
  },

  quantities: {
    heading: 'Quantities and cost',
    counting: 'Counting …',
    none: 'The quantities could not be counted.',
    what: 'What',
    amount: 'Amount',
    cost: 'Cost',
    all: 'All zones',
    columns: ['Zone', 'What', 'Amount', 'Unit', 'How', 'Price', 'Cost'],
    notYetKnown: 'not yet known',
    inPart: (text: string) => `${text}, in part`,
    costOf: (text: string, from: string) => `Cost: ${text}. Prices: ${from}.`,
    save: 'Save the table (CSV)',
  },

  tables: {
    copy: 'Copy the table',
    copied: 'Copied: it can be put into a spreadsheet.',
    notCopied: 'The browser did not let it be copied.',
  },

  problemList: {
    heading: (label: string) => `“${label}” cannot be assessed yet`,
    intro: (number: number) =>
      `${count(number, 'thing needs', 'things need')} to be put right. Nothing was changed in your files, and nothing was guessed.`,
    allowed: 'Allowed:',
  },

  problems: {
    noDocument: (number: number) =>
      problem(
        'no-site-document',
        '',
        `There is no site document in what you chose (${count(number, 'file', 'files')}).`,
        'a file site.json, or exactly one other file that ends in .json',
      ),
    severalDocuments: (paths: string[]) =>
      problem(
        'several-site-documents',
        paths.slice(0, 3).join(', '),
        `There are ${paths.length} site documents, and it is not clear which one is meant.`,
        'one site at a time',
      ),
    tooLarge: (file: string) =>
      problem(
        'file-too-large',
        file,
        'This file is too large to be read here.',
        'files up to 64 MB',
      ),
    noArchive: (file: string) =>
      problem(
        'no-archive',
        file,
        'This is no whole ZIP file; it may have been cut off.',
        'the file as it was saved',
      ),
    archiveTooLarge: (file: string) =>
      problem(
        'archive-too-large',
        file,
        'This archive holds too much to be read here.',
        'up to 2000 files, 64 MB of tables and 256 MB of photos, unpacked',
      ),
    archiveLeadsOut: (file: string) =>
      problem(
        'archive-leads-out',
        file,
        'This archive holds names that lead out of its folder, so it is not opened.',
        'an archive that this application saved',
      ),
    notReadable: (file: string) =>
      problem(
        'file-not-readable',
        file,
        'The browser could not read this file; it may have been moved or changed meanwhile.',
        'choose the file again',
      ),
    notUtf8: (file: string) =>
      problem(
        'not-utf8',
        file,
        'This file is not UTF-8 text.',
        'JSON and CSV saved as UTF-8; from a spreadsheet, save the table as “CSV UTF-8”',
      ),
    notKept: () =>
      problem(
        'not-kept',
        '',
        'This device keeps no such site any more.',
        'one of the sites listed',
      ),
    engineSilent: () =>
      problem('engine-silent', '', 'The engine gave no answer.', 'load this page again'),
    exampleNotReached: (folder: string) =>
      problem(
        'example-not-reached',
        `examples/${folder}`,
        'The example could not be loaded.',
        'load this page again once the device is connected',
      ),
  },

  failures: {
    heading: 'The findings cannot be computed now',
    sentences: {
      unsupported:
        'This browser cannot run the engine. Use a current Chrome, Edge, Firefox or Safari, or update this one.',
      'not loaded':
        'The engine could not be loaded. Check the connection to where this page came from, then try again.',
      stopped:
        'The engine stopped twice while it worked on this site. Your files are unchanged. Try again; if it stops again, keep the files and report it, since no site should do this.',
      'too slow':
        'The engine gave no answer within a minute and was stopped. Close other programs on this device and try again.',
    } satisfies Record<FailureKind, string>,
    detail: 'What the browser reported',
    retry: 'Try again',
  },

  offline: {
    connectedStored:
      'The device is online. The application is stored and also works without a signal.',
    connectedStoring: 'The device is online. Storing the application for use without a signal …',
    connectedOnly:
      'The device is online. This browser does not store the application, so it needs a connection to open.',
    aloneStored: 'No signal. Everything here works without one.',
    aloneNotStored: 'No signal, and the application is not stored yet. Keep this page open.',
    install: 'Install on this device',
    newVersion: 'A new version of Proofstone is ready.',
    useNow: 'Load it now',
    later: 'Later',
  },

  cautions: {
    heading: 'Cautions',
    engineer:
      'Findings support, and never replace, the judgement of the licensed engineer responsible and local criteria.',
    engine: (version: string) => `Engine ${version}`,
  },
};

export type Strings = typeof english;

export const strings: Strings = english;
