export const wouldPass = 'would pass';
export const wouldFail = 'WOULD FAIL';
export const cannotTell = 'cannot tell';
export const everyRuleSetOwnClockOwn =
  'Every rule set on its own clock and its own legs. They do not nest: passing one says nothing of another, and only the chosen one rules.';
export const ruleSet = 'Rule set';
export const legsLongestTheReadingsAllow = 'Legs: longest the readings allow';
export const comesTo = 'Comes to';
export const chosenRules = '· chosen, rules';
export const longestTheReadingsAllow = (worstMin: string) => ` Longest the readings allow: ${worstMin}.`;
