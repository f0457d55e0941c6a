/** The walk along placed work, and problems met on it. */
export const walk = {
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
};
