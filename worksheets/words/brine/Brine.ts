export const ruleProductAndScale = 'Rule, product and scale';
export const theMeatAndTheWay = 'The meat and the way';
export const theBrine = 'The brine';
export const injectedAndTakenUp = 'Injected and taken up';
export const itsAgeAndItsCold = 'Its age and its cold';
export const curingSalt = 'Curing salt';
export const mixItColdInThisOrder = 'Mix it cold, in this order';
export const phosphateWillNotDissolveSalt =
  'Phosphate will not dissolve in salt water, and acid drives nitrite off as gas. Common practice, no source.';
export const strengthInEveryScale = 'Strength, in every scale';
export const turnOneScaleIntoAnother = 'Turn one scale into another';
export const nitriteByEachCounting = 'Nitrite, by each counting';
export const whenMeatAndBrineAreEven = 'When meat and brine are even';
export const againstTheRule = 'Against the rule';
export const cannotTellNothingOnTheBench = 'CANNOT TELL: nothing on the bench yet';
export const cardVatMixingOrderNeedles =
  'A card for the vat: the mixing order, the needles, the weights, the days.';
