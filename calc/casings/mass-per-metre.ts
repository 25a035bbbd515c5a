/**
 * Mass of a metre of filling: π/4 · d² · ρ. Derived: volume of a cylinder.
 *
 * @param stuffedMm diameter once stuffed
 * @param densityGPerMl of the filling
 * @param fullness share of a firm fill
 * @returns g/m, or null for what is no diameter, density or fullness
 * @example massPerMetreG(33, 1.03) // 881
 */
export function massPerMetreG(stuffedMm: number, densityGPerMl: number, fullness = 1): number | null {
  const given = [stuffedMm, densityGPerMl, fullness];
  if (!given.every((value) => value > 0 && Number.isFinite(value))) return null;
  return (Math.PI / 4) * stuffedMm ** 2 * densityGPerMl * fullness;
}

/** Casing for a mass. */
export interface CasingLength {
  /** Filled, m. */
  readonly filledM: number;
  /** With what breaks and is tied off, m. */
  readonly withSpareM: number;
}

/**
 * Metres of casing for a mass, spare on top. Derived.
 * @example casingForG(10_000, 881, 0.1) // 11.35 and 12.49 m
 */
export function casingForG(massG: number, perMetreG: number, spareFraction: number): CasingLength | null {
  if (!(massG >= 0) || !Number.isFinite(massG) || !(perMetreG > 0) || !Number.isFinite(perMetreG))
    return null;
  if (!(spareFraction >= 0) || !Number.isFinite(spareFraction)) return null;
  const filledM = massG / perMetreG;
  return { filledM, withSpareM: filledM * (1 + spareFraction) };
}
