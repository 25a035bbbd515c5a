import { compensatedSum } from '../quantities/index.ts';
import { isInBowl, isMeat } from './parts.ts';
import type { AmountBasis, LinePart } from './slice.ts';

/** A line's planned amount: grams, or a fraction of the meat block or of the total. Null is unknown. */
export interface PlannedAmount {
  readonly part: LinePart;
  readonly basis: AmountBasis;
  readonly amount: number | null;
}

export type MassProblem =
  /** Percentages of one base add up to more than all of it. */
  | 'percent-over-100'
  /** Everything is a percentage: nothing says how large the batch is. */
  | 'no-anchor';

export interface SolvedMasses {
  /** g, in the order of the lines. */
  readonly massesG: readonly (number | null)[];
  readonly meatBlockG: number | null;
  readonly totalG: number | null;
  readonly problem: MassProblem | null;
}

/** Room for the noise of adding percentages. */
const NOISE = 1e-9;

function sumOf(lines: readonly PlannedAmount[], basis: AmountBasis): number {
  return compensatedSum(lines.filter((line) => line.basis === basis).map((line) => line.amount ?? 0));
}

/**
 * Meat block and total from the shares, both at once, for a percentage of the total and one of the meat block may
 * stand in the same formula:
 *   meat  = grams of meat + (shares of total that are meat) × total + (shares of meat that are meat) × meat
 *   total = all grams     + (shares of total) × total               + (shares of meat) × meat
 * Derived: two mass balances in two unknowns.
 */
function solveBases(bowl: readonly PlannedAmount[]): { meatG: number; totalG: number } | MassProblem {
  const meat = bowl.filter((line) => isMeat(line.part));
  const gramsOfMeat = sumOf(meat, 'mass');
  const grams = sumOf(bowl, 'mass');
  const meatOfTotal = sumOf(meat, 'percent-of-total');
  const ofTotal = sumOf(bowl, 'percent-of-total');
  const meatOfMeat = sumOf(meat, 'percent-of-meat');
  const ofMeat = sumOf(bowl, 'percent-of-meat');
  if (ofTotal > 1 + NOISE || meatOfMeat > 1 + NOISE) return 'percent-over-100';
  if (grams === 0) return 'no-anchor';
  const determinant = (1 - meatOfMeat) * (1 - ofTotal) - meatOfTotal * ofMeat;
  if (Math.abs(determinant) <= NOISE) return ofTotal >= 1 - NOISE ? 'percent-over-100' : 'no-anchor';
  const meatG = (gramsOfMeat * (1 - ofTotal) + meatOfTotal * grams) / determinant;
  const totalG = (grams * (1 - meatOfMeat) + ofMeat * gramsOfMeat) / determinant;
  return meatG < 0 || totalG < 0 ? 'percent-over-100' : { meatG, totalG };
}

/** The meat block when something outside it is still unknown: possible unless a meat line is a share of the total. */
function meatAlone(bowl: readonly PlannedAmount[]): number | null {
  const meat = bowl.filter((line) => isMeat(line.part));
  const shares = sumOf(meat, 'percent-of-meat');
  const open = meat.some(
    (line) => line.amount === null || (line.basis === 'percent-of-total' && line.amount > 0),
  );
  return bowl.length === 0 || open || shares >= 1 - NOISE ? null : sumOf(meat, 'mass') / (1 - shares);
}

/**
 * Masses of all lines in g from grams, % of meat block and % of total.
 *
 * With an unknown amount in the bowl the total stays unknown; the meat block is still told where the meat alone
 * fixes it. A lining is weighed apart. Impossible or bottomless sums are told by `problem`, with every share null.
 */
export function solveMasses(lines: readonly PlannedAmount[]): SolvedMasses {
  const bowl = lines.filter((line) => isInBowl(line.part));
  const complete = bowl.length > 0 && bowl.every((line) => line.amount !== null);
  const solved = complete ? solveBases(bowl) : null;
  const problem = typeof solved === 'string' ? solved : null;
  const bases = typeof solved === 'string' ? null : solved;
  const meatBlockG = bases ? bases.meatG : problem ? null : meatAlone(bowl);
  const totalG = bases ? bases.totalG : null;
  const massesG = lines.map(({ basis, amount }) => {
    if (amount === null || basis === 'mass') return amount;
    const base = basis === 'percent-of-meat' ? meatBlockG : totalG;
    return base === null ? null : amount * base;
  });
  return { massesG, meatBlockG, totalG, problem };
}
