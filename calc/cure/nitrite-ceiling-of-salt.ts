import { nitritePpm } from './nitrite-ppm.ts';

/**
 * Highest nitrite a weak curing salt can give at a salt level, when it is the only salt: with such a
 * pack salt and cure are one lever. mg/kg of the total, as sodium nitrite.
 *
 * Derived: mass balance.
 *
 * @param saltFraction salt the curing salt may bring, as a fraction of the total
 * @param nitriteInCuringSalt strength, fraction
 * @param saltInCuringSalt salt in the curing salt, fraction, above 0
 * @returns mg/kg, or null when the input is unusable
 * @example nitriteCeilingOfSalt(0.017, 0.006, 0.994) // 102.6
 */
export function nitriteCeilingOfSalt(
  saltFraction: number,
  nitriteInCuringSalt: number,
  saltInCuringSalt: number,
): number | null {
  if (!Number.isFinite(saltInCuringSalt) || saltInCuringSalt <= 0 || saltFraction < 0) return null;
  return nitritePpm((saltFraction / saltInCuringSalt) * nitriteInCuringSalt, 1);
}
