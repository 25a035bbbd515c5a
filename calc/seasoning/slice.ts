import type { Entry } from '../quantities/index.ts';

/**
 * The state a seasoning is weighed in. `plain` is what is used as it comes: sugar, sauce, truffle; a spice in brine is
 * drained, an onion `cooked` is sweated.
 */
export type SpiceForm = 'ground' | 'whole' | 'dried' | 'fresh' | 'cooked' | 'plain';

/** One spice of a blend, by parts of mass. */
export interface BlendItem {
  id: string;
  /** Row of the dose table, or null for one of the kitchen's own. */
  spiceId: string | null;
  name: string;
  form: SpiceForm;
  parts: Entry;
  /** Salt read off the pack, %. Blank: the dose table's band. */
  salt: Entry;
}

/** A blend by parts, dosed on everything in the bowl. */
export interface SeasoningBlend {
  id: string;
  name: string;
  items: BlendItem[];
  /** g/kg of the total mix. */
  dose: Entry;
  /** Times the batch's need that is mixed as a stock. */
  stockTimes: Entry;
  /** Day it was ground (ISO date), or ''. */
  groundOn: string;
}

/** A seasoning added by itself, besides or without a blend. */
export interface LooseSpice {
  id: string;
  spiceId: string | null;
  name: string;
  form: SpiceForm;
  /** g/kg of the total mix. */
  dose: Entry;
  salt: Entry;
}

export interface SeasoningSlice {
  /** Total mix. Blank: the formula's total. */
  batch: Entry;
  blends: SeasoningBlend[];
  loose: LooseSpice[];
  /** Smallest step of the scale used for spices. */
  scaleReadability: Entry;
  /** What is too little for the scale goes in as one part in ten of salt. */
  diluteInSalt: boolean;
  /** Lost when whole spice is ground, % of the whole. */
  grindingLoss: Entry;
  /** How many times the batch this seasoning was tasted in. */
  timesTasted: Entry;
}
