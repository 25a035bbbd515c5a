export const ruleTargetAndScale = 'Rule, target and scale';
export const curingSalt = 'Curing salt';
export const noCuringSaltOnTheBench = 'No curing salt on the bench yet';
export const curingSaltInGramsOnly = 'Curing salt, in grams only';
export const nitriteByThePack = 'Nitrite by the pack, %';
export const nitrateByThePack = 'Nitrate by the pack, %';
export const lot = 'Lot';
export const plannedG = 'Planned, g';
export const onTheScaleG = 'On the scale, g';
export const nitriteInTheBatch = 'Nitrite in the batch';
export const againstTheRule = 'Against the rule';
export const cannotTellNothingOnTheBench = 'CANNOT TELL: nothing on the bench yet';
export const plainSalt = 'Plain salt';
export const twoPeopleAtTheScale = 'Two people at the scale';
export const oneWeighsAnotherReadsScalePack =
  'One weighs, another reads the scale and the pack before it goes in.';
