export const thePackInUse = 'The pack in use';
export const nameOnThePack = 'Name on the pack';
export const lotOfThePack = 'Lot of the pack';
export const twoPeopleAtTheScale = 'Two people at the scale';
export const oneWeighsAnotherReadsScalePack =
  'One weighs, another reads the scale and the pack before it goes in.';
export const weighedBy = 'Weighed by';
export const checkedBy = 'Checked by';
