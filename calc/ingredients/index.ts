export { type Allergen, joinAllergens, parseAllergens } from './allergens.ts';
export type { IngredientDetails } from './details.ts';
export type { CompositionTable, Ingredient, PickItem } from './ingredient.ts';
export { loadIngredientDetails, loadIngredients, loadPickList } from './load.ts';
export { searchIngredients } from './search.ts';
export { isFish, isLiver, isPorkLiver, isPoultry, isShellfish, POULTRY_SPECIES } from './species.ts';
export { SALT_PER_SODIUM } from './to-ingredient.ts';
