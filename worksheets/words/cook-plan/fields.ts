export const theMouldIsOf = 'The mould is of';
export const itsWall = 'Its wall';
export const blankUsualThicknessStoneware8 =
  'Blank: the usual thickness. Stoneware 8 mm, cast iron 4 mm, tinplate 0.5 mm.';
export const overItsTop = 'Over its top';
export const coreWhenItGoesIn = 'Core when it goes in';
export const mixWhereFormulaDoesNotSay = 'The mix, where the formula does not say';
export const waterOfTheMix = 'Water of the mix';
export const proteinOfTheMix = 'Protein of the mix';
export const fatOfTheMix = 'Fat of the mix';
export const mouldComesWorksheetMouldLining =
  'The mould comes from the worksheet Mould, lining and fill: measure it there first. Mould: ______ × ______ × ______ mm.';
export const plannedFor = 'Planned for';
export const notChosenNoCurve = 'Not chosen: no curve';
export const deepestDecidesWhenOvenEmpty =
  'The deepest decides when the oven is empty and the chiller is needed.';
export const cookedIn = 'Cooked in';
export const steamOvenAt = 'Steam oven at';
export const waterOfTheKettleAt = 'Water of the kettle at';
export const ovenAt = 'Oven at';
export const airOfTheOven = 'Air of the oven';
export const waterStandsAt = 'Water stands at';
export const overBaseMouldBlankOverTop = 'Over the base of the mould. Blank: over the top of it.';
export const waterBoilsLowerUpThereBlank =
  'Water boils lower up there. Blank: the sea. The thermometer check shares it.';
export const coveredLidFoilOverWholePan = 'Covered: lid or foil over the whole pan';
export const open = 'Open';
export const still = 'Still';
export const withItsFan = 'With its fan';
export const waterInThePan = 'Water in the pan';
export const waterGoesInAt = 'Water goes in at';
export const thePanIs = 'The pan is';
export const openBathStays7087C =
  'An open bath stays at 70 to 87 °C (158 to 189 °F) in most ovens; a covered one climbs to the boil.';
export const mouldsInThisPan = 'Moulds in this pan';
export const panLong = 'Pan, long';
export const panWide = 'Pan, wide';
export const panDeep = 'Pan, deep';
export const overBaseMouldBlankWorkedOut =
  'Over the base of the mould. Blank: worked out from water and pan.';
export const coreToReach = 'Core to reach';
export const blankTheLimitThatWasChosen = 'Blank: the limit that was chosen.';
export const keptInTheHeatFromThen = 'Kept in the heat from then on';
export const blankHoldLimitTablePrints =
  'Blank: the hold of that limit, as its table prints it. Nothing is worked out between two rows.';
export const restsFor = 'Rests for';
export const inARoomOf = 'in a room of';
export const underThePressFor = 'Under the press for';
export const coldBoardTopBlankNotPressed = 'In the cold, board on top. Blank: not pressed before the chill.';
export const inAirOf = 'in air of';
