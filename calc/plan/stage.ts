import type { StageResult } from '../findings/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import type { PlanContext } from './context.ts';
import type { PlanFindingId } from './finding-ids.ts';
import { planFindings } from './findings.ts';
import { loadOf, mouldsForFill } from './loads.ts';
import { flowFromFill, flowFromFinished, flowFromServed, type MassFlow } from './mass-flow.ts';
import { planMissing } from './missing.ts';
import { priceOf } from './price-of.ts';
import { foodCost, purchaseOf } from './purchases.ts';
import { readLinesToBuy, readLosses, readPricing, readSteps } from './read-plan.ts';
import type { PlanSlice } from './slice.ts';
import { backwardsTimeline } from './timeline.ts';
import type { PlanCosts, PlanValues } from './values.ts';

const MIN_PER_H = 60;
const G_PER_KG = 1000;
/** The noise of dividing decimal weights. */
const NOISE = 1e-9;

/**
 * The way back from the table: finished mass, fill, mix, scale factor, what to buy, what it costs, what to ask for it,
 * when to start, and whether chiller and bath take it. Losses multiply. Nothing is rounded but moulds, whole pieces and
 * whole portions.
 */
export function planStage(slice: PlanSlice, context: PlanContext): StageResult<PlanValues, PlanFindingId> {
  const portionG = entryValue('mass', slice.portionMass);
  const flow = flowOf(slice, context, portionG);
  const factor = flow !== null && context.totalG ? flow.mixG / context.totalG : null;
  const linesToBuy = readLinesToBuy(slice, context.lines);
  const purchases = factor === null ? [] : linesToBuy.map((line) => purchaseOf(line, factor));
  const portions =
    flow !== null && portionG !== null && portionG > 0 ? Math.floor(flow.servableG / portionG + NOISE) : null;
  const costs = costsOf(slice, purchases, flow, portions);
  const pricing = readPricing(slice);
  const mouldCounts = context.moulds.map(({ count }) => count).filter((count) => count !== null);
  const moulds = context.moulds.map(({ id, fillG }) => ({
    mouldId: id,
    needed: flow === null || fillG === null ? null : mouldsForFill(flow.fillG, fillG),
  }));
  const [only] = moulds;
  const bathMoulds =
    slice.want !== 'moulds' && moulds.length === 1
      ? (only?.needed?.count ?? null)
      : mouldCounts.length > 0 && mouldCounts.length === context.moulds.length
        ? compensatedSum(mouldCounts)
        : null;
  const values: PlanValues = {
    flow,
    portions,
    portionG,
    leftoverG:
      flow === null || portions === null || portionG === null ? null : flow.servableG - portions * portionG,
    factor,
    purchases,
    moulds,
    costs,
    pricing,
    pricePerPortion: priceOf({ food: costs.foodPerPortion, full: costs.fullPerPortion }, pricing),
    timeline: backwardsTimeline(slice.servingAt, readSteps(slice)),
    chiller: loadOf(flow?.fillG ?? null, entryValue('mass', slice.chillerCapacity)),
    bath: loadOf(bathMoulds, entryValue('count', slice.bathCapacity)),
  };
  return {
    values,
    findings: planFindings(slice, context, values),
    verdicts: [],
    missing: planMissing(slice, context, linesToBuy),
  };
}

function flowOf(slice: PlanSlice, context: PlanContext, portionG: number | null): MassFlow | null {
  const losses = readLosses(slice);
  if (losses === null) return null;
  switch (slice.want) {
    case 'portions': {
      const portions = entryValue('count', context.portions);
      return portions === null || portionG === null ? null : flowFromServed(portions * portionG, losses);
    }
    case 'finished': {
      const finishedG = entryValue('mass', slice.finished);
      return finishedG === null ? null : flowFromFinished(finishedG, losses);
    }
    case 'moulds':
      return context.capacityG === null ? null : flowFromFill(context.capacityG, losses);
  }
}

function costsOf(
  slice: PlanSlice,
  purchases: PlanValues['purchases'],
  flow: MassFlow | null,
  portions: number | null,
): PlanCosts {
  const { total: food, known: foodKnown } = foodCost(purchases, entryValue('money', slice.sundries));
  const labourMin = entryValue('time', slice.labour);
  const rate = entryValue('money', slice.labourRate);
  const labour =
    labourMin === 0 ? 0 : labourMin === null || rate === null ? null : (labourMin / MIN_PER_H) * rate;
  const overhead = entryValue('money', slice.overhead);
  const full = food === null || labour === null || overhead === null ? null : food + labour + overhead;
  const each = (cost: number | null, count: number | null) =>
    cost === null || count === null || count === 0 ? null : cost / count;
  return {
    food,
    foodKnown,
    labour,
    overhead,
    full,
    foodPerKgFinished: each(food, flow === null ? null : flow.finishedG / G_PER_KG),
    foodPerPortion: each(food, portions),
    fullPerPortion: each(full, portions),
  };
}
