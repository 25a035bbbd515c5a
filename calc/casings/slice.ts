import type { Entry } from '../quantities/index.ts';

export interface CasingsSlice {
  /** Row of the casing table, or null for one of the kitchen's own. */
  casingId: string | null;
  /** Mass to fill. Blank: the formula's total. */
  batch: Entry;
  /** Diameter once stuffed, which is not the one on the label. */
  stuffedDiameter: Entry;
  density: Entry;
  /** How tightly it is filled, % of a firm fill. */
  fullness: Entry;
  /** Extra casing for breaks and tails, % on top. */
  spare: Entry;
  linkBy: 'mass' | 'length';
  linkMass: Entry;
  linkLength: Entry;
  /** One strand of a bundle, and the whole bundle. Blank: not counted in it. */
  strandLength: Entry;
  hankLength: Entry;
  /** Links as weighed. */
  actualLinks: Entry[];
}
