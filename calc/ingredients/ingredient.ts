import type { Mark, SourceId } from '../sources/index.ts';
import type { Allergen } from './allergens.ts';

/** What the pick list shows. */
export interface PickItem {
  readonly id: string;
  readonly name: string;
  /** Shelf it stands on: meat, fat-tissue, offal, dairy, spice … */
  readonly category: string;
  /** Group that rules follow: pork, ruminant, poultry, game-bird, fish … */
  readonly speciesGroup: string;
}

/**
 * One row of the composition table, as mass fractions of the edible part. Null is a value the source does not
 * give; it is never zero.
 */
export interface Ingredient extends PickItem {
  readonly species: string;
  /** raw, cured, smoked, cooked, powder … */
  readonly form: string;
  readonly waterFraction: number | null;
  readonly proteinFraction: number | null;
  readonly fatFraction: number | null;
  /** Salt as sodium × 2.5 for foods; sodium chloride itself for salts and additives. */
  readonly saltFraction: number | null;
  /** All sodium, from whatever salt; null where the source gives salt alone, or nothing. */
  readonly sodiumFraction: number | null;
  readonly usAllergens: readonly Allergen[];
  readonly euAllergens: readonly Allergen[];
  /** Null where no table has the row. */
  readonly source: SourceId | null;
  readonly mark: Mark | null;
  /** Number of the food in its source: an NDB number or a Ciqual code. */
  readonly foodId: string;
}

/** Where compositions are looked up. A `Map` of ingredients is one. */
export interface CompositionTable {
  get(id: string): Ingredient | undefined;
}
