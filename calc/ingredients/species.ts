import type { Ingredient, PickItem } from './ingredient.ts';

/**
 * Birds that count as poultry for cooking rules, wild ones too.
 * Canadian Food Inspection Agency, source `cfia-poultry-species`: duck, goose, guinea fowl, pheasant, partridge,
 * pigeon, quail, ostrich beside chicken and turkey. Grouse is added on the safe side (common practice, no source).
 */
export const POULTRY_SPECIES: readonly string[] = [
  'chicken',
  'hen',
  'turkey',
  'duck',
  'goose',
  'guinea fowl',
  'pheasant',
  'partridge',
  'pigeon',
  'quail',
  'ostrich',
  'grouse',
  'poultry',
];

/** Whether a row is of a bird: meat, liver, skin, fat or stock. An egg is not. */
export function isPoultry(item: PickItem & { readonly species?: string }): boolean {
  if (item.speciesGroup === 'egg') return false;
  return (
    item.speciesGroup === 'poultry' ||
    item.speciesGroup === 'game-bird' ||
    (item.species !== undefined && POULTRY_SPECIES.includes(item.species))
  );
}

/** Whether a row is liver, a fatted one too. Finished products made with liver are not. */
export function isLiver(item: PickItem): boolean {
  return item.category === 'offal' && /(^|-)liver(-|$)|foie-gras/.test(item.id);
}

/** Whether a row is pork liver, which carries the hepatitis E question. */
export function isPorkLiver(item: Ingredient): boolean {
  return isLiver(item) && item.species === 'pork';
}

/** Whether a row is fish. Shellfish is not. */
export function isFish(item: PickItem): boolean {
  return item.speciesGroup === 'fish';
}

/** Whether a row is a crustacean or a mollusc. */
export function isShellfish(item: PickItem): boolean {
  return item.speciesGroup === 'crustacean' || item.speciesGroup === 'mollusc';
}
