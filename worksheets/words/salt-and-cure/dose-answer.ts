export const doseSource =
  'FSIS Directive 7620.3 (1995), comminuted products, solved for the weight of the mix. Nitrate is never dosed.';
export const curingSaltForTheNitriteWanted = 'Curing salt for the nitrite wanted';
export const weighG = (doseG: string) => `Weigh ${doseG} g`;
export const noDoseOneNumbersCannotUsed = 'No dose: one of the numbers cannot be used';
export const refusedNitriteWantedOverLimit = 'Refused: the nitrite wanted is over the limit of this rule';
export const refusedWhatOtherIngredients =
  'Refused: with what other ingredients bring it would be over the limit';
export const refusedCuringSaltTooWeak = 'Refused: this curing salt is too weak for the nitrite wanted';
export const refusedTooLittleScaleWeigh = 'Refused: too little for this scale to weigh';
export const cannotTellChooseWhoseRule = 'Cannot tell: choose whose rule on nitrite first';
export const cannotTellWriteNitriteWanted = 'Cannot tell: write the nitrite wanted';
export const noneNoNitriteIsWanted = 'None: no nitrite is wanted';
export const cannotTellWriteSmallestStep = 'Cannot tell: write the smallest step of the scale';
export const cannotTellTwoCuringSaltsDose =
  'Cannot tell: with two curing salts the dose is yours to share out';
export const cannotTellReadStrengthOffPack = 'Cannot tell: read the strength off the pack';
export const cannotTellWeightNotKnown = (basisWords: string) =>
  `Cannot tell: the weight of ${basisWords} is not known`;
export const writtenIntoTheFormula = 'Written into the formula.';
export const thisIsWhatTheFormulaSays = 'This is what the formula says.';
export const writeThisWeightIntoTheFormula = 'Write this weight into the formula';
export const ruleLetsMgKgSodiumNitrite = (ceilingPpm: string) =>
  `; this rule lets in ${ceilingPpm} mg/kg as sodium nitrite`;
export const curingSaltPlainSaltWillStand =
  ' The curing salt and the plain salt that will stand beside it are part of that weight, so both are solved together.';
export const nitriteWantedWeightStrength = (
  basis: string,
  targetPpm: string,
  ceilingPpm: string,
  value: string,
) =>
  `Nitrite wanted × weight of ${basis} ÷ strength of the curing salt. ${targetPpm} mg/kg is wanted${ceilingPpm}.${value}`;
export const beforeRoundingG = (exactG: string) => `Before rounding: ${exactG} g.`;
export const scaleGGivesMgKgItself = (
  doseG: string,
  ppm: string,
  allSourcesPpm: string,
  weighingErrorFraction: string,
) =>
  `On the scale ${doseG} g, which gives ${ppm} mg/kg by itself and ${allSourcesPpm} mg/kg with what is declared elsewhere. The last digit of the scale is worth ± ${weighingErrorFraction}. It is rounded down where up would pass the limit.`;
export const leastScaleCanWeighG50 = (leastG: string) =>
  `The least this scale can weigh is ${leastG} g: 50 of its steps. `;
export const noWeightIsGiven = (leastG: string) => `${leastG}No weight is given.`;
export const nitriteWantedWeightRuleCounts = (doseSource: string) =>
  `Nitrite wanted × the weight your rule counts it on ÷ strength of the curing salt, to the step of the scale and never over the limit. ${doseSource}`;
export const noneReckonedElsewhere =
  'None here: this batch has a brine or a dry cure. Its curing salt is dosed on that worksheet';
