export const addAMaterial = 'Add a material';
export const takeTheMeatOfTheFormula = 'Take the meat of the formula';
