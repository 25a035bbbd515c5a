import type { Assessment, Batch } from '@larderwright/calc/batch';
import type { MeatKind } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/cook.ts';
import { clockAt, offsetOf, wallOf } from '../../parts/clock-text.ts';
import { limitTemp } from '../../words/limit-temp.ts';
import type { CookBlock } from '../sheet-model.ts';
import { besideCook } from './beside.ts';
import { filled } from './filled.ts';
import { buildLog, logRemarks } from './logs.ts';
import { plannedLines } from './planned.ts';
import { sheetVerdicts } from './verdicts.ts';

/**
 * Block 10. The ruling log stands first: a crowded page keeps that one.
 *
 * @param most readings a log may print; left out: one row of boxes
 * @param isPlanChanged whether the cook plan differs from the one whose figures were kept; null: they are not shown
 */
export function buildCook(
  batch: Batch,
  assessment: Assessment,
  meats: readonly MeatKind[],
  most?: number,
  isPlanChanged: boolean | null = null,
): CookBlock {
  const { cook } = assessment;
  const { values } = cook;
  const step = batch.process.steps.find((each) => each.kind === 'cook');
  const results = values.logs.toSorted((a, b) => rank(a.logId, values) - rank(b.logId, values));
  const ruling = results[0];
  const hold = ruling?.hold ?? null;
  const zone = offsetOf(ruling?.readings[0]?.at ?? step?.startedAt ?? batch.createdAt);
  const clock = (ms: number | null | undefined) => (ms == null ? null : clockAt(ms, zone));
  const degrees = (tempC: number | null | undefined, side: 'up' | 'down') =>
    tempC == null ? null : `${fixedText(tempC, 1, side)} °C`;
  const runMoments = hold?.run ? [hold.run.startMs, hold.run.endMs] : [];
  return {
    medium: step ? filled('temperature', step.medium, 'C') : null,
    oven: step ? filled('temperature', step.oven, 'C') : null,
    limit:
      values.limit && values.hold
        ? say.forWord2(limitTemp(values.limit.stated, 'minimum').text, values.hold.printed)
        : null,
    action: degrees(hold?.actionC, 'up'),
    started: step?.startedAt ? (wallOf(step.startedAt)?.clock ?? null) : null,
    ended: step?.endedAt ? (wallOf(step.endedAt)?.clock ?? null) : null,
    limitReached: clock(hold?.firstReachedMs),
    heldUntil: clock(hold?.run?.endMs),
    peak: degrees(hold?.peakC, 'down'),
    logs: results.flatMap((result) => {
      const log = batch.process.logs.find((each) => each.id === result.logId);
      return log ? [buildLog(log, result.readings, result === ruling ? runMoments : [], most)] : [];
    }),
    verdicts: sheetVerdicts(cook.verdicts),
    beside: [
      ...(isPlanChanged === null ? [] : plannedLines(batch, ruling, isPlanChanged)),
      ...besideCook(assessment, meats),
    ],
    remarks: values.logs.flatMap((result) => {
      const log = batch.process.logs.find((each) => each.id === result.logId);
      return log ? logRemarks(log, result.log.readings) : [];
    }),
  };
}

function rank(logId: string, { rulingLogId }: Assessment['cook']['values']): number {
  return logId === rulingLogId ? 0 : 1;
}
