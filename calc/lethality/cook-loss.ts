/** Share of the raw weight that goes in the cook. */
export interface CookLoss {
  readonly lowFraction: number;
  readonly highFraction: number;
}

/** Why it cannot be told. */
export type CookLossDoubt = 'no-core' | 'not-a-bound-mix' | 'not-salted' | 'outside-cores';

export interface CookLossRequest {
  /** Hottest core, °C; null while unknown. */
  readonly coreC: number | null;
  /** Minced and bound; null is unknown. */
  readonly bound: boolean | null;
  /** Salt in everything, mass fraction. */
  readonly saltFraction: number | null;
}

/** Cores and losses of a salted, bound, lidded pork mix. Common practice, no source. */
const GUIDE = [
  { coreC: 65, low: 0.02, high: 0.06 },
  { coreC: 72, low: 0.04, high: 0.1 },
] as const;
/** Less salt than this binds no water. Common practice, no source. */
const LEAST_SALT = 0.01;

/**
 * Loss of a salted, bound mix in a covered mould by its hottest core: along the straight line of practice from 65 to
 * 72 °C and nowhere else. Common practice, no source; published figures are for bare meat and are far higher.
 */
export function cookLoss({
  coreC,
  bound,
  saltFraction,
}: CookLossRequest):
  | { readonly loss: CookLoss; readonly doubt: null }
  | { readonly loss: null; readonly doubt: CookLossDoubt } {
  const [from, to] = GUIDE;
  if (coreC === null || !Number.isFinite(coreC)) return { loss: null, doubt: 'no-core' };
  if (bound !== true) return { loss: null, doubt: 'not-a-bound-mix' };
  if (saltFraction === null || saltFraction < LEAST_SALT) return { loss: null, doubt: 'not-salted' };
  if (coreC < from.coreC || coreC > to.coreC) return { loss: null, doubt: 'outside-cores' };
  const share = (coreC - from.coreC) / (to.coreC - from.coreC);
  const along = (a: number, b: number) => a + share * (b - a);
  return {
    loss: { lowFraction: along(from.low, to.low), highFraction: along(from.high, to.high) },
    doubt: null,
  };
}
