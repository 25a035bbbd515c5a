import { roundTo } from '../quantities/index.ts';

/** Places of a currency with a hundredth. */
const USUAL_DECIMALS = 2;

/**
 * Amounts in whole smallest coins, each rounded as decimal digits are (a half away from zero), and their total as the
 * sum of what is printed, so that a printed column adds up. Costs and prices are reckoned from the unrounded amounts.
 * @example inMinorUnits([1.005, 2.005]) // { parts: [101, 201], total: 302 }
 */
export function inMinorUnits(
  amounts: readonly number[],
  decimals: number = USUAL_DECIMALS,
): { readonly parts: readonly number[]; readonly total: number } {
  const parts = amounts.map((amount) => Math.round(roundTo(amount, decimals) * 10 ** decimals));
  return { parts, total: parts.reduce((sum, part) => sum + part, 0) };
}
