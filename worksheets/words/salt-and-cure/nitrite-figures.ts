export const cannotTell = 'cannot tell';
export const weightsOffScalePlanStandsLines =
  'By the weights off the scale; the plan stands in for lines not weighed yet.';
export const planNothingHasBeenWeighedYet = 'By the plan: nothing has been weighed yet.';
export const mgAsSodiumNitrite = (nitriteG: string) => `${nitriteG} mg as sodium nitrite`;
export const gramsCuringSaltStrengthWhat = (nitriteG: string) =>
  `Grams of curing salt × its strength, and what cured ingredients bring by their makers, added up: ${nitriteG}. Divided by the kilograms it is counted on.`;
export const liningDosedNothingBelongs =
  'The lining is dosed with nothing: it belongs to neither the meat block nor the bowl. Limits on the product are judged on the worse of the two, the mix alone and the mix with its lining.';
export const ion06668WeightNitriteSodium =
  'As ion × 0.6668: the weight of nitrite in sodium nitrite (46.0055 ÷ 68.9953, derived from atomic weights).';
export const notKnown = 'not known';
export const nitritePutInFromEverySource = 'Nitrite put in, from every source';
export const countedOn = 'Counted on';
export const weight = 'Weight';
export const asSodiumNitrite = 'As sodium nitrite';
export const asNitriteIon = 'As nitrite ion';
export const atWorstAsSodiumNitrite = 'At worst, as sodium nitrite';
export const asPlanned = 'As planned';
export const meatBlock = 'Meat block';
export const everythingInTheBowl = 'Everything in the bowl';
export const withTheLining = 'With the lining';
export const unnamedLine = 'Unnamed line';
export const noKnownEnd = 'no known end';
export const makersFigureNotKnownCounted = (highG: string) =>
  `its maker’s figure is not known; counted from nothing to ${highG}`;
export const bringsMgByItsMaker = (lowG: string) => `brings ${lowG} mg by its maker`;
export const reckonedElsewhere =
  'Cannot tell here. This batch has a brine or a dry cure: nitrite in the meat is reckoned and judged on that worksheet, not from the bare meat of the formula.';
