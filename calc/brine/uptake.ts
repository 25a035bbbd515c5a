import type { BrineMethod, FederalMethod } from './slice.ts';

/** Share of what the pickle holds that ends in the meat, each end 0–1. */
export interface Uptake {
  readonly low: number;
  readonly high: number;
}

/** What an uptake is told from. Masses in g, fractions of green weight; null is unknown. */
export interface UptakeQuestion {
  readonly method: BrineMethod;
  readonly greenG: number;
  readonly pickleG: number;
  readonly pumpFraction: number | null;
  readonly pickUpFraction: number | null;
  /** The federal method a person works by, where the rule set knows it. */
  readonly federalMethod: FederalMethod | null;
}

/**
 * How much of the pickle's nitrite, accelerator or phosphate is in the meat.
 *
 * An injection: what was pumped. A soak: by the federal method chosen; without one, at least by the
 * lesser of the two and at most all of it. A timed brine is never at equilibrium.
 *
 * @returns null when an injection's pump is not known, or there is no meat or no pickle
 */
export function uptakeOf(question: UptakeQuestion): Uptake | null {
  const { method, greenG, pickleG, pumpFraction, pickUpFraction, federalMethod } = question;
  if (!(greenG > 0 && pickleG > 0)) return null;
  const byShare = (fraction: number) => Math.min(1, (fraction * greenG) / pickleG);
  if (method === 'inject') {
    if (pumpFraction === null) return null;
    const pumped = byShare(pumpFraction);
    return { low: pumped, high: pumped };
  }
  const pickUp = pickUpFraction === null ? null : byShare(pickUpFraction);
  const even = method === 'timed' ? null : greenG / (greenG + pickleG);
  // Chosen and not weighed: nothing is certain but that no more than all goes in.
  if (federalMethod === 'pick-up')
    return pickUp === null ? { low: 0, high: 1 } : { low: pickUp, high: pickUp };
  if (federalMethod === 'equilibrium' && even !== null) return { low: even, high: even };
  const known = [pickUp, even].filter((share) => share !== null);
  return { low: known.length === 0 ? 0 : Math.min(...known), high: 1 };
}
