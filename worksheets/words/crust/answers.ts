export const habit = 'Common practice, no source.';
export const noSheet = 'Cannot tell: the mould, a measure or the overlap is missing';
export const base = 'Base';
export const baseAndWallsInOne = 'Base and walls, in one';
export const thePlanOfTheMould = 'The plan of the mould.';
export const stripForTheWall = 'Strip for the wall';
export const wayRoundOneOverlapDepthTwo = (habit: string) =>
  `Way round and one overlap, by depth and two overlaps. Way round an oval: Ramanujan’s first formula of 1914, from memory. ${habit}`;
export const lid = 'Lid';
export const pastryForOne = 'Pastry for one';
export const cannotTellSeeWhatStillNeeded = 'Cannot tell: see what is still needed below';
export const sheetsAlone = (sheetsG: string) => ` Sheets alone: ${sheetsG}.`;
export const derivedDensitySpareCommon = (mass: string, sheetsG: string) =>
  `${mass}${sheetsG} Derived; density and spare are common practice, no source.`;
export const pastryForAll = 'Pastry for all';
export const cannotTellPastryOneHowMany = 'Cannot tell: the pastry of one or how many is missing';
export const pastryForOneHowManyDerived = 'Pastry for one × how many. Derived.';
export const chimneys = 'Chimneys';
export const cannotTellLengthMouldMissing = 'Cannot tell: the length of the mould is missing';
export const holesOfToMmFunnelsTo = (
  places: string,
  holeMin: number,
  holeMax: number,
  funnelMin: number,
  funnelMax: number,
) => `${places}. Holes of ${holeMin} to ${holeMax} mm, funnels ${funnelMin} to ${funnelMax} mm tall.`;
export const roomInsideOneCrust = 'Room inside one crust';
export const cannotTellMeasureThickness =
  'Cannot tell: a measure or the thickness is missing, or no room is left';
export const derivedLittleTooLargeWhereLid = (cavity: string) =>
  `${cavity} Derived. A little too large where the lid is thicker.`;
export const inAllOfThem = (cavityTotalMl: string) => `${cavityTotalMl} in all of them`;
export const saltInThePastry = 'Salt in the pastry';
export const cannotTellPastrySaltOwnPaste =
  'Cannot tell: the pastry or the salt of your own paste is missing';
export const cannotTellPastryAllMissing = 'Cannot tell: the pastry for all is missing';
export const pastryForAllItsSaltDerived = 'Pastry for all × its salt. Derived.';
export const pasteAllParts100FlourMiddle =
  'Paste for all, by parts to 100 of flour; the middle of each part (common practice, no source)';
export const what = 'What';
export const weigh = 'Weigh';
export const to100OfFlour = 'To 100 of flour';
export const slicesForEachMould = 'Slices for each mould';
export const cannotTellMouldWidthSlice = 'Cannot tell: the mould or the width of a slice is missing';
export const derived = (slices: string) => `${slices} Derived.`;
export const theirSaltIsUnknown = 'their salt is unknown';
export const ofSalt = (saltG: string) => `${saltG} of salt`;
export const orCaulForEachMould = 'Or caul for each mould';
export const cannotTellMeasureMouldMissing = 'Cannot tell: a measure of the mould is missing';
