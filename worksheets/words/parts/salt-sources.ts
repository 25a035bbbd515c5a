export const notKnown = 'not known';
export const atLeast = (minFraction: string) => `at least ${minFraction}`;
export const noLineFormulaBringsSaltYet = 'No line of the formula brings salt yet.';
export const unnamedLine = 'Unnamed line';
export const linesWithATraceEach = (length: number) => `${length} lines with a trace each`;
export const saltByWhereItComesFrom = 'Salt by where it comes from';
export const from = 'From';
export const weight = 'Weight';
export const saltInIt = 'Salt in it';
export const salt = 'Salt';
export const allSources = 'All sources';
export const andMore = (sources: string) => `${sources} and more`;
export const weightShareSaltOffPackWhere =
  'Weight × its share of salt: off the pack where it was typed, else by the composition table. All sources ÷ everything in the bowl. Derived: mass balance.';
