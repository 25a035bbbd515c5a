import type { Entry } from '../quantities/index.ts';

/** What becomes of a part: it is what was bought for, it is worth something elsewhere, or it is thrown away. */
export type TrimRole = 'usable' | 'by-product' | 'waste';

/** Price per kilogram or per pound of what was bought. */
export type MassPriceBasis = 'kg' | 'lb';

/** One pile on the table: trimmed lean, usable fat, skin and bone, waste. */
export interface TrimPart {
  id: string;
  name: string;
  role: TrimRole;
  /** What a by-product saves elsewhere, money per the test's price basis. Blank is unknown; type 0 for nothing. */
  value: Entry;
}

/** One trimming, weighed before and after. */
export interface YieldTrial {
  id: string;
  /** Date as written, or ''. */
  on: string;
  by: string;
  /** As purchased. */
  purchased: Entry;
  /** Mass of each part, by part id. */
  parts: Record<string, Entry>;
}

/** Trials of one cut from one kind of supply. */
export interface YieldTest {
  id: string;
  /** Species, cut and supplier, in the kitchen's own words. */
  name: string;
  /** As-purchased price. */
  price: Entry;
  priceBasis: MassPriceBasis;
  parts: TrimPart[];
  trials: YieldTrial[];
  /** Trimmed mass wanted. */
  needed: Entry;
  /** What this cut usually yields here, % of purchase. Blank: nobody has said. */
  usualLow: Entry;
  usualHigh: Entry;
}

export interface YieldSlice {
  tests: YieldTest[];
}
