export const whatThereIs = 'What there is';
export const materialsOnHand = 'Materials on hand';
export const material = 'Material';
export const fat = 'Fat, %';
export const protein = 'Protein, %';
export const water = 'Water, %';
export const priceAKg = 'Price, a kg';
export const stockKg = 'Stock, kg';
export const theNameItIsSoldUnder = 'The name it is sold under';
export const someNamesHaveStandardFatWater = 'Some names have a standard: fat, water or liver';
export const twoMaterialsToOneFatContent = 'Two materials to one fat content';
export const theSquareNotYetComputed = 'The square: not yet computed';
export const theCheapestBlendOfAllOf = 'The cheapest blend of all of them';
export const nothingIsAskedYet = 'Nothing is asked yet';
export const balanceOneCardBoxFatTest =
  'The balance on one card, with a box for the fat test of each material.';
