export const ingredientListCouldNotFetched =
  'The ingredient list could not be fetched. A name of your own will do; its figures come from the pack.';
export const fetchingTheIngredientList = 'Fetching the ingredient list …';
export const typeWordTwoIngredientsNames = (length: number) =>
  `Type a word or two: ${length} ingredients, by the names used at the bench too.`;
export const nothingNameMayStayOwnFigures =
  'Nothing by that name. It may stay as your own; its figures come from the pack.';
export const firstTypeMoreNarrowDown = (mostShown: number) =>
  `The first ${mostShown}. Type more to narrow them down.`;
export const n1Ingredient = '1 ingredient';
export const ingredients = (found: number) => `${found} ingredients`;
export const curingSalt = 'Curing salt';
export const youTypeItsStrengthFromThe = 'You type its strength from the pack';
export const ingredient = 'Ingredient';
