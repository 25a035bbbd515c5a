import type { Slot } from '../slot.ts';

export const writeTheFormulaFirst = 'Write the formula first';
export const theListIsMadeFromThe = (a: Slot): Slot => ['The list is made from the formula. ', a, '.'];
export const line = 'Line';
export const price = 'Price';
export const boughtBy = 'Bought by';
export const yieldAfterTrim = 'Yield after trim';
export const toBuy = 'To buy';
export const cost = 'Cost';
export const pricedFarLeastMuchRestNot = (foodKnown: string) =>
  `Priced so far: ${foodKnown}. At least that much; the rest is not known.`;
