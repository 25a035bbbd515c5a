import type { Assessment, Batch } from '@larderwright/calc/batch';
import type { CoolingResult, CoolLeg, CoolLogResult, LegResult } from '@larderwright/calc/cooling';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/cool.ts';
import { clockAt, durationWords, offsetOf } from '../../parts/clock-text.ts';
import { limitTemp } from '../../words/limit-temp.ts';
import type { CoolBlock, CoolLeg as SheetLeg } from '../sheet-model.ts';
import { besideCool } from './beside.ts';
import { filled } from './filled.ts';
import { buildLog } from './logs.ts';
import { sheetVerdict, sheetVerdicts } from './verdicts.ts';

/** "57 °C → 21 °C in 2 h", both scales. */
export function legTitle(leg: CoolLeg): string {
  const from = leg.from === null ? say.endOfCook : limitTemp(leg.from, 'maximum').text;
  return say.inWord2(from, limitTemp(leg.to, 'maximum').text, durationWords(leg.maxMin, 'down'));
}

/** "1 h 08 min by lines; at worst 1 h 30 min": the second is what a pass rests on. */
function took({ judged }: LegResult): string | null {
  const parts = [
    judged.lines === null ? '' : say.byLines2(durationWords(judged.lines.elapsedMin, 'up')),
    judged.worstMin === null ? '' : say.atWorst2(durationWords(judged.worstMin, 'up')),
  ];
  return parts.filter(Boolean).join(', ') || null;
}

/**
 * Block 11. The log that rules a leg stands in its row.
 *
 * @param most readings a log may print; left out: one row of boxes
 */
export function buildCool(batch: Batch, assessment: Assessment, most?: number): CoolBlock {
  const { cool, press } = assessment;
  const cooling: CoolingResult | undefined = cool.values.coolings[0];
  const logs = cooling?.logs ?? [];
  const zone = offsetOf(logs[0]?.readings[0]?.at ?? batch.createdAt);
  const clock = (ms: number | null | undefined) => (ms == null ? null : clockAt(ms, zone));
  const legs = cool.values.ruleSet?.legs ?? [];
  const legVerdicts = new Map(cool.verdicts.map((verdict) => [verdict.id, verdict]));
  const rulingOf = (leg: CoolLeg): LegResult | undefined => {
    const logId = legVerdicts.get(`cool.leg.${leg.id}`)?.subjectId;
    return logs.find((log) => log.logId === logId)?.legs.find((result) => result.leg.id === leg.id);
  };
  const rows = legs.map((leg): SheetLeg => {
    const ruling = rulingOf(leg);
    const verdict = legVerdicts.get(`cool.leg.${leg.id}`);
    return {
      title: legTitle(leg),
      latest: clock(ruling?.judged.deadlineMs),
      elapsed: ruling ? took(ruling) : null,
      verdict: verdict ? sheetVerdict(verdict) : null,
    };
  });
  const shownLegs = new Set(legs.map((leg) => `cool.leg.${leg.id}`));
  const ruled = legs.flatMap((leg) => rulingOf(leg) ?? []);
  const starts = ruled.flatMap((result) => result.judged.startEarliestMs ?? []);
  return {
    press: filled('mass', batch.press.load, 'kg'),
    pressure: press.values.pressureKPa === null ? null : `${fixedText(press.values.pressureKPa, 2)} kPa`,
    started: clock(starts.length > 0 ? Math.min(...starts) : null),
    legs: rows,
    beside: besideCool(assessment),
    logs: [...logs]
      .sort((a, b) => rank(a, legVerdicts) - rank(b, legVerdicts))
      .flatMap((result) => {
        const log = batch.process.logs.find((each) => each.id === result.logId);
        const moments = result.legs.flatMap(({ judged }) => [judged.startEarliestMs, judged.endLatestMs]);
        return log
          ? [
              buildLog(
                log,
                result.readings,
                moments.filter((moment) => moment !== null),
                most,
              ),
            ]
          : [];
      }),
    verdicts: sheetVerdicts(cool.verdicts.filter((verdict) => !shownLegs.has(verdict.id))),
  };
}

/** Logs that rule some leg first. */
function rank(log: CoolLogResult, verdicts: ReadonlyMap<string, { subjectId?: string }>): number {
  return [...verdicts.values()].some((verdict) => verdict.subjectId === log.logId) ? 0 : 1;
}
