import type { Spread } from './spread.ts';
import type { TrimYield } from './trim-yield.ts';

/** One trial read and reckoned. */
export interface TrialResult extends TrimYield {
  readonly trialId: string;
  readonly purchasedG: number | null;
}

/** All trials of one test. Trials whose yield is unknown count in nothing. */
export interface YieldTestResult {
  readonly testId: string;
  readonly perKg: number | null;
  readonly trials: readonly TrialResult[];
  readonly usable: Spread | null;
  /** By part, in the order of the parts, over the trials where it was weighed. */
  readonly parts: readonly { readonly partId: string; readonly spread: Spread | null }[];
  readonly unaccounted: Spread | null;
  readonly costPerUsableKg: Spread | null;
  readonly costFactor: Spread | null;
  readonly neededG: number | null;
  /** To buy at the mean yield, and at the lowest seen. */
  readonly purchaseG: number | null;
  readonly purchaseAtLowestG: number | null;
}

export interface YieldValues {
  readonly tests: readonly YieldTestResult[];
}
