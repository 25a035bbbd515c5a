import type { Ingredient, IngredientDetails } from '../ingredients/index.ts';
import type { MeatClass } from './meat-content.ts';

const CLASSES: readonly MeatClass[] = ['pork', 'bird-rabbit', 'mammal'];
const OF_GROUP: Readonly<Record<string, MeatClass>> = {
  pork: 'pork',
  poultry: 'bird-rabbit',
  'game-bird': 'bird-rabbit',
  rabbit: 'bird-rabbit',
  ruminant: 'mammal',
  game: 'mammal',
};
const MEAT_SHELVES: readonly string[] = ['meat', 'cured-meat'];

/**
 * The class whose limits an ingredient falls under where it counts as meat, or null where it is no meat: offal, added
 * fat, rind and skin are named on their own. Regulation (EU) No 1169/2011, Annex VII part B point 17. Wild boar goes by
 * the limits for pigs, hare by those for other mammals.
 */
export function meatClassOf(
  row: Ingredient | undefined,
  details: IngredientDetails | undefined,
): MeatClass | null {
  if (!row) return null;
  if (details && details.euMeatClass !== '')
    return details.euCountsAsMeat === 'yes'
      ? (CLASSES.find((name) => name === details.euMeatClass) ?? null)
      : null;
  if (!MEAT_SHELVES.includes(row.category)) return null;
  if (row.species === 'wild boar') return 'pork';
  return OF_GROUP[row.speciesGroup] ?? null;
}
