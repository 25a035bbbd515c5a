export const writeTheseWeightsIntoFormula = 'Write these weights into the formula';
export const weightsLotsAlreadyWrittenDown =
  'Weights and lots already written down belong to the old size and are cleared.';
export const theFormulaWasScaledToThe = 'The formula was scaled to the plan.';
export const putTheOldWeightsBack = 'Put the old weights back';
