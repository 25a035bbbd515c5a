import type { CuringSaltPack, WholeMuscleFinish, WholeMuscleProduct } from '../dry-cure/index.ts';
import type { Entry } from '../quantities/index.ts';

/** Soak to equilibrium; inject and soak; inject alone; or a strong brine stopped by the clock. */
export type BrineMethod = 'equilibrium' | 'inject-cover' | 'inject' | 'timed';

/** What the salt target is counted on: meat and water together, the brine inside, or water alone. */
export type SaltBase = 'meat-and-water' | 'water-phase' | 'water';

/** Ascorbate and erythorbate are sodium salts; ascorbic and erythorbic acid weigh less for the same work. */
export type AcceleratorForm = 'sodium-salt' | 'acid';

/** The two ways the federal handbook counts nitrite of an immersion. */
export type FederalMethod = 'pick-up' | 'equilibrium';

/** What the scale showed for each part of the brine, g. */
export interface BrineActuals {
  water: Entry;
  salt: Entry;
  curingSalt: Entry;
  sugar: Entry;
  accelerator: Entry;
  phosphate: Entry;
}

/** One vat of brine and the meat in it. The rule set, the scale and the two people stand with the cure. */
export interface BrineSlice {
  product: WholeMuscleProduct | null;
  finish: WholeMuscleFinish | null;
  isTraditional: boolean;
  method: BrineMethod | null;
  /** All the meat of the vat, without skin; outranks `skinOn`. */
  skinOff: Entry;
  skinOn: Entry;
  /** Heaviest piece, for the rules that count days by weight. */
  heaviest: Entry;
  /** Thickest place, mm. */
  thickness: Entry;
  /** Water in the meat, %. */
  meatWater: Entry;
  water: Entry;
  saltTarget: Entry;
  saltBase: SaltBase;
  /** Strength of a timed brine, salt in % of the brine. */
  strength: Entry;
  /** Sugar, % of meat and water; of the meat for an injection or a timed brine. */
  sugar: Entry;
  /** Wanted nitrite as sodium nitrite, mg/kg of meat and water; of the meat for an injection or a timed brine. */
  nitriteTarget: Entry;
  pack: CuringSaltPack;
  acceleratorForm: AcceleratorForm | null;
  /** Counted as the nitrite is. */
  acceleratorTarget: Entry;
  /** Phosphate, % of the meat. */
  phosphate: Entry;
  /** Brine injected, % of the meat. */
  injection: Entry;
  /** Share of it that stays in after draining, %. */
  retained: Entry;
  /** Brine taken up by soaking, % of the meat. No default: it is weighed. */
  pickUp: Entry;
  federalMethod: FederalMethod | null;
  /** All the meat after injecting and draining, g. */
  afterInjection: Entry;
  /** All the meat when it leaves the brine, drained, g. */
  afterBrine: Entry;
  brineTemp: Entry;
  days: Entry;
  /** ISO dates or ''. */
  mixedOn: string;
  startedOn: string;
  /** Whether meat has lain in this brine before. */
  use: 'fresh' | 'used' | null;
  actual: BrineActuals;
}
