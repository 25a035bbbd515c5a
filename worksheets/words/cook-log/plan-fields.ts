export const whoseRuleOnCooking = 'Whose rule on cooking';
export const notChosenNoLimitCanBe = 'Not chosen: no limit can be judged';
export const oneAuthorityEnforcesRulesNever = 'The one your authority enforces. Rules are never blended.';
export const oneLimitCFHeldChoose =
  'The one limit: ______ °C (______ °F), held ______. Choose the rule set first; then its limits are offered here.';
