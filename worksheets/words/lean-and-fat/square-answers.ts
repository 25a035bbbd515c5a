import type { Slot } from '../slot.ts';

export const unnamedMaterial = 'Unnamed material';
export const theSquare = 'the square';
export const derivedMassBalanceSquareCommon = (square: string, lockedSquare: Slot): Slot => [
  square,
  ' ',
  lockedSquare,
  ' Derived: mass balance; the square is common practice, no source.',
];
export const sharesOfTheTwo = 'Shares of the two';
export const derived = (square: string) => `${square} Derived.`;
export const costOfTheBlend = 'Cost of the blend';
export const notKnownAPriceIsMissing = 'Not known: a price is missing';
export const eachWeightTimesPriceAddedUp = 'Each weight times its price, added up. Derived.';
