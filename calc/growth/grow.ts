/** Where a population stands. */
export interface Population {
  /** log10 of cells per gram. */
  readonly log10Count: number;
  /** Work still to be done before it grows; 0: no lag. */
  readonly work: number;
}

/**
 * A population after an integral of growth rate over time, by the exact solution of the Baranyi–Roberts model for any
 * temperature history. Splitting a history and carrying the population on gives the same.
 *
 * Source: Baranyi & Roberts 1994, Int. J. Food Microbiol. 23:277 (from memory); closed form derived.
 *
 * @param rateIntegral ∫ μ dt, natural logarithms, never below 0
 * @param log10Most log10 of the most cells per gram the food carries
 */
export function grow(from: Population, rateIntegral: number, log10Most: number): Population {
  const work = Math.log1p(Math.exp(-rateIntegral) * Math.expm1(from.work));
  const unlimited = Math.max(0, rateIntegral - from.work + work);
  const full = Math.min(1, 10 ** (from.log10Count - log10Most));
  const grown = -Math.log(full + (1 - full) * Math.exp(-unlimited));
  return { log10Count: from.log10Count + Math.max(0, grown) / Math.LN10, work };
}

/** Tenfolds that a published relative growth, a multiplier, stands for. 10 is one, not ten. */
export function logOfRelativeGrowth(relative: number): number {
  return Math.log10(relative);
}
