export const onTheScale = 'on the scale';
export const inTheFormula = 'in the formula';
export const underStepsScaleTooCoarseUse = (minScaleSteps: number) =>
  `That is under ${minScaleSteps} steps of the scale: too coarse. Use a finer scale or a larger batch.`;
export const itsLastDigitIsWorth = (
  massG: string,
  value: string,
  errorFraction: string,
  minScaleSteps: string,
) => `${massG} ${value}: its last digit is worth ± ${errorFraction}. ${minScaleSteps}`;
