import { entryValue } from '../quantities/index.ts';
import type { BrineRecipe } from './recipe.ts';
import type { BrineSlice } from './slice.ts';
import type { BrineParts } from './values.ts';

/** Parts of the brine: as weighed, else as planned. A weight that cannot be read is unknown. */
export function partsInUse(slice: BrineSlice, recipe: BrineRecipe | null): BrineParts {
  const { actual } = slice;
  const pick = (entry: { text: string }, grams: number | null, plannedG: number | null) =>
    grams ?? (entry.text.trim() === '' ? plannedG : null);
  const mass = (key: keyof typeof actual) => entryValue('mass', actual[key]);
  const curingSaltG = mass('curingSalt');
  const isUsed = (text: string) => text.trim() !== '';
  return {
    waterG: pick(actual.water, mass('water'), recipe?.waterG ?? null),
    plainSaltG: pick(actual.salt, mass('salt'), recipe?.plainSaltG ?? null),
    curingSaltG: pick(actual.curingSalt, curingSaltG, recipe?.curingSaltG ?? null),
    // What nobody asked for is none, not unknown.
    sugarG: pick(actual.sugar, mass('sugar'), isUsed(slice.sugar.text) ? (recipe?.sugarG ?? null) : 0),
    acceleratorG: pick(
      actual.accelerator,
      mass('accelerator'),
      isUsed(slice.acceleratorTarget.text) ? (recipe?.acceleratorG ?? null) : 0,
    ),
    phosphateG: pick(
      actual.phosphate,
      mass('phosphate'),
      isUsed(slice.phosphate.text) ? (recipe?.phosphateG ?? null) : 0,
    ),
    isCureWeighed: curingSaltG !== null,
  };
}

/** All of the pickle. What is not known is left out, which makes a concentration higher, never lower. */
export function pickleOf(parts: BrineParts): number | null {
  const { waterG, plainSaltG, curingSaltG, sugarG, acceleratorG, phosphateG } = parts;
  if (waterG === null) return null;
  return [plainSaltG, curingSaltG, sugarG, acceleratorG, phosphateG].reduce<number>(
    (sum, part) => sum + (part ?? 0),
    waterG,
  );
}
