/**
 * Every word of the screens, in one place, so that another language is another object of this
 * shape. Names, phrases and sentences about the site come from the engine and are not here.
 */
import type { FailureKind } from './engine_messages';
import type { Problem, UnitSystem } from './findings';
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
    device:
      'Read from files on this device. Nothing is sent anywhere, and nothing is kept after you close the page.',
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
    source: 'Source',
    given: (origin: string) => (origin ? `given: ${origin}` : 'given'),
  },

  open: {
    button: 'Open another site',
    heading: 'Open another site',
    what: 'A site is a file site.json together with the CSV files it names. Choose all of them, choose their folder, or drop either anywhere on this page. They are read on this device and sent nowhere.',
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
    copy: 'Copy the table',
    copied: 'Copied.',
    save: 'Save the table (CSV)',
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
