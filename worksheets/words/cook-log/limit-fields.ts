import { plural } from '../plural.ts';

export const chooseRuleSetFirstThenLimits = 'Choose the rule set first; then its limits are offered here.';
export const theOneLimitThePlanNames = 'The one limit the plan names';
export const notChosen = 'Not chosen';
export const noneOfThisSetMayJudge = 'None of this set may judge this batch';
export const meetingAnotherPairSetNoteNot = 'Meeting another pair of the set is a note, not a pass.';
export const fromMemoryCheckTheCurrentText = 'from memory, check the current text';
export const workedOutFromTheSource = 'worked out from the source';
export const commonPracticeNoSource = 'common practice, no source';
export const limitAtTheColdestPoint = 'Limit at the coldest point';
export const noHoldCanBeNamedFor = 'no hold can be named for this batch';
export const actionTemperatureWhatProbeMust = 'Action temperature: what the probe must show';
export const cannotTellProbesErrorNot = 'Cannot tell: the probe’s error is not entered';
export const anotherProbeHasNoErrorEntered = ' Another probe has no error entered.';
export const notForThisBatch2 = (label: string) => `${label} (not for this batch)`;
export const limitsOfThisSetNotOffered2 = (length: number) =>
  `${length} ${plural(length, { one: 'limit', other: 'limits' })} of this set not offered`;
export const limitPlusProbesErrorRoundedUp2 = (value: string) =>
  `Limit plus the probe’s error, rounded up, with its offset taken off: a probe that shows too much must show that much more.${value}`;
