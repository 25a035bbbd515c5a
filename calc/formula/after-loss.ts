/**
 * What is left after losses one after the other: they multiply, they do not add.
 * Derived.
 * @param lossFractions each of what was there before it, 0–1
 * @returns fraction left, or null when a loss is not a fraction
 * @example remainingFraction([0.08, 0.03, 0.02]) // 0.8745
 */
export function remainingFraction(lossFractions: readonly number[]): number | null {
  if (!lossFractions.every((loss) => loss >= 0 && loss <= 1)) return null;
  return lossFractions.reduce((left, loss) => left * (1 - loss), 1);
}

/**
 * Content of something that stays while water leaves: salt in a dried muscle or a cooked terrine. Where drip carries
 * some away the true figure is lower, where fat runs out it is higher still.
 * Derived: mass balance.
 * @param fraction content before, 0–1
 * @param lossFraction mass lost, 0–1
 * @returns content after, or null when nothing would be left to hold it
 * @example concentratedFraction(0.03, 0.35) // 0.0462
 */
export function concentratedFraction(fraction: number, lossFraction: number): number | null {
  if (!(fraction >= 0) || !(lossFraction >= 0) || lossFraction >= 1) return null;
  const after = fraction / (1 - lossFraction);
  return after <= 1 ? after : null;
}
