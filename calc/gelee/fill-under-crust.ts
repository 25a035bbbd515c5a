/** Jelly to a litre of room inside a crust: the filling shrinks 3–8 %. Common practice, no source. */
export const JELLY_PER_CAVITY = { min: 0.06, max: 0.12 } as const;

/**
 * Jelly that fills what a shrunken filling leaves.
 * @param cavityMl room inside the crust, all pies together
 * @returns mL, or null for what is no volume
 * @example jellyUnderCrustMl(1620) // 97 to 194 mL
 */
export function jellyUnderCrustMl(
  cavityMl: number,
): { readonly minMl: number; readonly maxMl: number } | null {
  if (!(cavityMl > 0) || !Number.isFinite(cavityMl)) return null;
  return { minMl: cavityMl * JELLY_PER_CAVITY.min, maxMl: cavityMl * JELLY_PER_CAVITY.max };
}

/** Pouring, °C: the core of the pie at most, the jelly between, and what melts the fat. Common practice, no source. */
export const POUR = { coreMostC: 40, minC: 25, maxC: 30, meltsFatC: 35 } as const;
/** Setting and melting of gelatine, °C. Common practice, no source. */
export const GELATINE_SETS_C = { min: 15, max: 20 } as const;
export const GELATINE_MELTS_C = { min: 27, max: 34 } as const;
/** Setting and melting of agar, °C. From memory, no source read. */
export const AGAR_SETS_C = { min: 32, max: 40 } as const;
export const AGAR_MELTS_C = 85;
/** Water to soak gelatine, times its mass. Part of the liquid. Common practice, no source. */
export const SOAKING_WATER = { min: 5, max: 6 } as const;
