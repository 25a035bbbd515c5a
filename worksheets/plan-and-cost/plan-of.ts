import type { Batch } from '@larderwright/calc/batch';
import type { StageResult } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import { type MouldFill, mouldStage } from '@larderwright/calc/mould';
import {
  newPlanSlice,
  type PlanFindingId,
  type PlanSlice,
  type PlanValues,
  planStage,
} from '@larderwright/calc/plan';

/** Weights need no composition: the table is not fetched for a plan. */
const NO_TABLE = new Map();

/** A plan with what the rest of the batch gives it. */
export interface PlanOfBatch extends StageResult<PlanValues, PlanFindingId> {
  readonly plan: PlanSlice;
  readonly moulds: readonly MouldFill[];
  /** What all moulds take, g. */
  readonly capacityG: number | null;
  /** The formula as written, g. */
  readonly formulaG: number | null;
}

/**
 * Plans a batch: formula as planned, moulds as measured.
 *
 * @param now wall clock of the kitchen; null asks nothing about being late
 */
export function planOf(batch: Batch, now: string | null): PlanOfBatch {
  const plan = batch.plan ?? newPlanSlice();
  const { planned } = formulaStage(batch.formula, { composition: NO_TABLE }).values;
  const { moulds, capacityG } = mouldStage(batch.mould, { totalMassG: planned.totalG }).values;
  const result = planStage(plan, {
    portions: batch.product.portions,
    familyId: batch.formula.familyId,
    lines: planned.lines,
    totalG: planned.totalG,
    moulds,
    capacityG,
    now,
  });
  return { ...result, plan, moulds, capacityG, formulaG: planned.totalG };
}
