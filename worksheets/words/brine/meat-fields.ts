export const wayOfTheBrine = 'Way of the brine';
export const notChosenNothingIsWorkedOut = 'Not chosen: nothing is worked out';
export const countingOfTheNitrite = 'Counting of the nitrite';
export const notChosenBetweenLesserAll = 'Not chosen: between the lesser and all of it';
export const twoUnitedStatesPlanNamesOne =
  'The two of the United States. Your plan names one. They can differ five-fold.';
export const allTheMeatWithoutSkin = 'All the meat, without skin';
export const allTheMeatWithItsSkin = 'All the meat, with its skin';
export const onlyWhereSkinStaysTenthTaken = 'Only where the skin stays on. A tenth is taken off for it.';
export const heaviestPiece = 'Heaviest piece';
export const rulesCountHamsDaysWeight = 'For the rules that count a ham’s days by its weight.';
export const thickestPlace = 'Thickest place';
export const waterInTheMeat = 'Water in the meat';
export const leanMuscleHoldsAbout72Common = 'Lean muscle holds about 72 %: common practice, no source.';
