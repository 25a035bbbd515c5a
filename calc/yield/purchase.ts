/**
 * Mass to buy for a mass that is left after trimming: needed ÷ yield. Never needed × (1 + loss), which buys too little.
 * Derived: mass balance.
 * @returns g, or null for input that is no mass or no yield
 * @example purchaseG(7000, 0.7) // 10 000
 */
export function purchaseG(neededG: number, yieldFraction: number): number | null {
  if (!(neededG >= 0) || !Number.isFinite(neededG)) return null;
  if (!(yieldFraction > 0) || !(yieldFraction <= 1)) return null;
  return neededG / yieldFraction;
}
