/**
 * Salt of a piece after it has dried: salt stays, water goes. s ÷ (1 − loss).
 *
 * Derived: mass balance. Drip takes salt along and fat running out concentrates it, so both make it differ.
 *
 * @param saltFraction salt on the weight before, 0–1
 * @param lossFraction weight lost, of the weight before, 0 to under 1
 * @returns fraction of the weight after, or null when unusable or more salt than weight would be left
 * @example saltAfterLoss(0.03, 0.35) // 0.0462
 */
export function saltAfterLoss(saltFraction: number, lossFraction: number): number | null {
  if (!(saltFraction >= 0) || !(lossFraction >= 0 && lossFraction < 1)) return null;
  const after = saltFraction / (1 - lossFraction);
  return after <= 1 ? after : null;
}

/** Weight at which a loss is reached, g; null when unusable. */
export function massAfterLoss(massG: number, lossFraction: number): number | null {
  if (!(massG > 0) || !Number.isFinite(massG) || !(lossFraction >= 0 && lossFraction < 1)) return null;
  return massG * (1 - lossFraction);
}
