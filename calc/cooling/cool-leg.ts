import type { LimitTemp } from '../quantities/index.ts';
import { convert } from '../quantities/index.ts';
import type { Mark, RuleSet } from '../sources/index.ts';

/** One stretch of a cooling rule. Each stands alone: no leg lends time to another. */
export interface CoolLeg {
  readonly id: string;
  /** Where the clock starts; null: at the end of cooking. */
  readonly from: LimitTemp | null;
  readonly to: LimitTemp;
  readonly maxMin: number;
  /** "Less than", where the rule does not say "within". */
  readonly strict?: true;
  /** Shorter time the same table calls good practice. */
  readonly goodMin?: number;
  readonly mark: Mark;
}

/** One way to count as cured; every figure given must be reached. */
export interface CuredWay {
  /** Ingoing nitrite on the whole product, mg/kg as sodium nitrite, at least. */
  readonly nitritePpm?: number;
  /** Salt ÷ (salt + water), at least. */
  readonly saltOnWaterFraction?: number;
  /** Sodium ascorbate or erythorbate on the whole product, mg/kg, at least. */
  readonly acceleratorPpm?: number;
  /** Water activity, at most. */
  readonly waterActivityMax?: number;
}

/** What must also be true for a set to count. Listed beside every result. */
export type CoolCondition =
  | 'continuous'
  | 'on-to-40F'
  | 'cold-store'
  | 'under-5kg'
  | 'large-pieces'
  | 'check-province';

/** Cooling limits of one place. A person picks one; it is never blended with another. */
export interface CoolRuleSet extends RuleSet {
  readonly legs: readonly CoolLeg[];
  /** Ways to be cured enough, any one of them; null for a rule that asks for no cure. */
  readonly cured: readonly CuredWay[] | null;
  /** Chilling must begin this soon after the cook ends, min. */
  readonly chillStartMaxMin?: number;
  /** The core may not rise on the way, unless the surface is logged too. */
  readonly mustFall?: true;
  readonly conditions: readonly CoolCondition[];
}

/** Exact °C of a limit, from the unit the rule states it in. */
export function exactC(limit: LimitTemp): number {
  return convert(limit.value, limit.unit, 'C');
}
