import type { Contribution, PlainSaltNeed } from '../formula/index.ts';
import type { CarriedNitrite } from './carried-nitrite.ts';
import type { LineDose } from './dose.ts';
import type { JudgedLimit } from './judge-limit.ts';
import type { CureRuleSet } from './rule-sets/index.ts';

/** One curing salt on the scale. */
export interface CureWeighing {
  readonly lineId: string;
  readonly massG: number | null;
  readonly isWeighed: boolean;
  /** Rounding of the scale, ± fraction of the amount. */
  readonly errorFraction: number | null;
  /** At least 50 steps of the scale; null while amount or scale is not known. */
  readonly isWeighable: boolean | null;
}

/** What a cooling rule asks of a cured product. Cooling decides; these are the facts. */
export interface CuredFacts {
  /** Nitrite put in with curing salt, mg/kg as sodium nitrite. What a garnish carries is not counted. */
  readonly ingoingPpmMeat: number | null;
  readonly ingoingPpmTotal: number | null;
  readonly saltOnWaterFraction: number | null;
  /** Least that lines of unknown composition allow. */
  readonly saltOnWaterMinFraction: number | null;
  /** Sodium ascorbate or erythorbate, mg/kg. */
  readonly acceleratorPpmMeat: number | null;
  readonly acceleratorPpmTotal: number | null;
  readonly liverFraction: number | null;
}

/** Concentrations in mg/kg, masses in g; null is unknown. */
export interface CureValues {
  readonly ruleSet: CureRuleSet | null;
  /** Which mix the figures are of. */
  readonly inUse: 'planned' | 'as-weighed';
  readonly meatBlockG: number | null;
  readonly totalG: number | null;
  /** From curing salts and every declared source, as sodium nitrite. */
  readonly nitriteG: number | null;
  readonly nitritePpmMeat: number | null;
  readonly nitritePpmTotal: number | null;
  /** The same as nitrite ion. */
  readonly nitriteIonPpmMeat: number | null;
  readonly nitriteIonPpmTotal: number | null;
  /** With the stated worst case for goods whose maker's figure is not known. */
  readonly highestPpmMeat: number | null;
  readonly highestPpmTotal: number | null;
  /** Lining, g, and nitrite on everything with it; null where there is none or it is not known. */
  readonly liningG: number | null;
  readonly nitritePpmLined: number | null;
  readonly nitriteIonPpmLined: number | null;
  readonly highestPpmLined: number | null;
  readonly plannedPpmLined: number | null;
  /** By the plan, beside the figures as weighed. */
  readonly plannedPpmMeat: number | null;
  readonly plannedPpmTotal: number | null;
  readonly carried: readonly CarriedNitrite[];
  readonly cured: CuredFacts;
  readonly dose: LineDose | null;
  readonly weighing: readonly CureWeighing[];
  readonly salt: {
    readonly sources: readonly Contribution[];
    readonly totalG: number | null;
    readonly fraction: number | null;
    readonly targetFraction: number | null;
    /** Plain salt in all, or why none can be told. */
    readonly plain: PlainSaltNeed;
    /** Plain salt the formula lists. */
    readonly plainListedG: number | null;
  };
  readonly ceilings: readonly JudgedLimit[];
  readonly floors: readonly JudgedLimit[];
}
