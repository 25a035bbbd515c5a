import type { Entry } from '../quantities/index.ts';

/** What a line does in the mix. The meat block is lean + fat + liver + offal. */
export type LinePart =
  | 'lean'
  | 'fat'
  | 'liver'
  | 'offal'
  | 'panade'
  | 'egg'
  | 'liquid'
  | 'garnish'
  | 'seasoning'
  | 'salt'
  | 'curing-salt'
  | 'lining';

/** What the amount of a line is counted in. Per cent is of the meat block, or of everything in the bowl. */
export type AmountBasis = 'mass' | 'percent-of-meat' | 'percent-of-total';

/** Figures read off a pack or a supplier's sheet, in %. Blank: the composition table is used. */
export interface DeclaredComposition {
  salt: Entry;
  fat: Entry;
  protein: Entry;
  water: Entry;
}

/** What the pack of a curing salt declares, in % by mass. Strength has no default. */
export interface DeclaredCure {
  /** Sodium nitrite, %. */
  nitrite: Entry;
  /** Sodium or potassium nitrate, %. Blank is unknown; type 0 when the pack lists none. */
  nitrate: Entry;
}

/** One ingredient of the batch, planned and as weighed. */
export interface FormulaLine {
  id: string;
  /** The kitchen's own words. */
  name: string;
  part: LinePart;
  /** Row of the composition table, or null for a line without one. */
  ingredientId: string | null;
  amount: Entry;
  basis: AmountBasis;
  /** What the scale showed, g. */
  actual: Entry;
  lot: string;
  declared: DeclaredComposition;
  /** Only for curing salt. */
  cure: DeclaredCure | null;
  /** Nitrite a cured garnish brings, mg/kg as NaNO2, from its maker. Blank: unknown. */
  carriedNitrite: Entry;
}

export interface FormulaSlice {
  familyId: string | null;
  lines: FormulaLine[];
  /** Salt from all sources, % of total. */
  saltTarget: Entry;
}
