import type { Measures } from './shapes/geometry.ts';

/**
 * Inside measures that a crust leaves of a straight mould: thinner by the crust at both walls, and
 * by base and lid.
 *
 * @returns measures in mm; a measure the crust swallows comes out as 0 and makes no mould
 * @example crustCavity({ length: 300, width: 80, depth: 85 }, 4) // { length: 292, width: 72, depth: 77 }
 */
export function crustCavity(measures: Measures, crustMm: number): Measures {
  const inside = Object.entries(measures).map(([dimension, mm]) => [
    dimension,
    Math.max(0, mm - 2 * crustMm),
  ]);
  return Object.fromEntries(inside);
}
