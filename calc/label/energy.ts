import type { Amount, Nutrition } from './nutrition.ts';

/**
 * Energy per gram: Regulation (EU) No 1169/2011, Annex XIV. Kilojoules and kilocalories are each summed from their own
 * factors; one is not made from the other.
 */
export const EU_ENERGY = {
  carbohydrate: { kj: 17, kcal: 4 },
  polyols: { kj: 10, kcal: 2.4 },
  protein: { kj: 17, kcal: 4 },
  fat: { kj: 37, kcal: 9 },
  salatrims: { kj: 25, kcal: 6 },
  alcohol: { kj: 29, kcal: 7 },
  organicAcids: { kj: 13, kcal: 3 },
  fibre: { kj: 8, kcal: 2 },
  erythritol: { kj: 0, kcal: 0 },
} as const;

/** General factors of the United States, kcal per gram: 21 CFR 101.9(c)(1)(i)(B); 7 for alcohol in general use. */
export const US_ENERGY = { protein: 4, carbohydrate: 4, fat: 9, alcohol: 7 } as const;

type Weighted = readonly (readonly [Amount, number])[];

/** A sum of amounts times factors, with the bounds of what is not known. */
function weighted(parts: Weighted): Amount {
  const sum = (of: (amount: Amount) => number | null): number | null => {
    let total = 0;
    for (const [amount, factor] of parts) {
      const value = of(amount);
      if (value === null) return null;
      total += value * factor;
    }
    return total;
  };
  return {
    value: sum(({ value }) => value),
    min: sum(({ min }) => min),
    max: sum(({ max }) => max),
    unknownLines: [...new Set(parts.flatMap(([{ unknownLines }]) => unknownLines))],
  };
}

/** Energy per 100 g by the factors of the EU: protein as nitrogen × 6.25, carbohydrate without fibre, fibre at 8 kJ. */
export function euEnergy(nutrition: Nutrition): { readonly kj: Amount; readonly kcal: Amount } {
  const of = (unit: 'kj' | 'kcal') =>
    weighted([
      [nutrition.fatG, EU_ENERGY.fat[unit]],
      [nutrition.availableCarbohydrateG, EU_ENERGY.carbohydrate[unit]],
      [nutrition.fibreG, EU_ENERGY.fibre[unit]],
      [nutrition.proteinNx625G, EU_ENERGY.protein[unit]],
      [nutrition.alcoholG, EU_ENERGY.alcohol[unit]],
    ]);
  return { kj: of('kj'), kcal: of('kcal') };
}

/** Energy per 100 g, kcal, by the general factors 4, 4, 9 and 7. */
export function usEnergy(nutrition: Nutrition): Amount {
  return weighted([
    [nutrition.proteinG, US_ENERGY.protein],
    [nutrition.carbohydrateG, US_ENERGY.carbohydrate],
    [nutrition.fatG, US_ENERGY.fat],
    [nutrition.alcoholG, US_ENERGY.alcohol],
  ]);
}

/** A food's own factors for protein, fat and carbohydrate, kcal per gram. */
export interface AtwaterFactors {
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  /** 6.93 in the tables of the United States. */
  readonly alcohol: number;
}

/** Energy of one food by its own factors, kcal per 100 g: the first of the lawful routes of 21 CFR 101.9(c)(1)(i). */
export function atwaterKcal(
  food: { proteinG: number; fatG: number; carbohydrateG: number; alcoholG: number },
  factors: AtwaterFactors,
): number {
  return (
    food.proteinG * factors.protein +
    food.fatG * factors.fat +
    food.carbohydrateG * factors.carbohydrate +
    food.alcoholG * factors.alcohol
  );
}
