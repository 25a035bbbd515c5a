export const addAnIngredient = 'Add an ingredient';
export const addACuringSalt = 'Add a curing salt';
