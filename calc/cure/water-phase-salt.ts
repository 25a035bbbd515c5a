/**
 * Salt on the water phase: salt ÷ (salt + water), as a fraction. What bacteria meet is the brine in
 * the mix, so a fat-rich mix is saltier to them than its salt content says.
 *
 * Source: Ontario Fish Plant Guidelines, F.B.14.14, for the formula.
 *
 * @param salt salt in the product, in g or % of it
 * @param water water in the product, in the same unit
 * @returns fraction 0–1, or null when there is nothing to divide by
 * @example waterPhaseSaltFraction(1.7, 60) // 0.0276
 */
export function waterPhaseSaltFraction(salt: number, water: number): number | null {
  if (!Number.isFinite(salt) || !Number.isFinite(water) || salt < 0 || water < 0) return null;
  return salt + water > 0 ? salt / (salt + water) : null;
}
