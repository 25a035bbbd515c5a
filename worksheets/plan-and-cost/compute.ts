import type { Batch } from '@larderwright/calc/batch';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { learnWords } from '../words/index.ts';
import { planWords } from '../words/plan.ts';
import { type PlanCardModel, planCard } from './card-model.ts';
import { type PlanOfBatch, planOf } from './plan-of.ts';
import { type PrintedCosts, printedCosts } from './printed-costs.ts';

/** What calc makes of the plan on the bench. */
export interface PlanComputed extends PlanOfBatch {
  readonly printed: PrintedCosts;
  readonly head: CardHead;
  readonly card: PlanCardModel;
}

learnWords(planWords);

/** Plans a batch for the page and the card. */
export function computePlan(batch: Batch): PlanComputed {
  const now = nowIso();
  const planned = planOf(batch, now.slice(0, 16));
  const printed = printedCosts(planned);
  return { ...planned, printed, head: cardHead(batch, [], now), card: planCard(batch, planned, printed) };
}
