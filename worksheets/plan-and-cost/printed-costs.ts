import { inMinorUnits } from '@larderwright/calc/plan';
import { entryValue } from '@larderwright/calc/quantities';
import type { PlanOfBatch } from './plan-of.ts';

/** Places of the money shown. */
const COIN = 100;

/** Costs as they are printed: each rounded to the smallest coin, every total the sum of what is printed. */
export interface PrintedCosts {
  /** By line id; null while unknown. */
  readonly lines: ReadonlyMap<string, number | null>;
  readonly food: number | null;
  readonly full: number | null;
}

/** The costs of a plan as printed. Prices are reckoned from the unrounded ones. */
export function printedCosts({ plan, values }: PlanOfBatch): PrintedCosts {
  const { purchases, costs } = values;
  const coins = (amount: number | null) => (amount === null ? null : inMinorUnits([amount]).total / COIN);
  const sundries = entryValue('money', plan.sundries);
  const parts = [...purchases.map(({ cost }) => cost), sundries].filter((cost) => cost !== null);
  const sumOf = (amounts: readonly number[]) => inMinorUnits(amounts).total / COIN;
  const { food, labour, overhead, full } = costs;
  return {
    lines: new Map(purchases.map(({ lineId, cost }) => [lineId, coins(cost)])),
    food: food === null ? null : sumOf(parts),
    full: full === null || labour === null || overhead === null ? null : sumOf([...parts, labour, overhead]),
  };
}
