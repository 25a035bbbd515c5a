/**
 * Hours in which half the nitrite of a cured meat is used up: log₁₀ t½ = 0.65 − 0.025·T + 0.35·pH.
 * For understanding only: no one can promise a residue by it.
 *
 * Source: Nordin 1969 (from memory).
 *
 * @returns null for unusable numbers
 * @example nitriteHalfLifeHours(4, 5.8) // 380
 */
export function nitriteHalfLifeHours(tempC: number, ph: number): number | null {
  if (!Number.isFinite(tempC) || !Number.isFinite(ph) || ph < 0 || ph > 14) return null;
  return 10 ** (0.65 - 0.025 * tempC + 0.35 * ph);
}
