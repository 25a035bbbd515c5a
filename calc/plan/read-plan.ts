import type { MixLine } from '../formula/index.ts';
import { type Entry, entryValue, readEntry } from '../quantities/index.ts';
import type { Losses } from './mass-flow.ts';
import { newPlanLine } from './new-plan.ts';
import type { LineToBuy } from './purchases.ts';
import type { PlanSlice } from './slice.ts';
import type { StepDuration } from './timeline.ts';
import type { Pricing } from './values.ts';

/** Losses of a plan, or null while one is unknown. */
export function readLosses(slice: PlanSlice): Losses | null {
  const testG = entryValue('mass', slice.testPoach);
  const residueFraction = entryValue('fraction', slice.residue);
  const cookLossFraction = entryValue('fraction', slice.cookLoss);
  const endLossFraction = entryValue('fraction', slice.endLoss);
  if (testG === null || residueFraction === null || cookLossFraction === null || endLossFraction === null)
    return null;
  return { testG, residueFraction, cookLossFraction, endLossFraction };
}

/** Every line of the formula with how it is bought; one nobody has priced is bought ready to use, price unknown. */
export function readLinesToBuy(slice: PlanSlice, lines: readonly MixLine[]): LineToBuy[] {
  return lines.map(({ lineId, name, part, massG }) => {
    const plan = slice.lines.find((line) => line.lineId === lineId) ?? newPlanLine(lineId);
    return {
      lineId,
      name,
      part,
      massG,
      price: entryValue('money', plan.price),
      priceBasis: plan.priceBasis,
      eachMassG: entryValue('mass', plan.eachMass),
      yieldFraction: entryValue('fraction', plan.trimYield),
    };
  });
}

/** Durations of the steps. A blank most is the least; one that cannot be read is unknown. */
export function readSteps(slice: PlanSlice): StepDuration[] {
  return slice.steps.map(({ id, least, most }) => {
    const leastMin = entryValue('time', least);
    const reading = readEntry('time', most);
    const mostMin = reading.state === 'ok' ? reading.value : reading.state === 'blank' ? leastMin : null;
    return { id, leastMin, mostMin };
  });
}

/** The field a method of pricing reads. */
export function shareEntry(slice: PlanSlice): { readonly field: string; readonly entry: Entry } {
  switch (slice.pricing) {
    case 'gross-profit':
      return { field: 'plan.grossProfit', entry: slice.grossProfit };
    case 'food-cost':
      return { field: 'plan.foodCost', entry: slice.foodCost };
    case 'margin':
      return { field: 'plan.margin', entry: slice.margin };
  }
}

/** How prices are found. */
export function readPricing(slice: PlanSlice): Pricing {
  return {
    method: slice.pricing,
    shareFraction: entryValue('fraction', shareEntry(slice).entry),
    taxFraction: entryValue('fraction', slice.tax),
    currency: slice.currency,
  };
}
