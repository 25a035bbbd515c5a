export const pass = 'PASS';
export const fail = 'FAIL';
export const cannotTell = 'CANNOT TELL';
export const legsRuleNoLegLendsTime = 'Legs of the rule. No leg lends time to another.';
export const leg = 'Leg';
export const latestClockTime = 'Latest clock time';
export const longestTheReadingsAllow = 'Longest the readings allow';
export const byStraightLines = 'By straight lines';
export const verdict = 'Verdict';
export const longestReadingsAllowLast =
  'Longest the readings allow: last reading above the start to first reading at or below the end, the probe’s error on the unkind side. A pass rests on this; straight lines are for information.';
export const endOfCooking = 'End of cooking';
export const inLessThan = 'in less than';
export const within = 'within';
export const itsClockHasNotStarted = 'its clock has not started';
export const notShown = 'not shown';
export const cooling2 = (cooling: number) => `Cooling ${cooling}: `;
export const goodPractice2 = (goodMin: string) => `; good practice ${goodMin}`;
export const expected2 = (projectedMs: string) => `expected ${projectedMs}`;
