/** Salt a mix still needs. Masses in g, fractions 0–1 of everything in the bowl. */
export interface PlainSaltNeed {
  /** Everything in the bowl but the plain salt, curing salt included. */
  readonly massWithoutPlainSaltG: number;
  /** Salt those ingredients bring, curing salt included. */
  readonly carriedSaltG: number;
  /** Wanted salt from all sources, as a fraction of the finished mix. */
  readonly targetFraction: number;
}

export type PlainSalt =
  | { readonly ok: true; readonly plainSaltG: number }
  | { readonly ok: false; readonly reason: 'unusable-input' }
  | {
      readonly ok: false;
      readonly reason: 'carried-exceeds-target';
      /** Salt brought in above what the target allows, g. */
      readonly excessG: number;
      /** Salt content without adding any. */
      readonly carriedFraction: number;
    };

/**
 * Plain salt left to add so that salt from all sources is the wanted fraction of the *final* total.
 * Salt is part of that total, hence ÷ (1 − target). Refused when the ingredients already bring more:
 * a negative weight helps nobody.
 *
 * Derived: mass balance.
 *
 * @example plainSaltToAdd({ massWithoutPlainSaltG: 983, carriedSaltG: 0, targetFraction: 0.017 }) // 17.0 g in 1 kg
 */
export function plainSaltToAdd(need: PlainSaltNeed): PlainSalt {
  const { massWithoutPlainSaltG, carriedSaltG, targetFraction } = need;
  const usable =
    [massWithoutPlainSaltG, carriedSaltG, targetFraction].every(
      (value) => Number.isFinite(value) && value >= 0,
    ) &&
    massWithoutPlainSaltG > 0 &&
    carriedSaltG <= massWithoutPlainSaltG &&
    targetFraction < 1;
  if (!usable) return { ok: false, reason: 'unusable-input' };
  const shortG = targetFraction * massWithoutPlainSaltG - carriedSaltG;
  if (shortG < -1e-9 * massWithoutPlainSaltG) {
    return {
      ok: false,
      reason: 'carried-exceeds-target',
      excessG: -shortG,
      carriedFraction: carriedSaltG / massWithoutPlainSaltG,
    };
  }
  return { ok: true, plainSaltG: Math.max(0, shortG) / (1 - targetFraction) };
}
