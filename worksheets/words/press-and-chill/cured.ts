export const curedEnoughForThisRule = 'Cured enough for this rule.';
export const notCuredEnoughRuleChooseRule =
  'NOT cured enough for this rule: choose a rule for uncured products.';
export const cannotTellWhetherCuredEnough =
  'CANNOT TELL whether it is cured enough: fill in the formula and the curing salt.';
export const tooMuchLiverCountCureChoose =
  'Too much liver to count on the cure: choose a rule for uncured products.';
export const ruleAsksNoCureHoldsUncured = 'This rule asks for no cure: it holds for uncured products too.';
export const oneWayInFullIsEnough = ' One way in full is enough.';
export const whatTheRuleAsksOfThe = 'What the rule asks of the cure';
export const way = 'Way';
export const condition = 'Condition';
export const asked = 'Asked';
export const thisBatch = 'This batch';
export const met = 'Met';
export const notKnown = 'not known';
export const cannotTell = 'cannot tell';
export const met2 = 'met';
export const notMet = 'NOT MET';
