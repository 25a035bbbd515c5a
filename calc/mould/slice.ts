import type { Entry } from '../quantities/index.ts';

export type MouldShape = 'rectangular' | 'tapered' | 'half-cylinder' | 'cylinder' | 'roof' | 'oval';

/** Inside measures. Which of them a shape needs is told by `dimensionsOf(shape)`. */
export type MouldDimension = 'length' | 'width' | 'depth' | 'baseLength' | 'baseWidth' | 'diameter';

export type LiningKind = 'none' | 'fat' | 'bacon' | 'caul' | 'leaf' | 'film' | 'parchment';

export interface MouldItem {
  id: string;
  name: string;
  shape: MouldShape;
  dimensions: Record<MouldDimension, Entry>;
  /** Water that fills the mould to the rim, g = mL. When given it outranks the measures. */
  waterFill: Entry;
  headspace: Entry;
  liningKind: LiningKind;
  liningThickness: Entry;
  /** How many of this mould are filled. */
  count: Entry;
  /** What each filled mould weighed net, g. */
  actualFills: Entry[];
}

export interface MouldSlice {
  moulds: MouldItem[];
  /** Raw density of the mix, g/mL. */
  density: Entry;
}
