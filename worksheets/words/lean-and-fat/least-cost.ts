export const findTheCheapestBlend = 'Find the cheapest blend';
export const beingWorkedOut = 'Being worked out …';
export const somethingChangedSinceAskAgain =
  'Something was changed since. Ask again for an answer that fits.';
export const theCheapestBlend = 'the cheapest blend';
export const whatHoldsItBack = 'What holds it back';
export const noBoundHoldsBackNothingWould =
  'No bound holds it back: nothing would make it cheaper but other prices.';
export const derivedLinearProgramming = (worth: string) => `${worth} Derived: linear programming.`;
export const theShortestWayOut = 'The shortest way out';
export const whatWouldDoAlone = 'What would do alone';
export const derivedLinearProgramming2 = (relax: string) => `${relax} Derived: linear programming.`;
export const theBlendWereThatGranted = 'The blend, were that granted';
export const theBlend = 'The blend';
export const material = 'Material';
export const share = 'Share';
export const weight = 'Weight';
export const cost = 'Cost';
export const unnamedMaterial = 'Unnamed material';
export const costOfTheCheapestBlend = 'Cost of the cheapest blend';
export const derivedLinearProgramming3 = (leastCost: string) => `${leastCost} Derived: linear programming.`;
export const theSameAKilogram = 'The same, a kilogram';
export const costDividedKilogramsDerived = 'Cost divided by the kilograms. Derived.';
