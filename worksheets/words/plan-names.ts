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

/** How a price is found. */
export const PRICING_CHOICES: readonly { value: PricingMethod; label: string }[] = [
  { value: 'gross-profit', label: 'gross profit wanted' },
  { value: 'food-cost', label: 'food cost wanted' },
  { value: 'margin', label: 'margin after all costs' },
];

/** The share each way of pricing asks for, with its field and its base; the short name stands on a card. */
export const PRICING_SHARES: Readonly<Record<PricingMethod, { path: string; label: string; short: string }>> =
  {
    'gross-profit': {
      path: 'plan.grossProfit',
      label: 'Gross profit, of the price before tax',
      short: 'Gross profit, of price',
    },
    'food-cost': {
      path: 'plan.foodCost',
      label: 'Food cost, of the price before tax',
      short: 'Food cost, of price',
    },
    margin: { path: 'plan.margin', label: 'Margin, of the price before tax', short: 'Margin, of price' },
  };
