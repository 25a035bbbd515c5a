/**
 * Prices from costs. Everything is a share of the price before tax; nothing is rounded in between. Common practice, no
 * source; derived.
 */

function usable(cost: number, share: number): boolean {
  return cost >= 0 && Number.isFinite(cost) && share >= 0 && share <= 1;
}

/**
 * Price that leaves a share of itself above the cost: cost ÷ (1 − share). With food cost it is the gross profit, with
 * the full cost the margin. Not cost × (1 + share), which leaves less.
 * @example priceLeaving(0.82, 0.7) // 2.733…
 */
export function priceLeaving(cost: number, shareOfPrice: number): number | null {
  return usable(cost, shareOfPrice) && shareOfPrice < 1 ? cost / (1 - shareOfPrice) : null;
}

/**
 * Price of which the food is a given share: cost ÷ share. A food cost of 30 % is a gross profit of 70 %.
 * @example priceAtFoodCost(0.82, 0.3) // 2.733…
 */
export function priceAtFoodCost(cost: number, foodCostFraction: number): number | null {
  return usable(cost, foodCostFraction) && foodCostFraction > 0 ? cost / foodCostFraction : null;
}

/** Share of a price before tax that the food takes. */
export function foodCostFraction(cost: number, priceExTax: number): number | null {
  return cost >= 0 && priceExTax > 0 ? cost / priceExTax : null;
}

/** Price with tax: price × (1 + tax). */
export function withTax(priceExTax: number, taxFraction: number): number | null {
  return priceExTax >= 0 && taxFraction >= 0 && Number.isFinite(taxFraction)
    ? priceExTax * (1 + taxFraction)
    : null;
}
