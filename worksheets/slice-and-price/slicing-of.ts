import type { Batch } from '@larderwright/calc/batch';
import type { StageResult } from '@larderwright/calc/findings';
import { compensatedSum, entryValue } from '@larderwright/calc/quantities';
import {
  newSlicingSlice,
  type SlicingFindingId,
  type SlicingSlice,
  type SlicingValues,
  slicingStage,
} from '@larderwright/calc/slicing';
import { type PlanOfBatch, planOf } from '../plan-and-cost/plan-of.ts';

/** Where the finished weight comes from. */
export type FinishedFrom = 'weighed' | 'planned' | 'unknown';

/** Slicing with what the rest of the batch gives it. */
export interface SlicingOfBatch extends StageResult<SlicingValues, SlicingFindingId> {
  readonly slice: SlicingSlice;
  readonly planned: PlanOfBatch;
  readonly mouldCount: number | null;
  readonly finishedFrom: FinishedFrom;
}

/** The one inside length of all moulds; null when they differ or one is unknown. */
function mouldLengthMm(batch: Batch): number | null {
  const lengths = new Set(
    batch.mould.moulds.map(({ dimensions }) => entryValue('length', dimensions.length)),
  );
  const [only] = lengths;
  return lengths.size === 1 && only !== undefined ? only : null;
}

/** Cuts a batch: one way for its own worksheet and for the label. */
export function slicingOf(batch: Batch): SlicingOfBatch {
  const slice = batch.slicing ?? newSlicingSlice();
  const planned = planOf(batch, null);
  const { costs, pricing, flow, portions } = planned.values;
  const counts = batch.mould.moulds.map(({ count }) => entryValue('count', count));
  const known = counts.filter((count) => count !== null);
  const mouldCount = known.length > 0 && known.length === counts.length ? compensatedSum(known) : null;
  const weighed = batch.product.finished.text.trim() !== '';
  // A weight that cannot be read is not replaced by a plan.
  const finishedG = weighed ? entryValue('mass', batch.product.finished) : (flow?.finishedG ?? null);
  const result = slicingStage(slice, {
    familyId: batch.formula.familyId,
    finishedG,
    mouldCount,
    mouldLengthMm: mouldLengthMm(batch),
    plannedPortions:
      planned.plan.want === 'portions' ? entryValue('count', batch.product.portions) : portions,
    plan: { costs, pricing },
  });
  return {
    ...result,
    slice,
    planned,
    mouldCount,
    finishedFrom: finishedG === null ? 'unknown' : weighed ? 'weighed' : 'planned',
  };
}
