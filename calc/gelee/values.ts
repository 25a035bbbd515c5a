import type { BloomConversion } from './bloom.ts';
import type { UseStrength } from './strength.ts';
import type { Weakening } from './weakening.ts';

export interface GeleeValues {
  readonly liquidMl: number | null;
  /** What the use, or agar, wants, and what is taken. */
  readonly wanted: UseStrength;
  readonly strengthFraction: number | null;
  /** Strength less what the stock sets by itself, never below 0. */
  readonly addedFraction: number | null;
  readonly weakening: Weakening;
  /** Gelatine at the bloom the strength is told for, before it is converted, g. */
  readonly atStrengthBloomG: number | null;
  readonly bloom: number | null;
  /** Both rules for what is at hand, before acid and alcohol, g. */
  readonly conversion: BloomConversion | null;
  /** Gelatine or agar to weigh by the rule chosen, at least and at most, g. One figure where nothing weakens. */
  readonly gelling: { readonly minG: number; readonly maxG: number } | null;
  /** The same in sheets, not rounded. */
  readonly sheets: { readonly min: number; readonly max: number } | null;
  readonly sheetG: number | null;
  /** Water to soak it in, part of the liquid, g. */
  readonly soakingWater: { readonly minG: number; readonly maxG: number } | null;
  /** Jelly under a crust, mL. */
  readonly underCrust: { readonly minMl: number; readonly maxMl: number } | null;
  /** Every label has to say so: fish gelatine is an allergen. Null: origin unknown. */
  readonly fishAllergen: boolean | null;
}
