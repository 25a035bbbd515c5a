/**
 * Plain salt that lifts a finished mix from one salt content to a higher one, g. On the new total
 * the added salt is part of what it salts; on the old total it is not. State which is meant.
 *
 * Derived: mass balance.
 *
 * @param totalG mix before the correction, g
 * @param fromFraction salt content now, 0–1
 * @param toFraction salt content wanted, 0–1
 * @param on which total the wanted content is a fraction of
 * @returns g, or null when the input is unusable or no salt can lower a content
 * @example saltToRaise(3600, 0.015, 0.0165, 'new-total') // 5.49 g
 * @example saltToRaise(3600, 0.015, 0.0165, 'old-total') // 5.40 g
 */
export function saltToRaise(
  totalG: number,
  fromFraction: number,
  toFraction: number,
  on: 'new-total' | 'old-total',
): number | null {
  if (![totalG, fromFraction, toFraction].every(Number.isFinite)) return null;
  if (totalG <= 0 || fromFraction < 0 || toFraction < fromFraction || toFraction >= 1) return null;
  const shortG = totalG * (toFraction - fromFraction);
  return on === 'new-total' ? shortG / (1 - toFraction) : shortG;
}
