export const find = 'Find';
export const nameNumberLotIngredientDay = 'Name, number, lot, ingredient, day.';
export const chosen = (length: number, mostSide: string) => `${length} chosen. ${mostSide}`;
export const ofOthersShown = (rows: number, length: number) => `${rows} of ${length} others shown.`;
export const unnamedBatch = 'Unnamed batch';
export const noNumber = 'no number';
export const demo = 'DEMO';
