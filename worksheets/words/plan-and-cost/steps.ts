export const noStepYetPutUsualOnes =
  'No step yet. Put in the usual ones and change what your kitchen does otherwise.';
export const beginNotBeforeDerivedDurations = (latest: string, earliest: string) =>
  `Begin by: ${latest} Not before: ${earliest} Derived. Durations marked default are common practice, no source.`;
export const atLeast = 'At least';
export const atMost = 'At most';
export const notBefore = 'Not before';
export const beginBy = 'Begin by';
export const itsNameHere = 'Its name here';
export const ownNameFor = (name: string) => `Own name for: ${name}`;
