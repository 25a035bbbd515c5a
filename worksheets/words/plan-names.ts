import type { PlanStepKind, PricingMethod } from '@larderwright/calc/plan';

/** Steps of the way to the table. */
export const PLAN_STEP_NAMES: Readonly<Record<PlanStepKind, string>> = {
  receive: 'Buy and receive',
  thaw: 'Thaw in the chiller',
  trim: 'Trim',
  cure: 'Marinate or pre-salt',
  panade: 'Cook and chill the panade',
  temper: 'Temper to grind',
  'grind-and-mix': 'Grind, mix and test poach',
  fill: 'Line and fill',
  cook: 'Cook and rest',
  'press-and-chill': 'Press and chill',
  keep: 'Keep and let ripen',
  slice: 'Slice and plate',
  other: 'Other',
};

/** How a price is found, each with the base of its per cent. */
export const PRICING_NAMES: Readonly<Record<PricingMethod, string>> = {
  'gross-profit': 'Gross profit, % of the price before tax',
  'food-cost': 'Food cost, % of the price before tax',
  margin: 'Margin after food, labour and overhead, % of the price before tax',
};
