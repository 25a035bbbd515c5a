import type { KnownFraction } from '../formula/index.ts';
import { type Allergen, type CompositionTable, joinAllergens } from '../ingredients/index.ts';
import { compensatedSum, type Entry, entryValue, readEntry } from '../quantities/index.ts';
import { ticked } from './allergen-classes.ts';
import { newLabelExtra } from './new-label.ts';
import { NOTHING_KNOWN, NUTRIENTS, type Nutrient, type PerHundred } from './nutrients.ts';
import { type DetailsTable, detailsOf, type LabelPart } from './parts.ts';
import { perHundredOfExtra, perHundredOfRow } from './per-hundred.ts';
import type { CarriedId, LabelExtra } from './slice.ts';

/** Something a carried food is made of, as a row of the composition table. */
export interface CarriedIngredient {
  readonly ingredientId: string;
  /** As the list calls it. */
  readonly name: string;
  readonly massG: number;
}

/** A food of the batch that stands in no line of the formula. */
export interface CarriedFood {
  readonly id: CarriedId;
  readonly name: string;
  /** All of it, g; null while a measure is missing. */
  readonly massG: number | null;
  /** What is known to be in it. */
  readonly ingredients: readonly CarriedIngredient[];
  /** Whether that is all of it. */
  readonly complete: boolean;
  /** Allergen classes known besides, by id. */
  readonly allergenClasses: readonly string[];
  /** g per 100 g, where the worksheet of the food knows it. */
  readonly alcoholG: number | null;
}

/** What was typed off a pack; blank leaves it to what is known of the food. */
function typedOr(entry: Entry): KnownFraction {
  const typed = readEntry('fraction', entry);
  if (typed.state === 'blank') return { fraction: null, from: 'table' };
  return { fraction: typed.state === 'ok' ? typed.value : null, from: 'declared' };
}

/** Mean of what its ingredients hold, by mass; unknown where one of them does not tell. */
function perHundredOf(food: CarriedFood, table: CompositionTable, details: DetailsTable): PerHundred {
  const nothing = { ...NOTHING_KNOWN, alcoholG: food.alcoholG };
  const totalG = compensatedSum(food.ingredients.map(({ massG }) => massG));
  if (!food.complete || !(totalG > 0)) return nothing;
  const rows = food.ingredients.map(({ ingredientId, massG }) => {
    const row = table.get(ingredientId);
    const per100 = row ? perHundredOfRow(row, detailsOf(row, table, details).details) : NOTHING_KNOWN;
    return { share: massG / totalG, per100 };
  });
  const mean = (name: Nutrient) => {
    const all = rows.map(({ share, per100 }) => (per100[name] === null ? null : per100[name] * share));
    return all.includes(null) ? null : compensatedSum(all.map((part) => part ?? 0));
  };
  return Object.fromEntries(NUTRIENTS.map((name) => [name, mean(name)])) as Record<Nutrient, number | null>;
}

/** What it is made of, most first, as a compound ingredient is written; blank while not all of it is known. */
function madeOfCarried({ complete, ingredients }: CarriedFood): string {
  if (!complete) return '';
  return [...ingredients]
    .filter(({ massG }) => massG > 0)
    .sort((a, b) => b.massG - a.massG)
    .map(({ name }) => name)
    .join(', ');
}

function allergensOfCarried(food: CarriedFood, said: LabelExtra, table: CompositionTable) {
  const rows = food.ingredients.flatMap(({ ingredientId }) => table.get(ingredientId) ?? []);
  const known = ticked([...food.allergenClasses]);
  const sure = (lists: readonly (readonly Allergen[])[]) =>
    joinAllergens(lists).filter((one) => !one.toCheck);
  const eu = sure([...rows.map(({ euAllergens }) => euAllergens), known.eu]);
  const us = sure([...rows.map(({ usAllergens }) => usAllergens), known.us]);
  const read = said.allergens === null ? null : ticked(said.allergens);
  return {
    euAllergens: [...eu, ...(read?.eu ?? [])],
    usAllergens: [...us, ...(read?.us ?? [])],
    // A usual paste is not the paste of this kitchen: somebody has to say so.
    allergensTold: read !== null,
  };
}

/** Crust and jelly of the batch as the label sees them, with what was said of them there. */
export function carriedParts(
  foods: readonly CarriedFood[],
  extras: readonly LabelExtra[],
  { table, details }: { readonly table: CompositionTable; readonly details: DetailsTable },
): LabelPart[] {
  return foods.map((food): LabelPart => {
    const said = extras.find(({ id }) => id === food.id) ?? newLabelExtra(food.id);
    const typed = readEntry('mass', said.mass);
    const massG = typed.state === 'blank' ? food.massG : entryValue('mass', said.mass);
    const base = perHundredOf(food, table, details);
    const { fat, protein, salt } = said.figures;
    return {
      id: food.id,
      path: `label.extras.${food.id}`,
      ownName: said.name.trim() || food.name,
      name: said.name.trim() || food.name,
      proposed: food.name,
      line: null,
      carried: food.id,
      row: undefined,
      massG,
      per100: perHundredOfExtra(
        { fat: typedOr(fat), protein: typedOr(protein), salt: typedOr(salt) },
        said.figures,
        base,
      ),
      openFraction: 1,
      kitchenRow: food.complete,
      meatClass: null,
      fatFraction: null,
      proteinFraction: null,
      collagenFraction: null,
      madeOf: said.madeOf.trim() || madeOfCarried(food),
      needsMadeOf: true,
      stressed: false,
      ...allergensOfCarried(food, said, table),
    };
  });
}
