export const meatMouldAndSlice = 'Meat, mould and slice';
export const panade = 'Panade';
export const partsOfThePanade = 'Parts of the panade';
export const part = 'Part';
export const grams = 'Grams';
export const lot = 'Lot';
export const eggAndCream = 'Egg and cream';
export const otherBinders = 'Other binders';
export const noneYet = 'None yet';
export const garnish = 'Garnish';
export const asBoughtG = 'As bought, g';
export const leftAfterPreparing = 'Left after preparing, %';
export const readyG = 'Ready, g';
export const pieceMm = 'Piece, mm';
export const whatTheyBring = 'What they bring';
export const listPreparingWhatWeighHowSmall =
  'A list for preparing: what to weigh, how small to cut, by when it must be cold.';
