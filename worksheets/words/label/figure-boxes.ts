export const saturates = 'Saturates';
export const carbohydrateWithoutFibre = 'Carbohydrate without fibre';
export const sugars = 'Sugars';
export const fibre = 'Fibre';
export const alcoholByMass = 'Alcohol, by mass';
export const ofWord = (names: string, name: string) => `${names} of ${name}`;
