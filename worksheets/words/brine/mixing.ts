export const curingSaltForTheNitriteWanted = 'Curing salt for the nitrite wanted';
export const asWeighed = (names: string) => `${names}, as weighed`;
export const water = 'Water';
export const phosphate = 'Phosphate';
export const plainSalt = 'Plain salt';
export const sugar = 'Sugar';
export const curingSalt = 'Curing salt';
export const accelerator = 'Accelerator';
export const noneIsWanted = 'None is wanted';
export const derivedMassBalance = (how: string) => `${how} Derived: mass balance.`;
export const weigh = (grams: string) => `Weigh ${grams}`;
export const cannotTellChooseWayBrine = 'Cannot tell: choose the way of the brine';
export const cannotTellWeighTheMeat = 'Cannot tell: weigh the meat';
export const cannotTellWeighTheWater = 'Cannot tell: weigh the water';
export const noneNoneCanHelpNoWater = 'None, and none can help: no water holds that much salt';
export const noneNoneCanHelpCuringSalt =
  'None, and none can help: the curing salt alone brings more than is wanted';
export const cannotTellSettleSaltCuringSalt = 'Cannot tell: settle salt and curing salt first';
export const cannotTellAnInputIsMissing = 'Cannot tell: an input is missing';
export const asYouWroteIt = 'As you wrote it.';
export const allSaltBrineLessWhatCuring =
  'All the salt of the brine, less what the curing salt brings. A soak: salt wanted × what it is counted on. An injection: the pump must carry the salt of the pumped meat, s × (1 + pump × share that stays) ÷ (pump × share that stays).';
export const sugarWantedMeatWaterInjection =
  'Sugar wanted × meat and water. For an injection or a timed brine: the share of the meat ÷ the share of brine it takes up.';
export const acceleratorWantedMeatWater =
  'Accelerator wanted × meat and water. For an injection or a timed brine: the share of the meat ÷ the share of brine it takes up.';
export const phosphateWantedMeatInjection =
  'Phosphate wanted × meat. For an injection or a timed brine: ÷ the share of brine the meat takes up.';
export const noDoseNobodyHasWeighedHow =
  'No dose: nobody has weighed how much of this brine the meat takes up';
export const weigh2 = (doseG: string) => `Weigh ${doseG}`;
export const nitriteWantedMeatShareBrine =
  'Nitrite wanted in the meat ÷ the share of brine it takes up × all of the brine ÷ strength of the curing salt.';
export const nitriteWantedMeatWaterStrength =
  'Nitrite wanted × meat and water ÷ strength of the curing salt.';
export const derivedMassBalance2 = (value: string) => `${value} Derived: mass balance.`;
export const beforeRoundingGNearestStep = (exactG: string, weighingErrorFraction: string) =>
  `Before rounding: ${exactG} g. To the nearest step of the scale, and down where up would break the limit; the last digit is worth ± ${weighingErrorFraction}.`;
export const noMoreMgKgCanAimed = (ceilingPpmTarget: string) =>
  `No more than ${ceilingPpmTarget} mg/kg can be aimed at under this rule.`;
