import type { Batch } from '@larderwright/calc/batch';
import { offsetLimitC, placedThermometers } from '@larderwright/calc/batch';
import type { Verdict } from '@larderwright/calc/findings';
import {
  daysByThermometer,
  displayMustShow,
  offsetAtC,
  thermometerStage,
} from '@larderwright/calc/thermometer';
import * as say from '#words/readings/check-lines.ts';
import { nowIso } from '../state/clock.ts';
import { mustShowText, offsetText } from '../thermometer/figures.ts';
import { learnWords } from '../words/index.ts';
import { thermometerWords } from '../words/thermometer.ts';

/** What the check of a log's thermometer comes to, in words. */
export interface CheckLine {
  readonly verdict: Verdict;
  /** Offset and error that rule the log; null where the check does not carry them. */
  readonly says: string | null;
}

learnWords(thermometerWords);

/** By the id of the log. A log that names no thermometer is not in it. */
export function computeCheckLines(batch: Batch): ReadonlyMap<string, CheckLine> {
  const lines = new Map<string, CheckLine>();
  const slice = placedThermometers(batch);
  if (!slice) return lines;
  const days = daysByThermometer(batch.process.logs);
  const { values, verdicts } = thermometerStage(slice, { today: nowIso(), days });
  const limitC = offsetLimitC(batch);
  for (const { id, thermometerId } of batch.process.logs) {
    const checked = values.checked.find((one) => one.id === thermometerId);
    const verdict = verdicts.find(({ subjectId }) => subjectId === thermometerId);
    if (!checked || !verdict) continue;
    const mustShow = displayMustShow(checked, limitC);
    const parts = [
      say.offAtTheLimit(offsetText(offsetAtC(checked, limitC)) ?? say.notRead),
      checked.errorC === null ? say.errorNotWrittenDown : say.errorC(checked.errorC),
      ...(mustShow ? [say.itsDisplayMustShow(mustShowText(mustShow))] : []),
    ];
    lines.set(id, { verdict, says: checked.state === 'pass' ? `${parts.join('; ')}.` : null });
  }
  return lines;
}
