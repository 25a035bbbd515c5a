import { compensatedSum, roundTo } from '../quantities/index.ts';

/** An ingredient that the name or the picture stresses, as it went in. */
export interface QuidPart {
  readonly name: string;
  readonly massG: number;
}

/** How its quantity is declared: a whole per cent, or whole grams used for 100 g of the food. */
export interface Quid {
  readonly name: string;
  readonly massG: number;
  /** Of the mixing bowl. */
  readonly ofMixFraction: number;
  /** Of the finished food; above 1 where more went in than came out. */
  readonly ofFinishedFraction: number;
  readonly declare: { readonly as: 'percent' | 'grams-per-100'; readonly figure: number };
}

const PER_CENT = 100;

/**
 * Quantities to declare: Regulation (EU) No 1169/2011, Annex VIII. The share is that at the mixing bowl; where the food
 * loses water, that of the finished food. When one share, or all labelled shares together, pass 100 %, all are given as
 * grams used for 100 g of the food instead.
 *
 * @param ingoingG everything that went in
 * @param finishedG what came out
 * @returns null for masses that are none
 */
export function quidOf(parts: readonly QuidPart[], ingoingG: number, finishedG: number): Quid[] | null {
  const masses = [ingoingG, finishedG, ...parts.map(({ massG }) => massG)];
  if (!masses.every((massG) => massG >= 0 && Number.isFinite(massG)) || !(ingoingG > 0) || !(finishedG > 0))
    return null;
  // Where the food took up water the bowl's share would be too high: the heavier of the two rules.
  const lostWater = finishedG < ingoingG;
  const baseG = lostWater ? finishedG : Math.max(ingoingG, finishedG);
  const over = compensatedSum(parts.map(({ massG }) => massG)) / baseG > 1;
  return parts.map(({ name, massG }) => ({
    name,
    massG,
    ofMixFraction: massG / ingoingG,
    ofFinishedFraction: massG / finishedG,
    declare: {
      as: over ? 'grams-per-100' : 'percent',
      figure: roundTo((massG / baseG) * PER_CENT, 0),
    },
  }));
}

/**
 * Added water as the EU counts it: the finished food less everything else that went in, as a share of the finished food.
 * Regulation (EU) No 1169/2011, Annex VII part A.
 * @param othersG all ingredients but the water
 * @example addedWaterShare(1100, 1022) // 0.0709
 */
export function addedWaterShare(finishedG: number, othersG: number): number | null {
  if (!(finishedG > 0) || !(othersG >= 0) || !Number.isFinite(finishedG) || !Number.isFinite(othersG))
    return null;
  return Math.max(0, finishedG - othersG) / finishedG;
}
