import type { CuredFacts, JudgedLimit } from '../cure/index.ts';
import type { CureTime, PackReading, WholeMuscleRuleSet } from '../dry-cure/index.ts';
import type { BrineStrength } from './brine-scales.ts';
import type { SaltOutcome } from './equilibrium-salt.ts';
import type { ImmersionPpm } from './nitrite-by-method.ts';
import type { BrineRecipe } from './recipe.ts';
import type { WaterActivityEstimate } from './water-activity.ts';

/** Parts of the brine as weighed where they were, else as planned. g; null is unknown. */
export interface BrineParts {
  readonly waterG: number | null;
  readonly plainSaltG: number | null;
  readonly curingSaltG: number | null;
  readonly sugarG: number | null;
  readonly acceleratorG: number | null;
  readonly phosphateG: number | null;
  readonly isCureWeighed: boolean;
}

/** Concentrations mg/kg as sodium nitrite, fractions 0–1; null is unknown. */
export interface BrineValues {
  readonly ruleSet: WholeMuscleRuleSet | null;
  readonly pack: PackReading;
  readonly greenG: number | null;
  readonly isSkinEstimated: boolean;
  readonly recipe: BrineRecipe | null;
  readonly inUse: BrineParts;
  /** All of the pickle: water and everything in it. */
  readonly pickleG: number | null;
  readonly saltG: number | null;
  /** Salt ÷ pickle, and the same in every scale; null beyond saturation. */
  readonly brineSaltFraction: number | null;
  readonly strength: BrineStrength | null;
  readonly freezesC: number | null;
  /** Pickle ÷ its volume in lb to the US gallon; the federal pickle limits assume 10. */
  readonly pickleLbPerGallon: number | null;
  /** Stronger than 10 % salt, a brine is stopped by the clock and not by equilibrium. */
  readonly isTimed: boolean;
  readonly nitriteG: number | null;
  /** On everything in the vat, and on meat and water. */
  readonly nitritePpmAll: number | null;
  readonly nitritePpmMeatAndWater: number | null;
  /** Injection alone: by the pump. */
  readonly pumpedPpm: number | null;
  /** Soaks: both federal methods and the worst case. */
  readonly immersion: ImmersionPpm | null;
  /** Greatest of the two methods ÷ the least, where both are known. */
  readonly methodsDiffer: number | null;
  /** The share of a pump or pick-up the figures rest on, and whether it was weighed. */
  readonly pumpFraction: number | null;
  readonly pickUpFraction: number | null;
  readonly isPumpWeighed: boolean;
  /** Brine to inject into all the meat, and the weight to inject it to. */
  readonly injectG: number | null;
  readonly targetMassG: number | null;
  readonly expectedMassG: number | null;
  /** Null for a timed brine. */
  readonly salt: SaltOutcome | null;
  readonly waterActivity: WaterActivityEstimate | null;
  readonly acceleratorPpm: { readonly low: number | null; readonly high: number | null };
  readonly phosphateFraction: { readonly low: number | null; readonly high: number | null };
  readonly ceilings: readonly JudgedLimit[];
  readonly floors: readonly JudgedLimit[];
  readonly ceilingPpmTarget: number | null;
  readonly time: CureTime;
  readonly days: number | null;
  readonly brineC: number | null;
  readonly ageDays: number | null;
  readonly readyFrom: string | null;
  readonly turnOn: readonly string[];
  readonly weighingErrorFraction: number | null;
  /** What a cooling rule asks of a cured product: the least that is certain. */
  readonly cured: CuredFacts;
  /** Injected: yes. Soaked only: null, for nothing here shows it. */
  readonly reachesCore: boolean | null;
}
