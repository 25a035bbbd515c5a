export const whoseRuleOnCooling = 'Whose rule on cooling';
export const notChosenNoLegCanBe = 'Not chosen: no leg can be judged';
export const oneAuthorityEnforcesRulesNever =
  'The one your authority enforces. Rules are never blended, and passing one says nothing of another.';
export const outOfTheHeat = 'Out of the heat';
export const endLastHeatingCookLog = 'End of the last heating, as on the cook log.';
