export const theDoseOf = 'the dose of';
export const howManyBatchesToMixFor = 'how many batches to mix for, of';
export const thePartsOf = 'the parts of';
export const theTotalMix = 'the total mix';
export const theStepOfTheScale = 'the step of the scale';
export const anUnnamedSpice = 'an unnamed spice';
export const anUnnamedBlend = 'an unnamed blend';
