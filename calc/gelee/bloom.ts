function sound(massG: number, from: number, to: number): boolean {
  return (
    massG >= 0 && Number.isFinite(massG) && [from, to].every((bloom) => bloom > 0 && Number.isFinite(bloom))
  );
}

/**
 * Gelatine of another bloom by the product of mass and bloom. The kitchen's shortcut: it over-corrects when both jellies
 * should be equally firm. Source: `gelatine-linear-rule`.
 * @returns g, or null for what is no mass or no bloom
 * @example bloomLinearG(10, 240, 200) // 12
 */
export function bloomLinearG(massG: number, fromBloom: number, toBloom: number): number | null {
  return sound(massG, fromBloom, toBloom) ? (massG * fromBloom) / toBloom : null;
}

/**
 * Gelatine of another bloom for the same firmness: mass × √(bloom ÷ bloom), since firmness rises about as bloom × the
 * square of the concentration. Source: `gmia-gelatin-handbook`, from memory.
 * @returns g, or null for what is no mass or no bloom
 * @example bloomSquareRootG(35, 200, 250) // 31.3
 */
export function bloomSquareRootG(massG: number, fromBloom: number, toBloom: number): number | null {
  return sound(massG, fromBloom, toBloom) ? massG * Math.sqrt(fromBloom / toBloom) : null;
}

/** Both rules at once. */
export interface BloomConversion {
  readonly squareRootG: number;
  readonly linearG: number;
  /** Linear less square root: + where the linear rule takes more. */
  readonly differenceG: number;
}

/**
 * What both published rules make of a conversion, and how far they are apart.
 * @example convertBloom(10, 250, 200) // 11.18 and 12.5 g, 1.32 g apart
 */
export function convertBloom(massG: number, fromBloom: number, toBloom: number): BloomConversion | null {
  const squareRootG = bloomSquareRootG(massG, fromBloom, toBloom);
  const linearG = bloomLinearG(massG, fromBloom, toBloom);
  if (squareRootG === null || linearG === null) return null;
  return { squareRootG, linearG, differenceG: linearG - squareRootG };
}
