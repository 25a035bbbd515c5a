import { concentratedFraction } from './after-loss.ts';
import type { LinedMix } from './lined.ts';
import type { Mix } from './mix.ts';

/** What is sliced, once the finished product is weighed. */
export interface FinishedSlice {
  /** Bowl and lining, g. */
  readonly ingoingG: number;
  readonly finishedG: number;
  /** Mass lost, fraction of what went in. */
  readonly lossFraction: number;
  /** Salt if all of it stayed: the most it can be where juices ran out, too little where fat did. */
  readonly saltFraction: number | null;
}

/**
 * Salt of the finished slice: what went in, on the weight that came out.
 * Null without a finished weight, or where more came out than went in: what was added then is not in the formula.
 * Derived: mass balance.
 */
export function finishedSlice(
  mix: Mix,
  lined: LinedMix | null,
  finishedG: number | null,
): FinishedSlice | null {
  const { totalG: ingoingG, salt } = lined ?? mix;
  if (ingoingG === null || finishedG === null || !(ingoingG > 0) || !(finishedG > 0)) return null;
  const lossFraction = 1 - finishedG / ingoingG;
  if (lossFraction < 0) return null;
  return {
    ingoingG,
    finishedG,
    lossFraction,
    saltFraction: salt.fraction === null ? null : concentratedFraction(salt.fraction, lossFraction),
  };
}
