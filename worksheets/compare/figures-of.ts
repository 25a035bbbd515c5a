import { assess, type Batch, cookPlanContext, summaryOf } from '@larderwright/calc/batch';
import { type PlanOutcome, planGround } from '@larderwright/calc/cook-plan';
import { type CompositionTable, loadIngredients } from '@larderwright/calc/ingredients';
import { type BatchFigures, batchFigures } from '@larderwright/calc/trends';
import { heatCall } from '../heat-desk/index.ts';
import { slicingOf } from '../slice-and-price/slicing-of.ts';
import { nowIso } from '../state/clock.ts';
import { STATE_WORDS } from '../words/states.ts';

/** What batches are compared by, with what its plan and its slicing say. */
export interface CompareFigures extends BatchFigures {
  /** Into the heat to the core's target, min, as the plan of the record predicts it today. Null: no plan, or none that holds. */
  readonly predictedMin: number | null;
  readonly slicedG: number | null;
  readonly pricePerSlice: number | null;
  readonly currency: string;
}

/** A plan that is cooked every week is predicted once. */
const solved = new Map<string, Promise<PlanOutcome | null>>();

/** Predicted time of the plan the record holds. Slow: it goes to the worker. */
async function predictedMin(batch: Batch, composition: CompositionTable): Promise<number | null> {
  if (!batch.cookPlan) return null;
  const { problem } = planGround(batch.cookPlan, cookPlanContext(batch, composition));
  if (problem === null) return null;
  const key = JSON.stringify(problem);
  const answer =
    solved.get(key) ?? heatCall({ kind: 'solve', problem, tier: 'preview', pictureEveryMin: 120 });
  solved.set(key, answer);
  return (await answer)?.prediction.targetMin ?? null;
}

/** Fetches the composition table and gives the function from record to figures. */
export async function loadFigures(): Promise<(batch: Batch) => Promise<CompareFigures>> {
  const composition = await loadIngredients();
  return async (batch) => {
    const assessment = assess(batch, { composition, today: nowIso() });
    const sliced = slicingOf(batch);
    const { pricing } = sliced.planned.values;
    return {
      ...batchFigures(batch, assessment, summaryOf(batch, STATE_WORDS).day),
      predictedMin: await predictedMin(batch, composition),
      // What is only planned is no figure of this batch.
      slicedG: sliced.finishedFrom === 'weighed' ? sliced.values.soldG : null,
      pricePerSlice: sliced.values.pricePerSlice.incTax ?? sliced.values.pricePerSlice.exTax,
      currency: pricing.currency,
    };
  };
}
