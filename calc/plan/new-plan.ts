import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { PlanLine, PlanSlice, PlanStep, PlanStepKind } from './slice.ts';
import { usualDuration } from './usual-steps.ts';

/** A plan with the usual losses of a terrine, each marked as a default. Common practice, no source. */
export function newPlanSlice(): PlanSlice {
  return {
    want: 'portions',
    portionMass: defaultEntry('70', 'g'),
    finished: blankEntry('kg'),
    cookLoss: defaultEntry('8', '%'),
    endLoss: defaultEntry('3', '%'),
    residue: defaultEntry('2', '%'),
    testPoach: defaultEntry('50', 'g'),
    lines: [],
    sundries: defaultEntry('0', 'money'),
    labour: blankEntry('min'),
    labourRate: blankEntry('money'),
    overhead: blankEntry('money'),
    pricing: 'gross-profit',
    grossProfit: defaultEntry('70', '%'),
    foodCost: defaultEntry('30', '%'),
    margin: blankEntry('%'),
    tax: blankEntry('%'),
    currency: '',
    servingAt: null,
    steps: [],
    chillerCapacity: blankEntry('kg'),
    bathCapacity: blankEntry('count'),
  };
}

/** A line bought ready to use. Its price is unknown. */
export function newPlanLine(lineId: string): PlanLine {
  return {
    lineId,
    price: blankEntry('money'),
    priceBasis: 'kg',
    eachMass: blankEntry('g'),
    trimYield: defaultEntry('100', '%'),
  };
}

/** A step with its usual duration, where the trade has one. */
export function newPlanStep(id: string, kind: PlanStepKind): PlanStep {
  return { id, kind, name: '', ...usualDuration(kind) };
}
