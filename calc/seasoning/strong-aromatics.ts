import { AROMATICS_SHARE, TASTE_ABOVE } from '../plan/index.ts';
import { spiceOf } from './spices.ts';

/**
 * Where to begin tasting a strong aromatic in a batch far larger than the one it was tasted in: 85–95 % of the multiplied
 * weight above fivefold, a test poach deciding. Salt, cure, sugar and phosphate are never reduced, and neither is a
 * spice this table does not call strong. Common practice, no source.
 *
 * @param massG multiplied weight
 * @param times batch ÷ batch it was tasted in
 * @returns null where the multiplied weight stands
 */
export function strongAromaticG(
  spiceId: string | null,
  massG: number,
  times: number,
): { readonly leastG: number; readonly mostG: number } | null {
  if (!spiceOf(spiceId)?.strong || !(times > TASTE_ABOVE) || !(massG > 0) || !Number.isFinite(massG))
    return null;
  return { leastG: massG * AROMATICS_SHARE.min, mostG: massG * AROMATICS_SHARE.max };
}
