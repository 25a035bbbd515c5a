export const takeTheWeightsOfTheFormula = 'Take the weights of the formula';
export const leanLiverOffalFatLiquidEgg =
  'Lean with liver and offal, fat, liquid with egg. Temperatures stay yours.';
