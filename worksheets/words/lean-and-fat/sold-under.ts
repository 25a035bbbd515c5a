export const none = 'None of these';
export const yesAsBounds = 'Yes, as bounds';
export const noTheyAreOnlyJudged = 'No, they are only judged';
export const soldUnitedStatesUnderName = 'Sold in the United States under the name';
export const elsewhereOtherStandardsHoldAsk =
  'Elsewhere other standards hold: ask your authority. A pâté or terrine has no standard of its own here.';
export const finishedWeightOfWhatWentIn = 'Finished weight, of what went in';
export const afterCookChillOwnWeighings =
  'After the cook and the chill. By your own weighings: there is no usual figure that is safe here.';
export const doesTheCheapestBlendKeepTo = 'Does the cheapest blend keep to them?';
export const standardOf = (name: string) => `Standard of “${name}”`;
export const limit = 'Limit';
export const by = 'By';
export const n9Cfr31822B318 = (standard: string) =>
  `${standard} 9 CFR 318.22(b) and 318.19(a)(5); the rest is derived: mass balance.`;
