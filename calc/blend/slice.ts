import type { DeclaredComposition, LinePart } from '../formula/index.ts';
import type { Entry } from '../quantities/index.ts';
import type { MassPriceBasis } from '../yield/index.ts';

/** A raw material on hand. */
export interface BlendMaterial {
  id: string;
  /** The kitchen's own words. */
  name: string;
  part: LinePart;
  /** Row of the composition table, or null. */
  ingredientId: string | null;
  /** Figures off the pack or a fat test; they outrank the table. */
  declared: DeclaredComposition;
  price: Entry;
  priceBasis: MassPriceBasis;
  /** How much there is. Blank: as much as is wanted. */
  stock: Entry;
  /** Share of the blend, at least and at most. Blank: no bound. */
  minShare: Entry;
  maxShare: Entry;
  /** A fixed mass that goes in whatever the target. Blank: free. */
  locked: Entry;
}

/** What a blend can be held to. Liver is the share of liver materials, water : protein the ratio of the two. */
export type BlendQuality = 'fat' | 'protein' | 'salt' | 'liver' | 'water-to-protein';

/** From–to; one field alone is a bound on one side, both alike a target. */
export interface BlendBand {
  min: Entry;
  max: Entry;
}

/** The name it is sold under, whose standard of composition the blend must keep to. */
export interface BlendStandard {
  /** An id of `NAMED_STANDARDS`; null: none. */
  nameId: string | null;
  /** Finished weight of the blend, % of what went in, for what is sold cooked. */
  yield: Entry;
  /** Whether the least-cost blend takes its limits as bounds. */
  asBounds: boolean;
}

export interface BlendSlice {
  materials: BlendMaterial[];
  /** Mass of the blend, locked lines included. */
  total: Entry;
  /** The square: two free materials to one fat content. */
  freeA: string | null;
  freeB: string | null;
  fatTarget: Entry;
  /** Bands of the least-cost blend. Ratios are typed as plain numbers. */
  bands: Record<BlendQuality, BlendBand>;
  /** Records of before this was asked have none. */
  standard?: BlendStandard;
}
