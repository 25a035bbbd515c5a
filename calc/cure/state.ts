import type { FormulaSlice, FormulaValues } from '../formula/index.ts';
import type { CureAmounts } from './amounts.ts';
import type { CureLine } from './cure-line.ts';
import type { ProductHeating } from './rule-sets/index.ts';
import type { CureSlice } from './slice.ts';
import type { CureValues } from './values.ts';

/** What the stage has already worked out, for the findings to speak of. */
export interface CureState {
  readonly slices: { readonly formula: FormulaSlice; readonly cure: CureSlice };
  readonly lines: readonly CureLine[];
  readonly amounts: CureAmounts;
  readonly formula: FormulaValues;
  readonly values: CureValues;
  readonly readabilityG: number | null;
  readonly heating: ProductHeating;
}
