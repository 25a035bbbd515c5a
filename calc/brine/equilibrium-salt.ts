import type { SaltBase } from './slice.ts';

/** Meat and brine that share one salt. Masses in one unit. */
export interface SharedWater {
  readonly meat: number;
  readonly meatWaterFraction: number;
  readonly water: number;
}

/**
 * All the salt of a soak that is left to equilibrium.
 *
 * `meat-and-water`: target × (meat + water), the trade's habit. `water-phase`: salt ÷ (salt + all
 * water) is the target. `water`: target × all water. The three differ by 10 to 30 %. Derived: mass balance.
 *
 * @returns mass, or null for unusable numbers
 * @example equilibriumSalt({ meat: 2400, meatWaterFraction: 0.72, water: 1200 }, 0.024, 'meat-and-water') // 86.4
 */
export function equilibriumSalt(vat: SharedWater, targetFraction: number, base: SaltBase): number | null {
  const allWater = waterOf(vat);
  if (allWater === null || !(targetFraction >= 0 && targetFraction < 1)) return null;
  switch (base) {
    case 'meat-and-water':
      return targetFraction * (vat.meat + vat.water);
    case 'water':
      return targetFraction * allWater;
    case 'water-phase':
      return (targetFraction * allWater) / (1 - targetFraction);
  }
}

/** Where the salt of a soak ends once meat and brine are even. Fractions 0–1. */
export interface SaltOutcome {
  /** Salt ÷ (salt + water), the same in meat and brine. */
  readonly waterPhaseFraction: number;
  readonly saltInMeat: number;
  /** On the meat as it went in. */
  readonly saltOnMeatFraction: number;
}

/**
 * Salt at equilibrium, by the water it shares: the meat holds as much of it as it holds of the water.
 * No water is taken to move; none of it is taken to bind salt. Derived: mass balance.
 *
 * @example saltAtEquilibrium({ meat: 2400, meatWaterFraction: 0.72, water: 1200 }, 86.4)
 * // 2.87 % on the water phase, 51 g in the meat, 2.1 % of it
 */
export function saltAtEquilibrium(vat: SharedWater, salt: number): SaltOutcome | null {
  const allWater = waterOf(vat);
  if (allWater === null || allWater <= 0 || !(salt >= 0) || !Number.isFinite(salt)) return null;
  const saltInMeat = (salt * vat.meat * vat.meatWaterFraction) / allWater;
  return {
    waterPhaseFraction: salt / (salt + allWater),
    saltInMeat,
    saltOnMeatFraction: saltInMeat / vat.meat,
  };
}

function waterOf({ meat, meatWaterFraction, water }: SharedWater): number | null {
  if (!(meat > 0) || !(meatWaterFraction > 0 && meatWaterFraction <= 1) || !(water >= 0)) return null;
  const all = meat * meatWaterFraction + water;
  return Number.isFinite(all) ? all : null;
}
