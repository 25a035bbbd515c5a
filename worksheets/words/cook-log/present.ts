export const thisIsTheLimitThePlan = 'This is the limit the plan names.';
export const notLimitPlanNamesMeetingNote =
  'Not the limit the plan names: meeting it is a note and no pass, unless the plan is changed.';
export const ifItStaysAtThisTemperature2 = (logId: string) => `If it stays at this temperature${logId}`;
export const until2 = (text: string, printed: string, remainingS: string, untilMs: string) =>
  `${text}, ${printed}: ${remainingS}, until ${untilMs}`;
export const nothingRuleSetListsNoRow2 = (surelyC: string) =>
  `Nothing: the rule set lists no row at or below ${surelyC} °C. Heat on.`;
export const surelyCNowProbesErrorTaken2 = (surelyC: string, value: string) =>
  `Surely ${surelyC} °C now, the probe’s error taken off. ${value}`;
