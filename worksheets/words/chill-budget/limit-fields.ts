export const warmestItMayEnd = 'Warmest it may end';
export const blankFamilyFormulaCoarse12C =
  'Blank: by the family in the formula. Coarse 12 °C (54 °F), fine 10 °C (50 °F), mousseline 8 °C (46 °F): common practice, no source.';
export const temperatureOfTheIce = 'Temperature of the ice';
export const waterTheFormulaAllowsAsIce = 'Water the formula allows as ice';
export const blankNotKnownNothingSaidAbout = 'Blank: not known, and nothing is said about it.';
export const heatOfTheFat = 'Heat of the fat';
export const room = 'Room';
export const howThickTheMeatLies = 'How thick the meat lies';
export const edgeOfTheCubes = 'Edge of the cubes';
export const usual25MmCubes1520 =
  'Usual for 25 mm cubes: 15 to 20 min, until firm at the edge, not solid. Common practice, no source.';
export const freezer = 'Freezer';
