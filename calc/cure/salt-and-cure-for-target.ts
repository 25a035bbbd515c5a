/** A mix whose curing salt and plain salt are both still open. Masses in g, fractions 0–1. */
export interface OpenSaltAndCure {
  /** Everything but the curing salt and the plain salt. */
  readonly otherMassG: number;
  /** Salt those other ingredients bring. */
  readonly carriedSaltG: number;
  /** Wanted salt from all sources, fraction of the final total. */
  readonly saltTargetFraction: number;
  /** Wanted nitrite, mg/kg of the final total, as sodium nitrite. */
  readonly nitriteTargetPpm: number;
  /** Strength of the curing salt, fraction. */
  readonly nitriteFraction: number;
  /** Salt in the curing salt, fraction. */
  readonly saltFraction: number;
}

/**
 * Curing salt and plain salt together, where the nitrite is counted on everything in the bowl: the
 * two share one total, so both conditions are solved at once.
 *
 * Derived: two mass balances in two unknowns.
 *
 * @returns grams before rounding, or null when no mix can have both: the salt target is used up by
 *   the ingredients and the curing salt, or the curing salt is weaker than the target
 * @example
 * saltAndCureForTarget({ otherMassG: 982, carriedSaltG: 0, saltTargetFraction: 0.018,
 *   nitriteTargetPpm: 90, nitriteFraction: 0.006, saltFraction: 0.994 })
 * // 15.0 g of curing salt and 3.1 g of plain salt to the kilogram
 */
export function saltAndCureForTarget(
  open: OpenSaltAndCure,
): { curingSaltG: number; plainSaltG: number } | null {
  const { otherMassG, carriedSaltG, saltTargetFraction: s, nitriteFraction, saltFraction } = open;
  const p = open.nitriteTargetPpm / 1e6;
  const all = [otherMassG, carriedSaltG, s, nitriteFraction, saltFraction, p];
  if (!all.every((value) => Number.isFinite(value) && value >= 0) || s >= 1 || otherMassG <= 0) return null;
  // Final total = (other − carried salt + what is not salt in the curing salt) ÷ (1 − s).
  const strength = nitriteFraction - (p * (1 - saltFraction)) / (1 - s);
  if (strength <= 0) return null;
  const curingSaltG = (p * (otherMassG - carriedSaltG)) / (1 - s) / strength;
  const plainSaltG = (s * (otherMassG + curingSaltG) - carriedSaltG - saltFraction * curingSaltG) / (1 - s);
  return plainSaltG >= 0 ? { curingSaltG, plainSaltG } : null;
}
