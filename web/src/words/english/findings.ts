/** The findings, their pictures, quantities and papers. */
export const findings = {
  pictures: {
    heading: 'Pictures',
    inWords: 'The picture in words',
    notDrawable: 'This picture could not be drawn. Its description and the findings still hold.',
  },

  findings: {
    heading: 'Findings',
    show: 'Show findings by outcome',
    all: 'All',
    counted: (number: number): string => (number === 1 ? 'finding' : 'findings'),
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
    /** Shown where what is above is not the engine's own text. */
    asWritten: 'As the engine wrote it',
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

  save: {
    findings: 'Save the findings (JSON)',
    report: 'Save the report (HTML)',
    specification: 'Save the specification sheet (HTML)',
    site: 'Save the whole site (ZIP)',
  },

  papers: {
    heading: 'Papers to print and sign',
    /** Said by languages that papers are not written in. */
    inEnglish: '',
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
};
