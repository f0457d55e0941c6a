/** Words about the handbook within the application. */
export const help = {
  place: 'Help',
  heading: 'Help',
  opening: 'Opening the handbook …',
  notOpened:
    'The handbook could not be opened. It is on the device once the application was opened with a connection.',
  back: 'Back',
  all: 'All of the handbook',
  search: 'Look for words',
  found: (number: number) =>
    number === 0
      ? 'No page holds all of these words.'
      : number === 1
        ? '1 page holds these words.'
        : `${number} pages hold these words.`,
  noSuchPage: 'The handbook has no such page.',
  aboutMethod: 'About this method',
  inTheField: 'How to do it',
  words: 'What the words mean',
  /** Said by languages that have not all of the handbook. */
  inEnglish: '',
  someInEnglish: '',
  /** Headings of its index, by its own; one left out stands as it is. */
  groups: {} as Record<string, string>,
  units: 'Figures of the handbook stand in the units of their sources.',
};
