/** The words of the pages that look into one item, compare, and design. */
export const studyEnglish = {
  names: {
    'other-rock': 'Other rock beside this',
    methods: 'Sizing methods side by side',
    filter: 'Soil, filter and rock',
    mix: 'Design its mix',
    submittals: 'Submittals beside what is required',
  },
  next: 'What to do:',

  compared: {
    matter: 'Matter',
    withMargin: (text: string, margin: string) => `${text}, margin ${margin}`,
    differs: 'Differs:',
    opens: ': open its steps',
    onlyDifferent: 'Only what differs',
    key: '≠ marks what differs from the first column.',
    nothingDiffers: 'Nothing differs.',
  },

  otherRock: {
    heading: (zone: string) => `Other rock for ${zone}`,
    help: 'What if other rock were used here? The same design is worked out again with it, and with what it takes to leave the same margin. Nothing of the site is changed.',
    choose: 'Choose what is other than specified.',
    asSpecified: 'as specified',
    source: 'Source',
    class: 'Class',
    angularity: 'Shape',
    angularities: [
      { value: 'angular', label: 'Angular' },
      { value: 'rounded', label: 'Rounded' },
    ],
    specificGravity: 'Specific gravity',
    steps: 'How the margins were found',
  },

  submittals: {
    heading: (source: string) => `What was handed in of ${source}`,
    help: 'Every limit in force, and what each submittal shows against it. Open a result to see all that was handed in of that test.',
  },

  methods: {
    heading: (zone: string) => `Sizing methods for ${zone}`,
    help: 'What each published method asks for here, with what it was given. Methods disagree: read them side by side before one of them is believed.',
    governing: (method: string) => `What governs: ${method}`,
    none: 'No method says a size here yet. The findings say what is missing.',
    which: (shown: number, all: number) => `Methods shown: ${shown} of ${all}`,
    shown: 'Methods shown',
    inFlowCase: (method: string, flowCase: string) => `${method}, ${flowCase}`,
    outcome: 'What it comes to',
    asksFor: 'Asks for',
    classHas: 'The class has at least',
    governs: 'Governs',
    yes: 'governs',
    no: 'no',
    limitsNotKept: 'Limits not kept',
    allKept: 'all kept',
    noLimits: 'none stated',
    input: (meaning: string) => `Given: ${meaning}`,
    notAsked: '–',
  },
};
