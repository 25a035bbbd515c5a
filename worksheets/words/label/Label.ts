export const theFood = 'The food';
export const whatWentIn = 'What went in';
export const ingredients = 'Ingredients';
export const ingredient = 'Ingredient';
export const nameInTheList = 'Name in the list';
export const madeOf = 'Made of';
export const allergens = 'Allergens';
export const notInTheFormulaCrustJelly = 'Not in the formula: crust, jelly, a seal';
export const ingredientList = 'Ingredient list';
export const nutrition = 'Nutrition';
export const keepingDateAndWeight = 'Keeping, date and weight';
export const warnings = 'Warnings';
export const labelProofListQuantities =
  'A label proof: list, quantities, nutrition, date and what they rest on.';
