import type { BrineValues } from '../brine/index.ts';
import type { CureValues } from '../cure/index.ts';
import type { CuredWay } from './cool-leg.ts';

/** What the product is, as far as cured cooling limits depend on it. Null is unknown, never "enough". */
export interface CoolFacts {
  /** Ingoing nitrite on everything in the product, mg/kg as sodium nitrite. */
  readonly nitritePpm: number | null;
  /** Salt ÷ (salt + water), the least the formula allows. */
  readonly saltOnWaterFraction: number | null;
  /** Sodium ascorbate or erythorbate on everything, mg/kg. */
  readonly acceleratorPpm: number | null;
  readonly waterActivity: number | null;
  /** All liver, share of the total. */
  readonly liverFraction: number | null;
}

/** Nothing known. */
export const UNKNOWN_COOL_FACTS: CoolFacts = {
  nitritePpm: null,
  saltOnWaterFraction: null,
  acceleratorPpm: null,
  waterActivity: null,
  liverFraction: null,
};

/** More liver than this uses up the nitrite: the cured limits are not to be trusted. Common practice, no source. */
export const MOST_LIVER_FRACTION = 0.15;

/**
 * Facts for cooling from the cure's values. Nitrite is counted on the whole product, which is never more than on the
 * meat alone; what a garnish carries is not counted.
 */
export function coolFacts(cure: Pick<CureValues, 'cured'> | null): CoolFacts {
  if (cure === null) return UNKNOWN_COOL_FACTS;
  const { ingoingPpmTotal, ingoingPpmMeat, saltOnWaterMinFraction, acceleratorPpmTotal, liverFraction } =
    cure.cured;
  const known = [ingoingPpmTotal, ingoingPpmMeat].filter((ppm) => ppm !== null);
  return {
    nitritePpm: ingoingPpmTotal === null ? null : Math.min(...known),
    saltOnWaterFraction: saltOnWaterMinFraction,
    acceleratorPpm: acceleratorPpmTotal,
    waterActivity: null,
    liverFraction,
  };
}

/**
 * Facts for cooling of a batch. A brine rules where there is one, and then only if it is shown to reach the core:
 * what lay in a brine for a while is cured at its rim alone.
 */
export function coolFactsOf(
  cure: Pick<CureValues, 'cured'> | null,
  brine: Pick<BrineValues, 'cured' | 'reachesCore'> | null,
): CoolFacts {
  if (brine === null) return coolFacts(cure);
  return brine.reachesCore === true ? coolFacts(brine) : UNKNOWN_COOL_FACTS;
}

export type CuredState = 'met' | 'not-met' | 'unknown' | 'liver';

/** Least of what is asked: met, missed, or not known. */
function oneWay(way: CuredWay, facts: CoolFacts): CuredState {
  const atLeast = (value: number | null, least: number | undefined) =>
    least === undefined ? true : value === null ? null : value >= least;
  const asked = [
    atLeast(facts.nitritePpm, way.nitritePpm),
    atLeast(facts.saltOnWaterFraction, way.saltOnWaterFraction),
    atLeast(facts.acceleratorPpm, way.acceleratorPpm),
    way.waterActivityMax === undefined
      ? true
      : facts.waterActivity === null
        ? null
        : facts.waterActivity <= way.waterActivityMax,
  ];
  if (asked.includes(false)) return 'not-met';
  if (asked.includes(null)) return 'unknown';
  const byNitrite = way.nitritePpm !== undefined;
  if (!byNitrite) return 'met';
  if (facts.liverFraction === null) return 'unknown';
  return facts.liverFraction > MOST_LIVER_FRACTION ? 'liver' : 'met';
}

/** Whether a product may be cooled by cured limits: one way in full is enough. */
export function curedState(ways: readonly CuredWay[], facts: CoolFacts): CuredState {
  const states = ways.map((way) => oneWay(way, facts));
  const order: readonly CuredState[] = ['met', 'liver', 'unknown', 'not-met'];
  return order.find((state) => states.includes(state)) ?? 'not-met';
}
