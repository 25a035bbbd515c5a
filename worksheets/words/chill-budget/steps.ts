export const sources =
  'Heat contents: ASHRAE Handbook, Refrigeration 2006, chapter 9, with its ice below the freezing point, from memory; back fat by USDA SR28. Derived: conservation of energy.';
export const theMixEndsAt = 'The mix ends at';
export const cannotTellWeightTemperature = 'Cannot tell: a weight, a temperature or a pass is missing';
export const workOfAPass = (work: string) => `Work of a pass: ${work}`;
export const hereKjInAll = (workJ: string) => `Here ${workJ} kJ in all.`;
export const leftOut = 'left out';
export const counted = 'counted';
export const meltingFatTruthLiesAbout = (value: string, endOtherFatC: string) =>
  `With the melting of fat ${value}: ${endOtherFatC}. The truth lies about between.`;
export const warmestThisMixMayEnd = 'Warmest this mix may end';
export const cannotTellTypeChooseFamily = 'Cannot tell: type it, or choose the family in the formula';
export const typedFamilyFormulaCommon =
  'As typed, or by the family of the formula: common practice, no source.';
export const stepByStep = 'Step by step';
export const step = 'Step';
export const mix = 'Mix';
export const warmerBy = 'Warmer by';
export const iceInTheMeat = 'Ice in the meat';
export const addedIceLeft = 'Added ice left';
export const broughtTogether = 'Brought together';
