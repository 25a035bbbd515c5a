export const listCouldNotFetchedNameOwn = 'The list could not be fetched. A name of your own will do.';
export const fetchingTheIngredientList = 'Fetching the ingredient list …';
export const typeWordTwoKeepNameOwn = 'Type a word or two, or keep a name of your own.';
export const found = (length: number) => `${length} found`;
