export const writeIntoTheFormula = (what: string) => `Write ${what} into the formula`;
export const lineSameIngredientTakesNew =
  'A line of the same ingredient takes the new weight, and its lot and weighing are cleared; the others are added. All else stays.';
export const theBlendStandsInTheFormula = 'The blend stands in the formula.';
export const putTheOldLinesBack = 'Put the old lines back';
