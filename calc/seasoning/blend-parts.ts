import { compensatedSum } from '../quantities/index.ts';

/** A blend taken apart. */
export interface BlendPart {
  readonly shareFraction: number;
  readonly massG: number;
  /** On the total mix. */
  readonly gPerKg: number;
}

/**
 * Grams of each spice of a blend: part ÷ Σ parts × dose × batch.
 * Derived.
 *
 * @param doseGPerKg on everything in the bowl
 * @returns null when parts, dose or batch are not all numbers of at least 0 with a sum above 0
 * @example blendParts([14, 3, 2, 1], 3, 4000) // 8.4, 1.8, 1.2 and 0.6 g
 */
export function blendParts(parts: readonly number[], doseGPerKg: number, batchG: number): BlendPart[] | null {
  if (![...parts, doseGPerKg, batchG].every((value) => value >= 0 && Number.isFinite(value))) return null;
  const sum = compensatedSum(parts);
  if (!(sum > 0) || !Number.isFinite(sum)) return null;
  return parts.map((part) => {
    const shareFraction = part / sum;
    const gPerKg = shareFraction * doseGPerKg;
    return { shareFraction, gPerKg, massG: (gPerKg * batchG) / 1000 };
  });
}
