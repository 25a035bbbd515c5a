/** What the skin is taken to weigh of a piece that keeps it. FSIS Directive 7620.3: 90 % of a skin-on belly is meat. */
export const SKIN_FRACTION = 0.1;

/** Weight a cure is counted on, without skin. */
export interface SkinFree {
  readonly massG: number;
  /** From the weight with skin, less the agency's tenth. */
  readonly isEstimated: boolean;
}

/**
 * Skin-free green weight of a piece: as weighed, or nine tenths of its weight with skin.
 *
 * Source: FSIS Directive 7620.3 (rev. 1995), dry cured products.
 *
 * @returns null when neither is a weight above 0
 * @example skinFreeMass(null, 5000) // { massG: 4500, isEstimated: true }
 */
export function skinFreeMass(skinOffG: number | null, skinOnG: number | null): SkinFree | null {
  if (isMass(skinOffG)) return { massG: skinOffG, isEstimated: false };
  return isMass(skinOnG) ? { massG: skinOnG * (1 - SKIN_FRACTION), isEstimated: true } : null;
}

function isMass(massG: number | null): massG is number {
  return massG !== null && Number.isFinite(massG) && massG > 0;
}
