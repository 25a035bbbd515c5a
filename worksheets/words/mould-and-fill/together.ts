export const weightOfTheBatchByThe = 'Weight of the batch, by the formula';
export const cannotTellFormulaNotComplete = 'Cannot tell: the formula is not complete';
export const everythingGoesIntoBowlAddedUp =
  'Everything that goes into the bowl, added up, by the batch formula. Derived: a sum.';
export const allMouldsTake = 'All moulds take';
export const cannotTellMouldNotFully = 'Cannot tell: a mould is not fully measured, or there is none';
export const fillEachMouldHowManyAdded = 'Fill of each mould × how many of it, added up. Derived.';
export const shortOfFullMouldsBy = 'Short of full moulds by';
export const leftOver = 'Left over';
export const cannotTellFormulaMouldsNot = 'Cannot tell: formula or moulds are not complete';
export const mixLessWhatAllMouldsTake = 'Mix less what all moulds take.';
export const ofMixLessOfMoulds = (batchG: string, capacityG: string) =>
  `${batchG} of mix less ${capacityG} of moulds.`;
export const testPoachWhatStaysBowlCome = (batchG: string) =>
  `${batchG} The test poach and what stays in the bowl come off the mix first. Derived.`;
export const filledSoFarAsWeighed = 'Filled so far, as weighed';
export const whatEachFilledMouldWeighedNet = 'What each filled mould weighed, net, added up. Derived: a sum.';
