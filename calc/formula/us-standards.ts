/** Most fat, and most fat with added water, of frankfurters and their kin: 9 CFR 319.180(a). */
export const COOKED_SAUSAGE = { fatFraction: 0.3, fatAndWaterFraction: 0.4 } as const;

/** Least protein on a fat-free basis of cooked ham, in %, and the name it earns: 9 CFR 319.104(a). */
export const COOKED_HAM_NAMES = [
  { name: 'ham', leastPffPercent: 20.5 },
  { name: 'ham with natural juices', leastPffPercent: 18.5 },
  { name: 'ham, water added', leastPffPercent: 17 },
] as const;

/**
 * Whether a frankfurter-type sausage keeps the United States standard of composition.
 * Source: 9 CFR 319.180(a).
 *
 * @param fatFraction fat of the finished product, 0–1
 * @param addedWaterFraction added water of the finished product, 0–1 (`addedWaterFraction`)
 * @example keepsCookedSausageStandard(0.28, 0.13) // false: 41 % together
 */
export function keepsCookedSausageStandard(fatFraction: number, addedWaterFraction: number): boolean | null {
  if (!(fatFraction >= 0) || !(addedWaterFraction >= 0)) return null;
  // Fractions of per cent are not exact in binary: a product on the limit keeps it.
  const together = Math.round((fatFraction + addedWaterFraction) * 1e9) / 1e9;
  return fatFraction <= COOKED_SAUSAGE.fatFraction && together <= COOKED_SAUSAGE.fatAndWaterFraction;
}

/**
 * Protein on a fat-free basis (PFF), in %: meat protein ÷ (all − fat).
 * Source: 9 CFR 318.19(a)(5).
 *
 * @param proteinFraction meat protein of the finished product, 0–1
 * @param fatFraction fat, 0–1 and below 1
 * @returns per cent, or null for input that is no fraction
 * @example proteinFatFreePercent(0.18, 0.05) // 18.947…
 */
export function proteinFatFreePercent(proteinFraction: number, fatFraction: number): number | null {
  if (!(proteinFraction >= 0 && proteinFraction <= 1) || !(fatFraction >= 0 && fatFraction < 1)) return null;
  return (100 * proteinFraction) / (1 - fatFraction);
}

/**
 * The name a cooked ham earns by its protein. Below the last a percentage of added substances is in the name.
 * Source: 9 CFR 319.104(a).
 */
export function cookedHamName(pffPercent: number): (typeof COOKED_HAM_NAMES)[number]['name'] | null {
  return COOKED_HAM_NAMES.find(({ leastPffPercent }) => pffPercent >= leastPffPercent)?.name ?? null;
}
