/** Shares of two raw materials that meet a target between them, 0–1. */
export interface TwoTrimBlend {
  readonly fractionOfA: number;
  readonly fractionOfB: number;
}

/**
 * Two trims to one fat content: A = (fat of B − target) ÷ (fat of B − fat of A). Any component that adds up by mass
 * can stand for fat. A target outside the two has no blend; a straight line beyond them means nothing.
 * Derived: mass balance.
 *
 * @returns shares of the blend, or null when there is none
 * @example twoTrimBlend(0.03, 0.88, 0.25) // 0.741 : 0.259
 */
export function twoTrimBlend(
  fatAFraction: number,
  fatBFraction: number,
  targetFraction: number,
): TwoTrimBlend | null {
  const all = [fatAFraction, fatBFraction, targetFraction];
  if (!all.every((value) => value >= 0 && value <= 1) || fatAFraction === fatBFraction) return null;
  const fractionOfA = (fatBFraction - targetFraction) / (fatBFraction - fatAFraction);
  return fractionOfA < 0 || fractionOfA > 1 ? null : { fractionOfA, fractionOfB: 1 - fractionOfA };
}
