import type { Assessment, Batch } from '@larderwright/calc/batch';
import type { MeatKind } from '@larderwright/calc/lethality';
import { buildCook } from '../batch-sheet/build/cook.ts';
import { buildCool } from '../batch-sheet/build/cool.ts';
import { buildCurve } from '../batch-sheet/build/curve.ts';
import type { CookBlock, CoolBlock, SheetCurve, SheetModel } from '../batch-sheet/sheet-model.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { LOG_CURVE_MM, READINGS_PRINTED, ROOMY_LINES } from './log-size.ts';

/** The cook and the cooling as they print on a page of their own. */
export interface LogSheet {
  readonly header: Pick<SheetModel['header'], 'product' | 'kitchen' | 'moulds' | 'madeBy'>;
  readonly cook: CookBlock;
  readonly cool: CoolBlock;
  readonly curve: SheetCurve | null;
  readonly deviations: SheetModel['deviations'];
  readonly checkedBy: string | null;
}

/**
 * Sets the log sheet. With one log each and little to say A4 has room for two rows of readings; else there is one.
 *
 * @param model the batch sheet, whose header, deviations and signatures it shares
 */
export function buildLogSheet(
  batch: Batch,
  assessment: Assessment,
  meats: readonly MeatKind[],
  model: SheetModel,
  paper: Paper,
): LogSheet {
  const logs = model.cook.logs.length + model.cool.logs.length;
  const lines = model.stops.length + model.deviations.length + model.cook.remarks.length;
  const isRoomy = paper === 'a4' && logs <= 2 && lines <= ROOMY_LINES;
  const most = isRoomy ? READINGS_PRINTED.roomy : READINGS_PRINTED.full;
  return {
    header: model.header,
    cook: buildCook(batch, assessment, meats, most),
    cool: buildCool(batch, assessment, most),
    curve: buildCurve(batch, assessment, LOG_CURVE_MM),
    deviations: model.deviations,
    checkedBy: model.signOffs.checked,
  };
}
