import { isSourceId, type Mark } from '../sources/index.ts';
import { parseAllergens } from './allergens.ts';
import type { Ingredient, PickItem } from './ingredient.ts';
import { numberCell } from './read-table.ts';

/** Salt = sodium × 2.5: Regulation (EU) No 1169/2011, Annex I point 11. */
export const SALT_PER_SODIUM = 2.5;
const MG_PER_G = 1000;
const PER_100_G = 100;

const MARKS: readonly Mark[] = ['confirmed', 'memory', 'derived', 'common-practice'];

function fraction(gramsPer100: number | null): number | null {
  return gramsPer100 === null ? null : gramsPer100 / PER_100_G;
}

/** Names and group of a row. */
export function toPickItem(row: Readonly<Record<string, string>>): PickItem {
  const { id = '', name = '', category = '', speciesGroup = '' } = row;
  return { id, name, category, speciesGroup };
}

/** A row of the table as an ingredient. */
export function toIngredient(row: Readonly<Record<string, string>>): Ingredient {
  const sodiumMg = numberCell(row.sodiumMg);
  const saltG = numberCell(row.saltG) ?? (sodiumMg === null ? null : (sodiumMg * SALT_PER_SODIUM) / MG_PER_G);
  const source = row.source ?? '';
  return {
    ...toPickItem(row),
    species: row.species ?? '',
    form: row.form ?? '',
    waterFraction: fraction(numberCell(row.waterG)),
    proteinFraction: fraction(numberCell(row.proteinG)),
    fatFraction: fraction(numberCell(row.fatG)),
    saltFraction: fraction(saltG),
    sodiumFraction: sodiumMg === null ? null : sodiumMg / MG_PER_G / PER_100_G,
    usAllergens: parseAllergens(row.usAllergens ?? ''),
    euAllergens: parseAllergens(row.euAllergens ?? ''),
    source: isSourceId(source) ? source : null,
    mark: MARKS.find((mark) => mark === row.mark) ?? null,
    foodId: row.foodId ?? '',
  };
}
