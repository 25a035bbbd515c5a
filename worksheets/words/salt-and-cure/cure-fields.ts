export const whoseRuleOnNitrite = 'Whose rule on nitrite';
export const notChosenNoLimitCanBe = 'Not chosen: no limit can be judged';
export const oneAuthorityEnforcesRulesNever = 'The one your authority enforces. Rules are never blended.';
export const nitriteWantedAsSodiumNitrite = 'Nitrite wanted, as sodium nitrite';
export const putMixingWeightRuleCounts = 'Put in at mixing, on the weight that rule counts on.';
export const smallestStepOfTheScale = 'Smallest step of the scale';
export const whatLastDigitMoves01 = 'What the last digit moves by: 0.1 or 1, say.';
export const saltWantedEverythingBowl = 'Salt wanted, of everything in the bowl';
export const allSourcesTogetherCuringSalt =
  'From all sources together, curing salt and bacon included. A lining counts in the slice, not here.';
export const weighedBy = 'Weighed by';
export const checkedBy = 'Checked by';
