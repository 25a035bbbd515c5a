export const casingsAndLinks = 'Casings and links';
export const sizesSpareCommonPracticeNo = 'Sizes and spare: common practice, no source; no rule set';
