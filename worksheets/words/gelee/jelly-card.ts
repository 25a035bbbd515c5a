export const jellyStrength = 'Jelly strength';
export const strengthsUseCommonPracticeNo = 'Strengths by use: common practice, no source; no rule set';
