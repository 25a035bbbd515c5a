import { priceAtFoodCost, priceLeaving, withTax } from './price.ts';
import type { Price, Pricing } from './values.ts';

/**
 * The price of something from what it costs, by the method the plan names. Food cost and gross profit look at `food`, a
 * margin at `full`.
 */
export function priceOf(
  cost: { readonly food: number | null; readonly full: number | null },
  pricing: Pricing,
): Price {
  const { method, shareFraction, taxFraction } = pricing;
  const base = method === 'margin' ? cost.full : cost.food;
  if (base === null || shareFraction === null) return { exTax: null, incTax: null };
  const exTax =
    method === 'food-cost' ? priceAtFoodCost(base, shareFraction) : priceLeaving(base, shareFraction);
  return { exTax, incTax: exTax === null || taxFraction === null ? null : withTax(exTax, taxFraction) };
}
