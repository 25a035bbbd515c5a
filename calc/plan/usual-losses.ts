import type { Band } from '../formula/index.ts';

function band(min: number, max: number): Band {
  return { min: min / 100, max: max / 100 };
}

const COUNTRY = band(6, 12);
const STRAIGHT = band(5, 10);
const MOUSSELINE = band(1, 4);
const ROLLED = band(5, 10);
const POACHED_SAUSAGE = band(3, 8);

/**
 * Cook and chill loss of raw fill by product family: fat and juice that run out. Rillettes are counted before their fat
 * goes back. Common practice, no source. Notes only.
 */
const USUAL_COOK_LOSS: Readonly<Record<string, Band>> = {
  'country-terrine': COUNTRY,
  'game-terrine': COUNTRY,
  'straight-terrine': STRAIGHT,
  'gratin-terrine': STRAIGHT,
  'en-croute': band(4, 8),
  'meat-mousseline': MOUSSELINE,
  'fish-mousseline': MOUSSELINE,
  'poultry-liver-parfait': band(1, 3),
  // From cooking in a sealed bag (4–8 %) to cooking bare (8–15 %).
  'cooked-ham': band(4, 15),
  galantine: ROLLED,
  ballotine: ROLLED,
  rillettes: band(30, 45),
  'cooked-coarse-sausage': POACHED_SAUSAGE,
  'emulsified-sausage': POACHED_SAUSAGE,
  'liver-sausage': POACHED_SAUSAGE,
  'dried-muscle': band(30, 40),
};

/** The usual cook loss of a family, or null where the trade has no figure. */
export function usualCookLoss(familyId: string | null): Band | null {
  return familyId !== null && Object.hasOwn(USUAL_COOK_LOSS, familyId)
    ? (USUAL_COOK_LOSS[familyId] ?? null)
    : null;
}

/** Ends and crumbs, and what stays on bowl and filler. Common practice, no source. */
export const USUAL_END_LOSS: Band = band(2, 4);
export const USUAL_RESIDUE: Band = band(1, 3);
