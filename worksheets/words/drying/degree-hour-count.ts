export const degreeHoursSoFar = 'Degree-hours so far';
export const ofHours = (total: string, limit: string, unit: string) => `${total} of ${limit} °${unit} hours`;
export const cannotTellChooseRuleWriteEvery = 'Cannot tell: choose the rule, and write every stretch whole';
export const chamberThresholdHoursAddedUp =
  '(Chamber − threshold) × hours, added up over every stretch until pH 5.3; the highest temperature sets the limit. Which threshold and limit: by the rule you choose.';
export const chamberHoursAddedUpOverEvery = (threshold: number, unit: string, highest: string) =>
  `(Chamber − ${threshold} °${unit}) × hours, added up over every stretch until pH 5.3. A stretch below the threshold counts nothing and takes nothing off. The highest temperature, ${highest} °${unit}, sets the limit.`;
export const limitsMemoryCheckCurrentText = '; the limits are from memory, check the current text';
export const longestTimePh53Highest = 'Longest time to pH 5.3 at the highest of them';
export const hours = (longest: number) => `${longest} hours`;
export const limitChamberThresholdCutDown =
  'Limit ÷ (chamber − threshold), cut down to whole hours. Derived from the same table.';
