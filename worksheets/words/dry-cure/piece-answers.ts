export const notCounted = 'No dose: in a salt box or under a rub nobody knows how much goes in';
export const cannotTell = 'cannot tell';
export const sugar = 'Sugar';
export const weigh = (sugarG: string) => `Weigh ${sugarG}`;
export const sugarWantedWeightMeatStepScale = 'Sugar wanted × weight of the meat, to the step of the scale.';
export const readyFromToTurnTheBag = (readyFrom: string, readyBy: string) =>
  `Ready from ${readyFrom} to ${readyBy}. Turn the bag every day.`;
export const curingSaltForTheNitriteWanted = 'Curing salt for the nitrite wanted';
export const weigh2 = (doseG: string) => `Weigh ${doseG}`;
export const nitriteWantedWeightMeatWithout = (targetPpm: string, greenG: string, nitriteFraction: string) =>
  `Nitrite wanted × weight of the meat without skin ÷ strength of the curing salt: ${targetPpm} mg/kg × ${greenG} ÷ ${nitriteFraction}. Derived: mass balance.`;
export const beforeRoundingGNearestStep = (exactG: string, ppm: string, weighingErrorFraction: string) =>
  `Before rounding: ${exactG} g. To the nearest step of the scale, and down where up would break the limit. That gives ${ppm} mg/kg; the last digit is worth ± ${weighingErrorFraction}.`;
export const ruleLetsMgKgMeatSodium = (ceilingPpmMeat: string) =>
  `This rule lets in ${ceilingPpmMeat} mg/kg of the meat, as sodium nitrite.`;
export const nitriteWantedWeightMeatWithout2 =
  'Nitrite wanted × weight of the meat without skin ÷ strength of the curing salt, to the step of the scale and never over the limit. Derived: mass balance.';
export const noWeightMeatLiesMoreSalt = 'No weight: the meat lies in more salt than it takes';
export const noneNoneCanHelpCuringSalt = (saltOverG: string) =>
  `None, and none can help: the curing salt alone brings ${saltOverG} g too much`;
export const cannotTellWeighMeatSettle = 'Cannot tell: weigh the meat, and settle the curing salt first';
export const plainSalt = 'Plain salt';
export const weigh3 = (plainSaltG: string) => `Weigh ${plainSaltG}`;
export const saltWantedWeightMeatLessSalt =
  'Salt wanted × weight of the meat, less the salt that the curing salt brings. All of a bag goes in, so every dose is a share of the meat. Derived: mass balance.';
export const byTheWeightsOffTheScale = 'by the weights off the scale';
export const byThePlan = 'by the plan';
export const inTheMeat = (value: string) => `In the meat, ${value}`;
export const what = 'What';
export const onTheMeat = 'On the meat';
export const onMeatAndCure = 'On meat and cure';
export const asNitriteIonOnMeatAnd = 'As nitrite ion, on meat and cure';
export const saltFromAllSources = 'Salt from all sources';
export const nitriteAsSodiumNitrite = 'Nitrite, as sodium nitrite';
export const weightAtTheLossWanted = 'Weight at the loss wanted';
export const weightWithoutSkin1LossDerived = 'Weight without skin × (1 − loss). Derived.';
export const saltThereSalt1LossSalt = (saltAtTargetFraction: string) =>
  `Salt there: ${saltAtTargetFraction}, salt ÷ (1 − loss). The salt stays, the water goes; drip takes salt along.`;
export const lostSoFar = 'Lost so far';
export const n1WeightNowWeightWithoutSkin = '1 − weight now ÷ weight without skin. Derived.';
