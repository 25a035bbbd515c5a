/** Water that meat protein is taken to bring with it, parts to one of protein: 9 CFR 318.22(b). */
const WATER_PER_PROTEIN = 4;
/** Points of protein from extracts and dry sources that are allowed for free: 9 CFR 318.22(b), footnote 1. */
const FREE_PROTEIN_FRACTION = 0.01;

/**
 * Added water in a cooked sausage as United States plants reckon it, from an analysis of the finished product:
 * water − 4 × (protein − (protein from extracts, dried and non-meat sources − 1 point)). The allowance is not
 * turned round where those sources bring less than a point.
 *
 * Source: 9 CFR 318.22(b).
 *
 * @param waterFraction total water, 0–1
 * @param proteinFraction total protein, 0–1
 * @param otherProteinFraction of it from extracts, dried and non-meat sources
 * @returns fraction 0–1 (never below none), or null for input that is no fraction
 * @example addedWaterFraction(0.58, 0.12, 0.025) // 0.16
 */
export function addedWaterFraction(
  waterFraction: number,
  proteinFraction: number,
  otherProteinFraction: number,
): number | null {
  const all = [waterFraction, proteinFraction, otherProteinFraction];
  if (!all.every((value) => value >= 0 && value <= 1) || otherProteinFraction > proteinFraction) return null;
  const counted = Math.max(0, otherProteinFraction - FREE_PROTEIN_FRACTION);
  return Math.max(0, waterFraction - WATER_PER_PROTEIN * (proteinFraction - counted));
}

/**
 * Most of one ingredient that is bounded as a share of the total it is itself part of: others × limit ÷ (1 − limit).
 * Derived.
 * @example largestShareG(9700, 0.03) // 300 g of water in a raw sausage, 3 % of 10 kg
 */
export function largestShareG(othersG: number, limitFraction: number): number | null {
  if (!(othersG >= 0) || !(limitFraction >= 0) || limitFraction >= 1) return null;
  return (othersG * limitFraction) / (1 - limitFraction);
}
