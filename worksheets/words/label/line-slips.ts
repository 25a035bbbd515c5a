export const formulaHasNoIngredientsYet =
  'The formula has no ingredients yet. Write them there, or add what goes in below.';
