/** Where a population stands. */
export interface Population {
  /** log10 of cells per gram. */
  readonly log10Count: number;
  /** Work still to be done before it grows; 0: no lag. */
  readonly work: number;
}

/** Beyond this work the 1 of the logarithm is less than its last digit. */
const FAR_FROM_GROWTH = 40;
/** e to this still fits in a number. */
const MOST_EXPONENT = 700;

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
  const work = workLeft(from.work, rateIntegral);
  const unlimited = Math.max(0, rateIntegral - from.work + work);
  const full = Math.min(1, 10 ** (from.log10Count - log10Most));
  const grown = Math.min(unlimited, -Math.log(full + (1 - full) * Math.exp(-unlimited)));
  return { log10Count: from.log10Count + Math.max(0, grown) / Math.LN10, work };
}

/** ln (1 + e^−I (e^h0 − 1)). Far from the end of the lag that is h0 − I, and e^h0 would not fit in a number. */
function workLeft(work: number, rateIntegral: number): number {
  const left = work - rateIntegral;
  if (left > FAR_FROM_GROWTH) return left;
  return work > MOST_EXPONENT
    ? Math.log1p(Math.exp(left))
    : Math.log1p(Math.exp(-rateIntegral) * Math.expm1(work));
}

/** Tenfolds that a published relative growth, a multiplier above 0, stands for. 10 is one, not ten. */
export function logOfRelativeGrowth(relative: number): number {
  return Math.log10(relative);
}
