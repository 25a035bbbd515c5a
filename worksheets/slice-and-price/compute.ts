import type { Batch } from '@larderwright/calc/batch';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import type { PlanCosts, Pricing } from '@larderwright/calc/plan';
import { compensatedSum, entryValue } from '@larderwright/calc/quantities';
import {
  newSlicingSlice,
  type SliceHabit,
  type SlicingSlice,
  type SlicingValues,
  sliceHabitOf,
  slicingStage,
} from '@larderwright/calc/slicing';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { planOf } from '../plan-and-cost/plan-of.ts';
import { nowIso } from '../state/clock.ts';
import { learnWords } from '../words/index.ts';
import { planWords } from '../words/plan.ts';
import { slicingWords } from '../words/slicing.ts';
import { type SlicingCardModel, slicingCard } from './card-model.ts';

/** Where the finished weight comes from. */
export type FinishedFrom = 'weighed' | 'planned' | 'unknown';

/** What calc makes of the slicing on the bench. */
export interface SlicingComputed {
  readonly values: SlicingValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  readonly slice: SlicingSlice;
  readonly finishedFrom: FinishedFrom;
  readonly mouldCount: number | null;
  readonly costs: PlanCosts;
  readonly pricing: Pricing;
  readonly habit: SliceHabit | null;
  readonly head: CardHead;
  readonly card: SlicingCardModel;
}

learnWords(slicingWords);
learnWords(planWords);

/** The one inside length of all moulds; null when they differ or one is unknown. */
function mouldLengthMm(batch: Batch): number | null {
  const lengths = new Set(
    batch.mould.moulds.map(({ dimensions }) => entryValue('length', dimensions.length)),
  );
  const [only] = lengths;
  return lengths.size === 1 && only !== undefined ? only : null;
}

/** Cuts a batch and prices what comes of it. */
export function computeSlicing(batch: Batch): SlicingComputed {
  const slice = batch.slicing ?? newSlicingSlice();
  const planned = planOf(batch, null);
  const { costs, pricing, flow, portions } = planned.values;
  const counts = batch.mould.moulds.map(({ count }) => entryValue('count', count));
  const known = counts.filter((count) => count !== null);
  const mouldCount = known.length > 0 && known.length === counts.length ? compensatedSum(known) : null;
  const weighed = batch.product.finished.text.trim() !== '';
  const weighedG = entryValue('mass', batch.product.finished);
  const plannedG = flow?.finishedG ?? null;
  // A weight that cannot be read is not replaced by a plan.
  const finishedG = weighed ? weighedG : plannedG;
  const result = slicingStage(slice, {
    familyId: batch.formula.familyId,
    finishedG,
    mouldCount,
    mouldLengthMm: mouldLengthMm(batch),
    plannedPortions:
      planned.plan.want === 'portions' ? entryValue('count', batch.product.portions) : portions,
    plan: { costs, pricing },
  });
  const ofPlan = planned.findings.filter(({ id }) => id === 'plan.no-price');
  return {
    ...result,
    findings: [...result.findings, ...ofPlan],
    slice,
    finishedFrom: finishedG === null ? 'unknown' : weighed ? 'weighed' : 'planned',
    mouldCount,
    costs,
    pricing,
    habit: sliceHabitOf(batch.formula.familyId),
    head: cardHead(batch, [], nowIso()),
    card: slicingCard(batch, slice, planned.plan, result.values, { mouldCount, costs }),
  };
}
