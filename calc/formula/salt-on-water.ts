/**
 * Salt on the water phase: salt ÷ (salt + water). What bacteria meet is the brine in the mix, so a mix rich in fat is
 * saltier to them than its salt content says.
 *
 * Source: Ontario Fish Plant Guidelines, F.B.14.14, for the formula.
 *
 * @param salt mass of salt, or its share
 * @param water mass of water in the same unit, or its share
 * @returns fraction 0–1, or null when there is neither
 * @example saltOnWaterFraction(1.7, 60) // 0.0276
 */
export function saltOnWaterFraction(salt: number, water: number): number | null {
  if (!(salt >= 0) || !(water >= 0) || !Number.isFinite(salt + water)) return null;
  return salt + water > 0 ? salt / (salt + water) : null;
}
