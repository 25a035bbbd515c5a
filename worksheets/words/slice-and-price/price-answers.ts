import type { Slot } from '../slot.ts';

export const beforeTax = (exTax: string) => `${exTax} before tax`;
export const cannotTellCostSharePortions = 'Cannot tell: the cost, the share or the portions are missing';
export const commonPracticeNoSourceDerived = (price: string, more: string) =>
  `${price} ${more} Common practice, no source; derived. Shown to the smallest coin, reckoned unrounded.`;
export const withTaxNotKnown = 'With tax: not known.';
export const withTax = (incTax: string) => `With tax: ${incTax}.`;
export const thePlan = 'the plan';
export const costBatchNotCompleteWorkedOut = (a: Slot): Slot => [
  'The cost of the batch is not complete. It is worked out in ',
  a,
  ', from the price of every line.',
];
export const foodAPortionSold = 'Food, a portion sold';
export const cannotTellFoodCostPortions = 'Cannot tell: the food cost or the portions are missing';
export const foodCostBatchDividedPortions =
  'Food cost of the batch divided by the portions that are sold. Derived.';
export const aPortion = 'A portion';
export const aSlice = 'A slice';
export const aKilogram = 'A kilogram';
export const aPound = 'A pound';
