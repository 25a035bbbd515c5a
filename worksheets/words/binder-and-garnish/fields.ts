export const meat = 'Meat';
export const blankLeanFatLiverOffalFormula = 'Blank: lean, fat, liver and offal of the formula.';
export const insideWidthOfTheMould = 'Inside width of the mould';
export const blankTheFirstMouldOfThe = 'Blank: the first mould of the batch.';
export const heightOfTheSlice = 'Height of the slice';
export const blankAsDeepAsThatMould = 'Blank: as deep as that mould is filled.';
export const thicknessOfASlice = 'Thickness of a slice';
export const panadeWantedCookedOfTheMeat = 'Panade wanted, cooked, of the meat';
export const n10Usual20MostCommonPractice = '10 % is usual, 20 % the most: common practice, no source.';
export const kindOfPanade = 'Kind of panade';
export const putsUsualPartsBreadFlourCommon =
  'Puts in its usual parts. Bread and flour: common practice; the others: from memory, no source.';
export const lostAsSteamInThePan = 'Lost as steam in the pan';
export const panadeCookedAndColdWeighed = 'Panade cooked and cold, weighed';
export const blankReckonedFromItsParts = 'Blank: reckoned from its parts.';
export const temperatureOfThePanadeAtMixing = 'Temperature of the panade at mixing';
export const egg = 'Egg';
export const wholeEggWithoutShellBeaten = 'Whole egg without its shell, beaten and weighed. 0: none.';
export const cream = 'Cream';
export const n35Fat0None = '35 % fat. 0: none.';
export const no = 'No';
export const yes = 'Yes';
export const soldUnitedStatesSausageWhose =
  'Sold in the United States as a sausage whose name limits binders';
