/** Opening a site and what may be wrong with its files. */
import { counted, problem } from '../sentences';

export const siteFiles = {
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

  newSite: {
    heading: 'Begin a new site',
    name: 'What is the site called?',
    begin: 'Begin it',
    note: 'A new site',
  },

  problemList: {
    heading: (label: string) => `“${label}” cannot be assessed yet`,
    intro: (number: number) =>
      `${counted(number, 'thing needs', 'things need')} to be put right. Nothing was changed in your files, and nothing was guessed.`,
    allowed: 'Allowed:',
  },

  problems: {
    noDocument: (number: number) =>
      problem(
        'no-site-document',
        '',
        `There is no site document in what you chose (${counted(number, 'file', 'files')}).`,
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
};
