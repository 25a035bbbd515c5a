/** The noise of dividing decimal lengths. */
const NOISE = 1e-9;

/** One piece on the board. */
export interface CutRequest {
  readonly lengthMm: number;
  readonly massG: number;
  readonly thicknessMm: number;
  /** Off each end. */
  readonly endTrimMm: number;
  /** Lost to the blade at every slice. */
  readonly kerfMm: number;
}

/** One piece cut up. Slices, ends, blade and rest are all of it. */
export interface Cut {
  readonly slices: number;
  readonly sliceG: number;
  readonly slicesG: number;
  readonly endsG: number;
  readonly kerfG: number;
  /** Too thin for another slice. */
  readonly restG: number;
}

/**
 * Whole slices of a piece of even section: (length − 2 × end) ÷ (slice + kerf), rounded down. Mass goes by length, so
 * a tapered or domed piece gives smaller slices at its ends than told here.
 * Common practice, no source.
 *
 * @returns null for input that is no length or mass; no slice at all is 0, not null
 * @example 290 mm at 12 mm with 10 mm ends and a wire: 22 slices
 */
export function cutSlices({ lengthMm, massG, thicknessMm, endTrimMm, kerfMm }: CutRequest): Cut | null {
  const all = [lengthMm, massG, thicknessMm, endTrimMm, kerfMm];
  if (!all.every((value) => value >= 0 && Number.isFinite(value))) return null;
  if (lengthMm === 0 || thicknessMm === 0 || 2 * endTrimMm > lengthMm) return null;
  const slices = Math.floor((lengthMm - 2 * endTrimMm) / (thicknessMm + kerfMm) + NOISE);
  const gPerMm = massG / lengthMm;
  const sliceG = thicknessMm * gPerMm;
  const slicesG = slices * sliceG;
  const endsG = 2 * endTrimMm * gPerMm;
  const kerfG = slices * kerfMm * gPerMm;
  return { slices, sliceG, slicesG, endsG, kerfG, restG: Math.max(0, massG - slicesG - endsG - kerfG) };
}

/** A piece parted by the scale. */
export interface Packed {
  readonly packs: number;
  readonly packsG: number;
  readonly endsG: number;
  readonly restG: number;
}

/**
 * Whole portions of a mass: finished × (1 − ends) ÷ portion, rounded down.
 * @example 2,112 g in packs of 50 g after 3 % ends: 40 packs
 */
export function cutByMass(massG: number, packG: number, endLossFraction: number): Packed | null {
  if (!(massG >= 0) || !Number.isFinite(massG) || !(packG > 0) || !Number.isFinite(packG)) return null;
  if (!(endLossFraction >= 0) || endLossFraction >= 1) return null;
  const endsG = massG * endLossFraction;
  const packs = Math.floor((massG - endsG) / packG + NOISE);
  return { packs, packsG: packs * packG, endsG, restG: Math.max(0, massG - endsG - packs * packG) };
}
