export const carryItInSaltOnePart = 'Carry it in salt, one part in ten';
export const leaveItAsItIs = 'Leave it as it is';
export const totalMix = 'Total mix';
export const everythingBowlBlankTotal =
  'Everything in the bowl. Blank: the total of the formula, with this seasoning in it.';
export const smallestStepOfTheSpiceScale = 'Smallest step of the spice scale';
export const tooLittleForTheScale = 'Too little for the scale';
export const spiceOnlyCuringSaltNever = 'Spice only. Curing salt is never carried in anything.';
export const leftInTheMillOfWhole = 'Left in the mill, of whole spice';
export const n2To5CommonPracticeNo = '2 to 5 %: common practice, no source.';
export const timesTheBatchItWasTasted = 'Times the batch it was tasted in';
export const times = 'times';
export const aboveFiveStrongAromaticsTasted =
  'Above five, strong aromatics are tasted in, not just multiplied.';
