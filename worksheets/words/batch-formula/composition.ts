import type { Slot } from '../slot.ts';

export const cannotTellAWeightIsMissing = 'Cannot tell: a weight is missing';
export const cannotTellBetweenWhatUnknown = (minFraction: string, maxFraction: string) =>
  `Cannot tell: between ${minFraction} and ${maxFraction}, by what the unknown lines hold`;
export const weightsScaleShowedPlanStands =
  'Weights as the scale showed them; the plan stands in for lines not weighed yet.';
export const anUnnamedLine = 'an unnamed line';
export const stillNeededForTheWeightOf = (formulaFigureNames: Slot, join: string): Slot => [
  'Still needed for ',
  formulaFigureNames,
  ': the weight of ',
  join,
  '.',
];
export const everythingInTheBowl = 'Everything in the bowl';
export const meatBlock = 'Meat block';
export const whatMixMadeFarKnown = 'What the mix is made of, as far as it is known';
export const whatTheMixIsMadeOf = 'What the mix is made of';
export const fat = 'Fat';
export const protein = 'Protein';
export const water = 'Water';
export const waterToProtein = 'Water to protein';
export const fatToProtein = 'Fat to protein';
export const withItsLining = 'With its lining';
export const mixAndLining = 'Mix and lining';
export const fatAsSliced = 'Fat as sliced';
export const saltAsSliced = 'Salt as sliced';
export const salt = 'Salt';
