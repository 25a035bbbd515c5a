import { estimateWaterActivity, type WaterActivityEstimate } from '../brine/index.ts';
import { saltOnWaterFraction } from '../formula/index.ts';

/** Salt on the water phase once a share of the weight has gone as water, and the water activity it gives. */
export interface AfterDrying {
  readonly waterPhaseFraction: number;
  /** Null beyond saturation. High for real products: sugar, acid and peptides lower the true one. */
  readonly waterActivity: WaterActivityEstimate | null;
}

/**
 * Salt ÷ (salt + moisture − loss), fractions of the start. Derived: mass balance, only water lost.
 *
 * @returns null for unusable numbers or when more is lost than there is water
 * @example afterDrying(0.028, 0.58, 0.35) // 10.85 % on the water phase, about 0.929
 */
export function afterDrying(
  saltFraction: number,
  moistureFraction: number,
  lossFraction: number,
): AfterDrying | null {
  if (![saltFraction, moistureFraction, lossFraction].every((value) => value >= 0 && value <= 1)) return null;
  const waterLeft = moistureFraction - lossFraction;
  if (waterLeft <= 0) return null;
  const waterPhaseFraction = saltOnWaterFraction(saltFraction, waterLeft);
  if (waterPhaseFraction === null) return null;
  return { waterPhaseFraction, waterActivity: estimateWaterActivity(waterPhaseFraction) };
}
