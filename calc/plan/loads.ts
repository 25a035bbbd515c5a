/** The noise of dividing decimal weights. */
const NOISE = 1e-9;

/** What stands in a chiller or bath at once. */
export interface Load {
  readonly load: number;
  /** What it may hold, in the same unit; null: nobody said. */
  readonly capacity: number | null;
  readonly over: boolean;
  /** Runs it takes; null without a capacity. */
  readonly runs: number | null;
}

/** A load against a capacity, both g or both moulds. Exactly full is not over. */
export function loadOf(load: number | null, capacity: number | null): Load | null {
  if (load === null) return null;
  if (capacity === null) return { load, capacity, over: false, runs: null };
  const runs = capacity > 0 ? Math.ceil(load / capacity - NOISE) : null;
  return { load, capacity, over: load > capacity * (1 + NOISE), runs };
}

/** Moulds of one kind that a fill takes. */
export interface MouldsNeeded {
  /** Rounded up. */
  readonly count: number;
  /** How full the last one is, 0–1. */
  readonly lastFraction: number;
  /** Fill short of filling the last one, g. */
  readonly emptyG: number;
}

/**
 * Moulds for a fill, rounded up. Null for input that is no mass.
 * @example mouldsForFill(4000, 1862) // 3, the last 15 % full
 */
export function mouldsForFill(fillG: number, fillPerMouldG: number): MouldsNeeded | null {
  if (!(fillG > 0) || !(fillPerMouldG > 0) || !Number.isFinite(fillG / fillPerMouldG)) return null;
  const count = Math.max(1, Math.ceil(fillG / fillPerMouldG - NOISE));
  const emptyG = Math.max(0, count * fillPerMouldG - fillG);
  return { count, emptyG, lastFraction: 1 - emptyG / fillPerMouldG };
}
