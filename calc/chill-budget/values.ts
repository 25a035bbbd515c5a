import type { MixFineness } from './limits.ts';

/** The mix once it is brought together (`passId` null), and after each pass. Null is unknown. */
export interface MixStep {
  readonly passId: string | null;
  readonly massG: number | null;
  readonly tempC: number | null;
  /** Warmer than before the pass. */
  readonly riseC: number | null;
  /** Ice within the meat, g. */
  readonly iceInMeatG: number | null;
  /** Of ice and water added, what is frozen, g. */
  readonly addedIceLeftG: number | null;
}

export interface ChillBudgetValues {
  readonly massG: number | null;
  readonly steps: readonly MixStep[];
  readonly endC: number | null;
  /** The end with the melting of fat counted the other way: the truth lies about between. */
  readonly endOtherFatC: number | null;
  readonly limitC: number | null;
  readonly limitFrom: 'entered' | MixFineness | null;
  /** Heat of all the passes, J. */
  readonly workJ: number | null;
  /** Ice still to add for the mix to end at the limit, g, and its share of the mix without it. */
  readonly iceNeededG: number | null;
  readonly iceNeededFraction: number | null;
  /** Warmest that meat and fat may be at the start, one temperature for all, for the mix to end at the limit without it. */
  readonly preChillC: number | null;
  /** Minutes in the room before the meat is warmer than that; Infinity in a cold room. */
  readonly marginBeforeMin: number | null;
  /** Minutes in the room before the finished mix is warmer than its limit. */
  readonly marginAfterMin: number | null;
}
