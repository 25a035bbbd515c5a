import type { StageResult } from '../findings/index.ts';
import { type FormulaValues, formulaStage } from '../formula/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import {
  type DetailsTable,
  type LabelFindingId,
  type LabelSlice,
  type LabelValues,
  labelStage,
  newLabelSlice,
} from '../label/index.ts';
import type { MouldItem } from '../mould/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import { carriedFoods } from './carried-foods.ts';
import type { Batch } from './record.ts';
import { isWholeMuscle, mayBringNitrite, withoutBareSalt } from './whole-muscle.ts';

/** Linings that are eaten. */
const FOOD_LININGS: readonly MouldItem['liningKind'][] = ['fat', 'bacon', 'caul', 'leaf'];

/** What all moulds weighed when filled, g; null until every one of them has its weight. */
function filledByMouldsG(moulds: readonly MouldItem[]): number | null {
  const fills = moulds.flatMap((mould) => {
    const count = entryValue('count', mould.count);
    const weighed = mould.actualFills
      .map((fill) => entryValue('mass', fill))
      .filter((massG) => massG !== null);
    return count === null || count === 0 || weighed.length < count ? [null] : weighed;
  });
  if (fills.length === 0 || fills.includes(null)) return null;
  return compensatedSum(fills.map((massG) => massG ?? 0));
}

/** Whether anybody has worked on a label: one that its worksheet merely began says nothing. */
export function isLabelBegun(slice: LabelSlice): boolean {
  return JSON.stringify(slice) !== JSON.stringify(newLabelSlice());
}

/**
 * The label of a batch, with what the rest of the batch gives it.
 *
 * @param details null where they were not fetched: nutrition is then unknown, all else is the same
 */
export function labelOf(
  batch: Batch,
  table: CompositionTable,
  details: DetailsTable | null,
  formulaValues: FormulaValues = withoutBareSalt(
    batch,
    formulaStage(batch.formula, { composition: table }),
  ).values,
): StageResult<LabelValues, LabelFindingId> {
  const cook = batch.process.steps.find(({ kind }) => kind === 'cook');
  return labelStage(batch.label ?? newLabelSlice(), {
    formula: batch.formula,
    formulaValues,
    table,
    details,
    finishedG: entryValue('mass', batch.product.finished),
    filledByMouldsG: filledByMouldsG(batch.mould.moulds),
    foodLining: batch.mould.moulds.some(({ liningKind }) => FOOD_LININGS.includes(liningKind)),
    carried: carriedFoods(batch),
    firstCookAt: cook?.startedAt ?? cook?.endedAt ?? null,
    writtenUseBy: batch.product.useBy,
    curedElsewhere: isWholeMuscle(batch),
    nitriteElsewhere: mayBringNitrite(batch),
  });
}
