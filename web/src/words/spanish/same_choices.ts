/** Words to choose in forms that are written alike in English and in Spanish. */
export const sameChoices: Record<string, string> = {
  angular: 'angular',
  base: 'base',
  granular: 'granular',
  lognormal: 'lognormal',
  natural: 'natural',
  no: 'no',
  normal: 'normal',
  t: 't',
  ton: 'ton',
  trapezoidal: 'trapezoidal',
  triangular: 'triangular',
  usual: 'usual',
};
