export const ingredientListCouldNotFetched =
  'The ingredient list could not be fetched. A name of your own will do; its figures come from the pack.';
export const fetchingTheIngredientList = 'Fetching the ingredient list …';
export const nothingNameMayStayOwnFigures =
  'Nothing by that name. It may stay as your own; its figures come from the pack.';
export const typeAWordOrTwoOr = 'Type a word or two, or a name of your own.';
export const material = 'Material';
