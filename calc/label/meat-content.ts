import type { SourceId } from '../sources/index.ts';

/** Classes of meat with limits of their own. */
export type MeatClass = 'pork' | 'bird-rabbit' | 'mammal';

export interface MeatLimits {
  /** Most fat, share of the declared meat. */
  readonly fatFraction: number;
  /** Most collagen, share of meat protein. */
  readonly collagenOfProteinFraction: number;
}

/**
 * Most fat and connective tissue that may count as meat: Regulation (EU) No 1169/2011, Annex VII part B point 17.
 * Collagen is hydroxyproline × 8. Mixtures that are mostly mammal go by the mammals' row.
 */
export const MEAT_LIMITS: Readonly<Record<MeatClass, MeatLimits>> = {
  pork: { fatFraction: 0.3, collagenOfProteinFraction: 0.25 },
  'bird-rabbit': { fatFraction: 0.15, collagenOfProteinFraction: 0.1 },
  mammal: { fatFraction: 0.25, collagenOfProteinFraction: 0.25 },
};
export const MEAT_LIMITS_SOURCE: SourceId = 'eu-1169-2011';
export const MEAT_METHOD_SOURCE: SourceId = 'uk-meat-content-2003';

/** Connective tissue that goes with one part of collagen: guidance notes of 2003, page 61. */
const TISSUE_PER_COLLAGEN = 37 / 8;

/** Meat as it goes in, as shares of its own mass. */
export interface MeatMakeup {
  readonly fatFraction: number;
  readonly proteinFraction: number;
  readonly collagenFraction: number;
}

/** All as shares of the meat that went in. */
export interface MeatContent {
  readonly collagenOfProteinFraction: number;
  readonly allowedCollagenFraction: number;
  readonly excessCollagenFraction: number;
  readonly excessTissueFraction: number;
  readonly allowedFatFraction: number;
  readonly excessFatFraction: number;
  /** What may be called meat. */
  readonly declarableFraction: number;
}

/**
 * How much of a meat may be declared as meat. Excess connective tissue is taken off first, excess fat after it.
 * UK guidance notes of September 2003, page 61; the allowance for collagen from memory, by symmetry with that for fat.
 *
 * @returns null for input that is no meat: a share outside 0–1, collagen above protein, or no protein
 */
export function meatContent(
  { fatFraction: fat, proteinFraction: protein, collagenFraction: collagen }: MeatMakeup,
  limits: MeatLimits,
): MeatContent | null {
  const shares = [fat, protein, collagen];
  if (!shares.every((share) => share >= 0 && share <= 1)) return null;
  if (protein === 0 || collagen > protein || fat + protein > 1) return null;
  const { fatFraction: fatLimit, collagenOfProteinFraction: collagenLimit } = limits;
  const allowedCollagen = (collagenLimit * (protein - collagen)) / (1 - collagenLimit);
  const excessCollagen = Math.max(0, collagen - allowedCollagen);
  // Tissue, fat and what is neither cannot be more than all of it.
  const excessTissue = Math.min(1 - fat, excessCollagen * TISSUE_PER_COLLAGEN);
  const allowedFat = (fatLimit * (1 - excessTissue - fat)) / (1 - fatLimit);
  const excessFat = Math.max(0, fat - allowedFat);
  return {
    collagenOfProteinFraction: collagen / protein,
    allowedCollagenFraction: allowedCollagen,
    excessCollagenFraction: excessCollagen,
    excessTissueFraction: excessTissue,
    allowedFatFraction: allowedFat,
    excessFatFraction: excessFat,
    declarableFraction: Math.max(0, 1 - excessFat - excessTissue),
  };
}
