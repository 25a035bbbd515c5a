export const curingSaltWeighedGramsTwo = 'CURING SALT: weighed in grams, by two people';
export const type = 'Type';
export const nitriteOnPack = 'Nitrite on pack';
export const weigh = 'Weigh';
export const scaleReads = 'Scale reads';
export const packLot = 'Pack lot';
export const weighedBy = 'Weighed by';
export const checkedByAnotherPerson = 'Checked by (another person)';
