import { compensatedSum } from '../quantities/index.ts';
import { NUTRIENTS, type Nutrient, type PerHundred } from './nutrients.ts';

/** What one ingredient brings to the food. */
export interface NutritionPart {
  readonly lineId: string;
  readonly massG: number;
  readonly per100: PerHundred;
  /** Most that is neither water, protein, fat nor salt in it, share of its mass; left out: not known. */
  readonly openFraction?: number;
}

/**
 * One nutrient per 100 g of the finished food. `value` is null while an unknown ingredient could move it; `min` and
 * `max` then say between what it lies, and `max` is null where nothing bounds it.
 */
export interface Amount {
  readonly value: number | null;
  readonly min: number | null;
  readonly max: number | null;
  /** Lines that do not tell, counted as holding none in `min` (and in `value` when they are very small). */
  readonly unknownLines: readonly string[];
}

export type Nutrition = Readonly<Record<Nutrient, Amount>>;

/** What happened between the bowl and the finished food. */
export interface AfterCook {
  readonly finishedG: number;
  /** Share of the alcohol that stays, 0–1; null: not known. */
  readonly alcoholKeptFraction: number | null;
  /** Fat that ran out and was poured off, g. It takes its saturates along. */
  readonly drainedFatG: number;
}

/** Share of all ingredients below which one that tells nothing cannot move a printed digit by more than one. */
const SMALL_SHARE = 0.001;
const PER_100_G = 100;

const WEIGHED_IN_GRAMS: readonly Nutrient[] = NUTRIENTS.filter((name) => name.endsWith('G'));

/** Most that a food can hold of a nutrient it does not tell, g per 100 g; null where mass bounds nothing. */
function mostOf(name: Nutrient, { per100: food, openFraction = 1 }: NutritionPart): number | null {
  if (!WEIGHED_IN_GRAMS.includes(name)) return null;
  const byMass = Math.max(0, PER_100_G - (food.proteinG ?? 0) - (food.fatG ?? 0));
  if (name === 'fatG' || name.startsWith('protein')) return byMass;
  const left = Math.min(byMass, openFraction * PER_100_G);
  if (name === 'saturatesG') return food.fatG ?? PER_100_G - (food.proteinG ?? 0);
  if (name === 'sugarsG' || name === 'addedSugarsG')
    return food.sugarsG ?? food.availableCarbohydrateG ?? food.carbohydrateG ?? left;
  if (name === 'fibreG' || name === 'availableCarbohydrateG') return food.carbohydrateG ?? left;
  return left;
}

function amount(name: Nutrient, parts: readonly NutritionPart[], after: AfterCook): Amount {
  const { finishedG, alcoholKeptFraction, drainedFatG } = after;
  const known = parts.filter(({ per100 }) => per100[name] !== null);
  const unknown = parts.filter(({ per100 }) => per100[name] === null);
  const grams = compensatedSum(known.map(({ massG, per100 }) => (massG * (per100[name] ?? 0)) / PER_100_G));
  const unknownG = compensatedSum(unknown.map(({ massG }) => massG));
  const open = unknown.map((part) => {
    const most = mostOf(name, part);
    return most === null ? null : (part.massG * most) / PER_100_G;
  });
  const openG = open.includes(null) ? null : compensatedSum(open.map((most) => most ?? 0));
  const scale = (total: number) => (total / finishedG) * PER_100_G;
  const allG = compensatedSum(parts.map(({ massG }) => massG));
  const settled = unknownG <= SMALL_SHARE * allG;
  const unknownLines = unknown.filter(({ massG }) => massG > 0).map(({ lineId }) => lineId);

  if (name === 'alcoholG') {
    const most = openG === null ? null : grams + openG;
    const kept = alcoholKeptFraction;
    return {
      value: !settled ? null : grams === 0 ? 0 : kept === null ? null : scale(grams * kept),
      min: scale(grams * (kept ?? 0)),
      max: most === null ? null : scale(most * (kept ?? 1)),
      unknownLines,
    };
  }
  if (name === 'fatG') {
    const left = (total: number) => scale(Math.max(0, total - drainedFatG));
    return {
      value: settled ? left(grams) : null,
      min: left(grams),
      max: openG === null ? null : left(grams + openG),
      unknownLines,
    };
  }
  return {
    value: settled ? scale(grams) : null,
    min: scale(grams),
    max: openG === null ? null : scale(grams + openG),
    unknownLines,
  };
}

/** Saturates leave with the fat that is poured off, in the share they have of it. */
function drained(saturates: Amount, fatBeforeG: number | null, drainedFatG: number): Amount {
  if (drainedFatG === 0) return saturates;
  if (fatBeforeG === null || fatBeforeG === 0) return { ...saturates, value: null, min: 0 };
  const left = Math.max(0, 1 - drainedFatG / fatBeforeG);
  const times = (value: number | null) => (value === null ? null : value * left);
  return { ...saturates, value: times(saturates.value), min: times(saturates.min), max: saturates.max };
}

/**
 * What 100 g of the finished food holds, from what its ingredients bring. Water and alcohol leave in the cook; fat only
 * as told; nothing else is lost. A blank of the table is unknown: it is left out only where its ingredient is less than
 * a thousandth of the whole, and named.
 * Derived: sums of mass × content over the finished mass.
 *
 * @returns null when the finished mass is none
 */
export function nutritionOf(parts: readonly NutritionPart[], after: AfterCook): Nutrition | null {
  if (!(after.finishedG > 0) || !Number.isFinite(after.finishedG)) return null;
  if (!(after.drainedFatG >= 0)) return null;
  const of = Object.fromEntries(NUTRIENTS.map((name) => [name, amount(name, parts, after)])) as Record<
    Nutrient,
    Amount
  >;
  const before = amount('fatG', parts, { ...after, drainedFatG: 0 }).value;
  const fatBeforeG = before === null ? null : (before * after.finishedG) / PER_100_G;
  return { ...of, saturatesG: drained(of.saturatesG, fatBeforeG, after.drainedFatG) };
}
