export const theFormulaHasNoCuringSalt = 'The formula has no curing salt.';
export const addACuringSaltToThe = 'Add a curing salt to the formula';
export const curingSalt = 'Curing salt';
export const inTheFormula = 'In the formula';
export const asWeighed = 'As weighed';
export const lotOfThePack = 'Lot of the pack';
