import type { Entry } from '../quantities/index.ts';
import type { MassPriceBasis } from '../yield/index.ts';

/** What the plan starts from: portions to serve, finished mass to have, or the moulds that are to be filled. */
export type PlanWant = 'portions' | 'finished' | 'moulds';

/** What a price is for. A line in the sundries has none of its own. */
export type PriceBasis = MassPriceBasis | 'each' | 'sundries';

/**
 * How a price is found. Gross profit and food cost are shares of the price and look at food alone; a margin looks at
 * food, labour and overhead together.
 */
export type PricingMethod = 'gross-profit' | 'food-cost' | 'margin';

/** How one line of the formula is bought. */
export interface PlanLine {
  /** The line of the formula. */
  lineId: string;
  price: Entry;
  priceBasis: PriceBasis;
  /** Mass of one piece as bought, for a price each. */
  eachMass: Entry;
  /** What is left of the purchase after trimming, % of the purchase. */
  trimYield: Entry;
}

export type PlanStepKind =
  | 'receive'
  | 'thaw'
  | 'trim'
  | 'cure'
  | 'panade'
  | 'temper'
  | 'grind-and-mix'
  | 'fill'
  | 'cook'
  | 'press-and-chill'
  | 'keep'
  | 'slice'
  | 'other';

/** One step of the way to the table, in order. */
export interface PlanStep {
  id: string;
  kind: PlanStepKind;
  /** The kitchen's own words; '' for the usual name of the kind. */
  name: string;
  /** How long it takes at least and at most. A blank most is the same as the least. */
  least: Entry;
  most: Entry;
}

export interface PlanSlice {
  want: PlanWant;
  portionMass: Entry;
  /** Finished mass wanted. */
  finished: Entry;
  /** Lost in cooking and chilling, % of the fill. */
  cookLoss: Entry;
  /** Ends and crumbs, % of the finished mass. */
  endLoss: Entry;
  /** Left on bowl and filler, % of the mix without the test. */
  residue: Entry;
  /** Taken from the mix for the test poach. */
  testPoach: Entry;
  lines: PlanLine[];
  /** Small things together, money a batch as scaled. */
  sundries: Entry;
  labour: Entry;
  /** Money an hour. */
  labourRate: Entry;
  /** Energy, packaging and the rest, money a batch. */
  overhead: Entry;
  pricing: PricingMethod;
  /** % of the price before tax. */
  grossProfit: Entry;
  foodCost: Entry;
  margin: Entry;
  /** % on the price. */
  tax: Entry;
  /** What the kitchen calls its money. A label only. */
  currency: string;
  /** When it is served, wall clock of the kitchen: `2026-05-01T12:00`, with or without an offset. */
  servingAt: string | null;
  steps: PlanStep[];
  /** What the chiller may take at once, by its rating. */
  chillerCapacity: Entry;
  /** Moulds the bath or oven takes at once. */
  bathCapacity: Entry;
}
