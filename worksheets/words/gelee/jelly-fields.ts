export const liquidToSet = 'Liquid to set';
export const soakingWaterWineAllElseGoes = 'With the soaking water, wine and all else that goes in.';
export const setWith = 'Set with';
export const whatItIsFor = 'What it is for';
export const strength = 'Strength';
export const agar = 'agar';
export const theUse = 'the use';
export const grams100MlLiquidBlankMiddle = (value: string) =>
  `Grams to 100 mL of the liquid. Blank: the middle of what ${value} wants.`;
export const bloomTheStrengthIsToldFor = 'Bloom the strength is told for';
export const form = 'Form';
export const grade = 'Grade';
export const bloomAtHand = 'Bloom at hand';
export const offPackUntilTypeOneMiddle =
  'Off the pack. Until you type one, the middle of the grade is taken.';
export const readItOffThePack = 'Read it off the pack.';
export const oneSheetWeighs = 'One sheet weighs';
export const weighTenDivideBlankUsualGrade = 'Weigh ten and divide. Blank: usual for the grade.';
export const ruleBetweenBlooms = 'Rule between blooms';
export const madeOf = 'Made of';
export const packGuestsLabelsNeedKnow = 'By the pack. Guests and labels need to know.';
export const stockSetsByItself = 'Stock sets by itself';
export const gelatineLiquidPlateTest0Water = 'As gelatine of the liquid, by a plate test. 0: water.';
export const phOfTheLiquid = 'pH of the liquid';
export const meterPaperBlankUnknownNothing =
  'By meter or paper. Blank: unknown, and nothing is added for acid.';
export const alcoholByVolumeOfTheLiquid = 'Alcohol, by volume of the liquid';
export const sugar = 'Sugar';
export const roomInsideTheCrusts = 'Room inside the crusts';
export const allPiesTogetherBeforeFilling = 'All pies together, before the filling shrank.';
export const jellyWhenPoured = 'Jelly when poured';
export const coreWhenPoured = 'Core when poured';
