export const press = 'Press';
export const rule = 'Rule';
export const chill = 'Chill';
export const readings = 'Readings';
export const legs = 'Legs';
export const deviation = 'Deviation';
export const theCoolingRule = 'The cooling rule';
export const howItIsChilled = 'How it is chilled';
export const legByLeg = 'Leg by leg';
export const cannotTellNothingOnTheBench = 'CANNOT TELL: nothing on the bench yet';
export const byEveryRuleSet = 'By every rule set';
export const deviationAndCorrectiveAction = 'Deviation and corrective action';
export const growthForInformation = 'Growth, for information';
export const publishedModelsFoodsMeasured =
  'By published models, for the foods they were measured in. It turns no fail into a pass and no pass into a fail.';
export const keptCold = 'Kept cold';
export const whatHappenedDecisionAbout =
  'What happened · decision about the product · cause · prevention · by whom, when.';
export const notYetComputedNoReadingNo = 'Not yet computed: no reading, no verdict';
export const probesTheirErrorsAndMoulds = 'Probes, their errors and moulds';
