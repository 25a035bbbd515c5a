import type { Allergen } from '../ingredients/index.ts';
import type { SpiceTotal } from './ceilings.ts';
import type { SpiceForm } from './slice.ts';
import type { SaltDilution } from './weigh-small.ts';

/** One seasoning to weigh. Null is unknown. */
export interface SeasoningWeight {
  readonly id: string;
  readonly spiceId: string | null;
  readonly form: SpiceForm;
  /** Of its blend; null for a loose one. */
  readonly shareFraction: number | null;
  readonly gPerKg: number | null;
  /** In this batch, not rounded. */
  readonly massG: number | null;
  /** To weigh: the batch's, or the stock's where a larger stock is mixed. */
  readonly toWeighG: number | null;
  /** The same in whole steps of the scale. */
  readonly onScaleG: number | null;
  readonly weighable: boolean | null;
  /** How it is carried when the scale cannot show it. */
  readonly dilution: SaltDilution | null;
  /** Whole spice to grind for it, where it is ground. */
  readonly wholeG: number | null;
  /** Salt it carries into this batch, g. */
  readonly carriedSaltG: { readonly min: number; readonly max: number } | null;
  /** Where a strong aromatic of a far larger batch begins. */
  readonly tasteFromG: { readonly leastG: number; readonly mostG: number } | null;
}

export interface BlendWeights {
  readonly blendId: string;
  readonly doseGPerKg: number | null;
  /** Into this batch. */
  readonly massG: number | null;
  readonly stockTimes: number | null;
  /** All of the stock. */
  readonly stockG: number | null;
  /** Smallest whole stock in which the scale shows every spice; null while unknown. */
  readonly stockTimesNeeded: number | null;
  readonly items: readonly SeasoningWeight[];
}

export interface SeasoningValues {
  readonly batchG: number | null;
  readonly timesTasted: number | null;
  readonly blends: readonly BlendWeights[];
  readonly loose: readonly SeasoningWeight[];
  /** Everything together, g and g/kg; null while some dose is unknown. */
  readonly totalG: number | null;
  readonly totals: readonly SpiceTotal[];
  /** Salt of dilutions, g. Take it off the plain salt. */
  readonly dilutionSaltG: number;
  /** Salt of salty seasonings, g; null while some dose is unknown. */
  readonly carriedSaltG: { readonly min: number; readonly max: number } | null;
  readonly euAllergens: readonly Allergen[];
  readonly usAllergens: readonly Allergen[];
  /** Ids of rows whose allergens nobody has told. */
  readonly allergensUnknown: readonly string[];
}
