import type { Load, MouldsNeeded } from './loads.ts';
import type { MassFlow } from './mass-flow.ts';
import type { Purchase } from './purchases.ts';
import type { PricingMethod } from './slice.ts';
import type { TimedStep } from './timeline.ts';

/** Money of a batch. Null while something it hangs on is unknown. */
export interface PlanCosts {
  /** Everything bought to eat, sundries included. */
  readonly food: number | null;
  /** Priced so far: a floor. */
  readonly foodKnown: number;
  readonly labour: number | null;
  readonly overhead: number | null;
  /** Food, labour and overhead. */
  readonly full: number | null;
  readonly foodPerKgFinished: number | null;
  readonly foodPerPortion: number | null;
  readonly fullPerPortion: number | null;
}

/** How a price is found, read. `share` belongs to the method chosen. */
export interface Pricing {
  readonly method: PricingMethod;
  readonly shareFraction: number | null;
  readonly taxFraction: number | null;
  readonly currency: string;
}

/** One price, money. */
export interface Price {
  readonly exTax: number | null;
  readonly incTax: number | null;
}

export interface PlanValues {
  readonly flow: MassFlow | null;
  /** Whole portions of the wanted mass, and what is left over, g. */
  readonly portions: number | null;
  readonly portionG: number | null;
  readonly leftoverG: number | null;
  /** Mix needed ÷ formula as written. */
  readonly factor: number | null;
  readonly purchases: readonly Purchase[];
  /** By mould kind, were it the only one. */
  readonly moulds: readonly { readonly mouldId: string; readonly needed: MouldsNeeded | null }[];
  readonly costs: PlanCosts;
  readonly pricing: Pricing;
  readonly pricePerPortion: Price;
  readonly timeline: readonly TimedStep[];
  readonly chiller: Load | null;
  readonly bath: Load | null;
}
