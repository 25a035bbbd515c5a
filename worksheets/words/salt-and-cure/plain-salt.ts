export const cannotTellAWeightIsMissing = 'Cannot tell: a weight is missing';
export const cannotTellSaltIngredientNot = 'Cannot tell: the salt of an ingredient is not known';
export const anUnnamedLine = 'an unnamed line';
export const noneNoneCanHelpIngredients = (carriedFraction: string, excessG: string, name: string) =>
  `None, and none can help: the ingredients bring ${carriedFraction} already, ${excessG} g too much. Most of it comes from ${name}.`;
export const plainSaltInAll = 'Plain salt in all';
export const finalGSaltOtherLinesBring = (
  targetFraction: string,
  totalG: string,
  targetFraction2: string,
  carriedSaltG: string,
  plainSalt: string,
) =>
  `${targetFraction} of the final ${totalG} is ${targetFraction2} g of salt. Other lines bring ${carriedSaltG} g, the curing salt among them. The rest is plain salt. ${plainSalt} Derived: mass balance.`;
export const derivedMassBalance = (plainSalt: string) => `${plainSalt} Derived: mass balance.`;
export const formulaHasSaltLinesShareOut = (length: number) =>
  `The formula has ${length} salt lines: share it out among them.`;
export const thisIsWhatTheFormulaSays = 'This is what the formula says.';
export const theFormulaSays = (listedG: string) => `The formula says ${listedG}.`;
export const writeThisSaltIntoTheFormula = 'Write this salt into the formula';
export const reckonedElsewhere =
  'Cannot tell here. This batch has a brine or a dry cure: its salt is reckoned on that worksheet. Add none to the formula for it.';
