import type { Entry } from '../quantities/index.ts';

/** How a mould is cut: slices of a thickness, or portions of a mass. */
export type CutBy = 'thickness' | 'mass';

export interface SlicingSlice {
  cutBy: CutBy;
  /** Length of the finished piece along the cut. Blank: the inside length of the mould. */
  length: Entry;
  thickness: Entry;
  /** Taken off each end. */
  endTrim: Entry;
  /** Width the blade takes with it: none for a wire, about 0.5 mm for a knife. */
  kerf: Entry;
  slicesPerPortion: Entry;
  /** Mass of a portion or pack, when cut by mass. */
  packMass: Entry;
  /** Ends and crumbs when cut by mass, % of the finished mass. */
  endLoss: Entry;
}
