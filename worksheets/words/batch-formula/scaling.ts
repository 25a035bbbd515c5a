export const byAFactor = 'by a factor';
export const toATotal = 'to a total';
export const toAMeatBlock = 'to a meat block';
export const toFillTheMoulds = 'to fill the moulds';
export const writeANumberAboveZero = 'Write a number above zero.';
export const batchCannotScaledWeightBlank =
  'The batch cannot be scaled: a weight is blank or cannot be read.';
export const batchCannotScaledPercentages =
  'The batch cannot be scaled: its percentages add up to more than everything.';
export const everythingPercentageWriteLeast =
  'Everything is a percentage: write at least one line in grams, or scale to a total.';
export const weightsLotsAlreadyWrittenDown =
  'Weights and lots already written down belong to the old batch and are cleared.';
export const writeTheseWeightsIntoFormula = 'Write these weights into the formula';
export const theFormulaWasScaled = 'The formula was scaled.';
export const putTheOldWeightsBack = 'Put the old weights back';
export const scale = 'Scale';
export const factor = 'Factor';
export const times = 'times';
export const n2Doubles12HalvesSalt =
  '2 doubles, 1/2 halves. Salt and curing salt follow exactly; taste strong spices above fivefold.';
export const everythingInTheBowl = 'Everything in the bowl';
export const meatBlock = 'Meat block';
export const leanFatLiverAndOffalTogether = 'Lean, fat, liver and offal together.';
export const forTheTestPoach = 'For the test poach';
export const leftOnBowlAndFiller = 'Left on bowl and filler';
export const allMouldsTake = 'All moulds take';
export const cannotTellFillMouldWorksheet = 'Cannot tell: fill in the mould worksheet first';
export const fillEachMouldTimesHowMany =
  'Fill of each mould times how many of it, by the mould worksheet. Derived: a sum.';
export const notKnown = 'not known';
export const beforeAndAfter = (factor: string) => `Before and after, × ${factor}`;
export const line = 'Line';
export const before = 'Before';
export const after = 'After';
export const unnamedLine = 'Unnamed line';
