import type { Slot } from '../slot.ts';

export const foodTheBatch = 'Food, the batch';
export const cannotTellPriceYieldMixMissing = 'Cannot tell: a price, a yield or the mix is missing';
export const derived = (foodCost: string, rounding: string) => `${foodCost} ${rounding} Derived.`;
export const labour = 'Labour';
export const notKnown = 'Not known';
export const handsHoursTimesRateDerived = 'Hands-on hours times the rate. Derived.';
export const foodLabourAndOverhead = 'Food, labour and overhead';
export const cannotTellFoodLabourOverhead = 'Cannot tell: food, labour or overhead is missing';
export const derived2 = (fullCost: string) => `${fullCost} Derived.`;
export const foodAFinishedKilogram = 'Food, a finished kilogram';
export const foodDividedFinishedKilograms = 'Food divided by the finished kilograms. Derived.';
export const foodAPortion = 'Food, a portion';
export const foodDividedWholePortionsEnds =
  'Food divided by the whole portions: ends and crumbs were paid for. Derived.';
export const allCostsAPortion = 'All costs, a portion';
export const foodLabourOverheadDividedWhole =
  'Food, labour and overhead divided by the whole portions. Derived.';
export const aPortionBeforeTax = 'A portion, before tax';
export const cannotTellCostPortionShare = 'Cannot tell: the cost of a portion or the share is missing';
export const hereAnd = (base: string, shareFraction: string) => ` Here ${base} and ${shareFraction}.`;
export const commonPracticeNoSourceDerived = (priceWorkings: string, base: Slot): Slot => [
  priceWorkings,
  ' Common practice, no source; derived.',
  base,
  ' Not cost plus that share of the cost, which leaves less.',
];
export const aPortionWithTax = 'A portion, with tax';
export const cannotTellPriceTaxMissing = 'Cannot tell: the price or the tax is missing';
export const taxSaleBearsOwnAuthoritySay = (tax: string) =>
  `${tax} Which tax a sale bears is for your own authority to say.`;
