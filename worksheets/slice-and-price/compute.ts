import type { Batch } from '@larderwright/calc/batch';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import type { PlanCosts, Pricing } from '@larderwright/calc/plan';
import {
  type SliceHabit,
  type SlicingSlice,
  type SlicingValues,
  sliceHabitOf,
} from '@larderwright/calc/slicing';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { learnWords } from '../words/index.ts';
import { planWords } from '../words/plan.ts';
import { slicingWords } from '../words/slicing.ts';
import { type SlicingCardModel, slicingCard } from './card-model.ts';
import { type FinishedFrom, slicingOf } from './slicing-of.ts';

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

/** Cuts a batch and prices what comes of it. */
export function computeSlicing(batch: Batch): SlicingComputed {
  const { planned, slice, mouldCount, finishedFrom, ...result } = slicingOf(batch);
  const { costs, pricing } = planned.values;
  const ofPlan = planned.findings.filter(({ id }) => id === 'plan.no-price');
  return {
    ...result,
    findings: [...result.findings, ...ofPlan],
    slice,
    finishedFrom,
    mouldCount,
    costs,
    pricing,
    habit: sliceHabitOf(batch.formula.familyId),
    head: cardHead(batch, [], nowIso()),
    card: slicingCard(batch, slice, planned.plan, result.values, { mouldCount, costs }),
  };
}
