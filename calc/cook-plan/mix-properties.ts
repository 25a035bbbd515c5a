import { fatMeltingHeatJkg, foodMaterial, initialFreezingC } from '../heat/index.ts';
import type { PlanProblem } from './problem.ts';

/** What the mix of a plan is counted as, for a reader who wants to see it. */
export interface MixProperties {
  readonly densityKgM3: number;
  readonly airFraction: number;
  readonly fatFraction: number;
  /** Where its water begins to freeze, °C. */
  readonly freezingC: number | null;
  /** Heat the melting of its fat takes up from 0 to 50 °C, kJ for each kg of mix. */
  readonly meltingKJkg: number;
  readonly rows: readonly {
    readonly tempC: number;
    readonly conductivityWmK: number;
    /** Heat for one degree, melting counted, kJ/(kg·K). */
    readonly heatKJkgK: number;
  }[];
}

const AT_C: readonly number[] = [4, 20, 40, 70];
/** Fat is molten from here on, °C. */
const MOLTEN_C = 50;

/** The properties by which a problem is reckoned: the engine's own, read at a few temperatures. Null for no food. */
export function mixProperties({ composition, densityKgM3, airFraction }: PlanProblem): MixProperties | null {
  const material = foodMaterial(composition, { densityKgM3, airFraction });
  if (material === null) return null;
  const { enthalpyJkg, conductivityWmK } = material;
  return {
    densityKgM3,
    airFraction,
    fatFraction: composition.fat,
    freezingC: initialFreezingC(composition),
    meltingKJkg: (composition.fat * fatMeltingHeatJkg(MOLTEN_C)) / 1000,
    rows: AT_C.map((tempC) => ({
      tempC,
      conductivityWmK: conductivityWmK(tempC),
      heatKJkgK: (enthalpyJkg(tempC + 0.5) - enthalpyJkg(tempC - 0.5)) / 1000,
    })),
  };
}
