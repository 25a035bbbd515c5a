/** Caul for a litre of mould, g: 40–60 for one of 1.2 L. Common practice, no source. */
const CAUL_G_PER_ML = { min: 40 / 1200, max: 60 / 1200 } as const;
const NOISE = 1e-9;

/**
 * Slices or strips laid across a mould side by side, each over the last by an overlap: bacon 5–8 mm, fat sheet 10–15 mm.
 * Derived.
 *
 * @param lengthMm of the mould
 * @param pieceMm width of one slice
 * @returns null when a slice is no wider than its overlap or a measure is none
 * @example slicesAcross(290, 45, 6) // 8
 */
export function slicesAcross(lengthMm: number, pieceMm: number, overlapMm: number): number | null {
  if (![lengthMm, pieceMm].every((value) => value > 0 && Number.isFinite(value))) return null;
  if (!(overlapMm >= 0) || !(overlapMm < pieceMm)) return null;
  return Math.max(1, Math.ceil((lengthMm - overlapMm) / (pieceMm - overlapMm) - NOISE));
}

/** A lining of slices. */
export interface SlicedLining {
  readonly count: number;
  readonly massG: number;
  /** Salt it brings, which seasons the outside of the batch and counts in its total. */
  readonly saltG: number | null;
}

/**
 * Bacon or ham for one mould: slices across, each as long as the sheet the mould wants. Masses from the slice as weighed.
 *
 * @param sliceG mass of one slice, weighed
 * @param saltFraction off the pack; null is unknown
 */
export function slicedLining(
  count: number,
  sliceG: number,
  saltFraction: number | null,
): SlicedLining | null {
  if (!Number.isInteger(count) || count < 0 || !(sliceG > 0) || !Number.isFinite(sliceG)) return null;
  const massG = count * sliceG;
  return { count, massG, saltG: saltFraction === null ? null : massG * saltFraction };
}

/** Caul for a mould, g. Null for what is no volume. */
export function caulG(brimMl: number): { readonly minG: number; readonly maxG: number } | null {
  if (!(brimMl > 0) || !Number.isFinite(brimMl)) return null;
  return { minG: brimMl * CAUL_G_PER_ML.min, maxG: brimMl * CAUL_G_PER_ML.max };
}
