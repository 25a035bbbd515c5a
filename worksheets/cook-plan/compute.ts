import { type Batch, cookPlanContext } from '@larderwright/calc/batch';
import {
  type CookPlanSlice,
  type CookPlanValues,
  cookPlanStage,
  newCookPlanSlice,
  type PlanChange,
  type PlanGround,
  type PlanOutcome,
  planGround,
} from '@larderwright/calc/cook-plan';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { cookRuleSet } from '@larderwright/calc/lethality';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { cookPlanWords } from '../words/cook-plan.ts';
import { learnWords } from '../words/index.ts';

/** What calc makes of a plan with or without its curve. */
export interface JudgedPlan {
  readonly values: CookPlanValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
}

/** The plan on the bench, ready to be simulated. */
export interface CookPlanComputed {
  readonly batch: Batch;
  readonly slice: CookPlanSlice;
  readonly ground: PlanGround;
  /** Tells one problem from another. Empty where there is none. */
  readonly key: string;
  /** What it says with an outcome of this very problem, or with none. */
  readonly judge: (outcome: PlanOutcome | null) => JudgedPlan;
  /** The same plan with something changed. */
  readonly changed: (change: PlanChange) => PlanGround;
  readonly head: CardHead;
}

/** Fetches the composition table, from which the mix conducts, and gives the function that plans a batch. */
export async function loadCookPlan(): Promise<(batch: Batch) => CookPlanComputed> {
  const composition = await loadIngredients();
  learnWords(cookPlanWords);
  return (batch) => {
    const slice = batch.cookPlan ?? newCookPlanSlice();
    const context = cookPlanContext(batch, composition);
    const ground = planGround(slice, context);
    return {
      batch,
      slice,
      ground,
      key: ground.problem === null ? '' : JSON.stringify(ground.problem),
      judge: (outcome) => cookPlanStage(slice, context, outcome),
      changed: (change) => planGround(slice, context, change),
      head: cardHead(batch, [cookRuleSet(context.cookRuleSetId) ?? null, ground.coolSet], nowIso()),
    };
  };
}
