export const theMix = 'The mix';
export const weightOfTheBatchNotYet = 'Weight of the batch: not yet computed';
export const theMoulds = 'The moulds';
export const moulds = 'Moulds';
export const mould = 'Mould';
export const insideMm = 'Inside, mm';
export const waterToTheRimMl = 'Water to the rim, mL';
export const headspaceMm = 'Headspace, mm';
export const howMany = 'How many';
export const filledG = 'Filled, g';
export const allMouldsTogether = 'All moulds together';
export const densityOfTheRawMix = 'Density of the raw mix';
export const weighFullCupKnownVolumeTamped =
  'Weigh a full cup of known volume. Tamped coarse mixes 1.00 to 1.04, whipped ones 0.75 to 0.90: common practice, no source.';
