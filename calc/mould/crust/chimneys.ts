/** One chimney to so much length, mm. Common practice, no source. */
export const LENGTH_PER_CHIMNEY_MM = { min: 100, max: 150 } as const;
/** Hole and paper funnel, mm. Common practice, no source. */
export const CHIMNEY_MM = { holeMin: 12, holeMax: 15, funnelMin: 20, funnelMax: 30 } as const;

/** Chimneys of a lid: how few, how many, and where the few stand from one end, mm. */
export interface Chimneys {
  readonly least: number;
  readonly most: number;
  readonly placesMm: readonly number[];
}

/**
 * Chimneys of a lid: one to each 100–150 mm of length, at least one, evenly apart. Common practice, no source.
 * @returns null for what is no length
 * @example chimneysFor(300) // 2 to 3, at 75 and 225 mm
 */
export function chimneysFor(lengthMm: number): Chimneys | null {
  if (!(lengthMm > 0) || !Number.isFinite(lengthMm)) return null;
  const least = Math.max(1, Math.ceil(lengthMm / LENGTH_PER_CHIMNEY_MM.max));
  const most = Math.max(least, Math.floor(lengthMm / LENGTH_PER_CHIMNEY_MM.min));
  const gapMm = lengthMm / least;
  return { least, most, placesMm: Array.from({ length: least }, (_, index) => gapMm * (index + 0.5)) };
}
