import { FORMULA_WEIGHT } from './formula-weights.ts';

// One amount of nitrite has a different weight as sodium salt, as potassium salt and as ion. A limit
// is only comparable with a figure in its own form. Each function takes and gives a mass or a
// concentration in any unit; the unit comes out as it went in.

/**
 * Nitrite ion (NO₂⁻) in an amount of sodium nitrite: × 46.0055 ÷ 68.9953 = 0.6668. Derived.
 *
 * @example nitriteIonFromSodiumNitrite(100) // 66.68 mg/kg, within a limit of 80 mg/kg as ion
 */
export function nitriteIonFromSodiumNitrite(sodiumNitrite: number): number {
  return (sodiumNitrite * FORMULA_WEIGHT.nitriteIon) / FORMULA_WEIGHT.sodiumNitrite;
}

/**
 * Sodium nitrite that holds an amount of nitrite ion: × 68.9953 ÷ 46.0055 = 1.4997. Derived.
 *
 * @example sodiumNitriteFromNitriteIon(80) // 119.98
 */
export function sodiumNitriteFromNitriteIon(nitriteIon: number): number {
  return (nitriteIon * FORMULA_WEIGHT.sodiumNitrite) / FORMULA_WEIGHT.nitriteIon;
}

/**
 * Sodium nitrite with the same nitrite as an amount of potassium nitrite: × 0.8107. Derived.
 *
 * @example sodiumNitriteFromPotassiumNitrite(148) // 119.99, the pair of 9 CFR 424.22(b)(1)
 */
export function sodiumNitriteFromPotassiumNitrite(potassiumNitrite: number): number {
  return (potassiumNitrite * FORMULA_WEIGHT.sodiumNitrite) / FORMULA_WEIGHT.potassiumNitrite;
}

/**
 * Potassium nitrite with the same nitrite as an amount of sodium nitrite: × 1.2335. Derived.
 *
 * @example potassiumNitriteFromSodiumNitrite(120) // 148.02; 9 CFR 424.22(b)(1) prints 148
 */
export function potassiumNitriteFromSodiumNitrite(sodiumNitrite: number): number {
  return (sodiumNitrite * FORMULA_WEIGHT.potassiumNitrite) / FORMULA_WEIGHT.sodiumNitrite;
}

/**
 * Nitrate ion (NO₃⁻) in an amount of sodium nitrate: × 0.7295. Derived.
 *
 * @example nitrateIonFromSodiumNitrate(100) // 72.95
 */
export function nitrateIonFromSodiumNitrate(sodiumNitrate: number): number {
  return (sodiumNitrate * FORMULA_WEIGHT.nitrateIon) / FORMULA_WEIGHT.sodiumNitrate;
}

/**
 * Nitrate ion (NO₃⁻) in an amount of potassium nitrate: × 0.6133. Derived.
 *
 * @example nitrateIonFromPotassiumNitrate(100) // 61.33
 */
export function nitrateIonFromPotassiumNitrate(potassiumNitrate: number): number {
  return (potassiumNitrate * FORMULA_WEIGHT.nitrateIon) / FORMULA_WEIGHT.potassiumNitrate;
}

/**
 * Sodium nitrite with as much nitrogen as an amount of sodium nitrate: × 0.8118. Derived. For laws
 * that add nitrate to nitrite "calculated as sodium nitrite".
 *
 * @example sodiumNitriteFromSodiumNitrate(100) // 81.18
 */
export function sodiumNitriteFromSodiumNitrate(sodiumNitrate: number): number {
  return (sodiumNitrate * FORMULA_WEIGHT.sodiumNitrite) / FORMULA_WEIGHT.sodiumNitrate;
}
