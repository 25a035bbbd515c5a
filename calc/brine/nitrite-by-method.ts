import { nitritePpm } from '../cure/index.ts';

// lb, kg or g: one unit throughout. Pickle is all of it, water with everything dissolved in it.

/**
 * Ingoing nitrite of a pumped or massaged product, mg/kg of green weight: nitrite × pump ÷ pickle.
 * Immersion by percent pick-up is the same with the pick-up in place of the pump.
 *
 * Source: FSIS Directive 7620.3 (rev. 1995), pumped products; immersion, method 1.
 *
 * @param nitrite sodium nitrite in the whole pickle
 * @param pickle all of the pickle
 * @param pumpFraction weight gained ÷ green weight
 * @returns null for unusable numbers
 * @example pumpedPpm(0.375, 462.1875, 0.2) // 162.3
 */
export function pumpedPpm(nitrite: number, pickle: number, pumpFraction: number): number | null {
  if (!(pumpFraction >= 0) || !(nitrite >= 0)) return null;
  return nitritePpm(nitrite * pumpFraction, pickle);
}

/**
 * Ingoing nitrite of an immersion at equilibrium, mg/kg: nitrite ÷ (green weight + pickle).
 *
 * Source: FSIS Directive 7620.3 (rev. 1995), immersion, method 2.
 *
 * @example equilibriumPpm(1.875, 5000, 5000) // 187.5
 */
export function equilibriumPpm(nitrite: number, green: number, pickle: number): number | null {
  return green > 0 && pickle > 0 ? nitritePpm(nitrite, green + pickle) : null;
}

/** Worst case of any soak: all of the nitrite ends in the meat. Derived. */
export function worstCasePpm(nitrite: number, green: number): number | null {
  return nitritePpm(nitrite, green);
}

/** The three figures of one vat, side by side; they can differ five-fold. Null is unknown. */
export interface ImmersionPpm {
  readonly pickUpPpm: number | null;
  readonly equilibriumPpm: number | null;
  readonly worstPpm: number | null;
}

/** Both federal methods and the worst case, mg/kg of green weight. */
export function immersionPpm(vat: {
  readonly nitriteG: number;
  readonly greenG: number;
  readonly pickleG: number;
  readonly pickUpFraction: number | null;
}): ImmersionPpm {
  const { nitriteG, greenG, pickleG, pickUpFraction } = vat;
  return {
    pickUpPpm: pickUpFraction === null ? null : pumpedPpm(nitriteG, pickleG, pickUpFraction),
    equilibriumPpm: equilibriumPpm(nitriteG, greenG, pickleG),
    worstPpm: worstCasePpm(nitriteG, greenG),
  };
}

/**
 * Nitrite the pickle must hold for a level in the meat, mg/kg of pickle: level ÷ pump.
 *
 * @example picklePpm(120, 0.12) // 1000
 */
export function picklePpm(levelPpm: number, pumpFraction: number): number | null {
  if (!(levelPpm >= 0) || !(pumpFraction > 0) || !Number.isFinite(levelPpm / pumpFraction)) return null;
  return levelPpm / pumpFraction;
}

/**
 * Share of the green weight gained: percent pump or percent pick-up. Drain before the second weighing.
 *
 * @returns null when a weight is missing or the meat has lost weight
 */
export function gainFraction(greenG: number | null, wetG: number | null): number | null {
  if (greenG === null || wetG === null || !(greenG > 0) || !(wetG >= greenG)) return null;
  return Number.isFinite(wetG) ? wetG / greenG - 1 : null;
}
