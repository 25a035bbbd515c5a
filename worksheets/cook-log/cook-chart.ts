import type { Batch } from '@larderwright/calc/batch';
import { type CookLogResult, type CookValues, thresholdC } from '@larderwright/calc/lethality';
import type { CheckedReading } from '@larderwright/calc/probe-log';
import { formatQuantity } from '@larderwright/calc/quantities';
import * as say from '#words/cook-log/cook-chart.ts';
import type { CurveLevel, CurveModel, CurveMoment, CurvePoint, CurveRun } from '../charts/index.ts';
import { durationWords } from '../parts/clock-text.ts';
import { curvePoint } from '../readings/curve-point.ts';
import { offsetOfBatch } from '../readings/offset-of-batch.ts';
import { limitTemp } from '../words/limit-temp.ts';

/** The cook's curve is cut where it has fallen this far under its peak: the rest belongs to the chill. */
const FALLEN_C = 12;

function cookPart(readings: readonly CheckedReading[]): CurvePoint[] {
  const sound = readings.filter((reading) => reading.state === 'counts' && reading.tempC !== null);
  const peakC = sound.reduce((most, { tempC }) => Math.max(most, tempC ?? most), Number.NEGATIVE_INFINITY);
  const lastHot = sound.findLast(({ tempC }) => (tempC ?? 0) >= peakC - FALLEN_C);
  const after = sound.find((reading) => lastHot !== undefined && reading.atMs > lastHot.atMs);
  const endMs = after?.atMs ?? Number.POSITIVE_INFINITY;
  return readings.filter(({ atMs }) => atMs <= endMs).flatMap((reading) => curvePoint(reading) ?? []);
}

/** Degrees of an action temperature on both scales, rounded up. */
export function actionText(actionC: number): string {
  const celsius = formatQuantity('temperature', actionC, { decimals: 1, rounding: 'up', withUnit: true });
  const fahrenheit = formatQuantity('temperature', actionC, {
    unit: 'F',
    decimals: 1,
    rounding: 'up',
    withUnit: true,
  });
  return `${celsius} (${fahrenheit})`;
}

function levelsOf({ limit, logs }: CookValues): CurveLevel[] {
  if (!limit) return [];
  const levels: CurveLevel[] = [
    {
      kind: 'limit',
      tempC: thresholdC(limit.stated, 'C'),
      label: say.limit2(limitTemp(limit.stated, 'minimum').text),
    },
  ];
  const actions = logs.flatMap(({ hold }) => hold?.actionC ?? []);
  if (actions.length > 0) {
    const actionC = Math.max(...actions);
    levels.push({ kind: 'act', tempC: actionC, label: say.actAt2(actionText(actionC)) });
  }
  return levels;
}

function runsOf(ruling: CookLogResult | undefined): CurveRun[] {
  const run = ruling?.hold?.run;
  // A single reading is no stretch of time, unless the limit asks for none.
  if (!run || !ruling.hold || (run.endMs === run.startMs && ruling.state !== 'pass')) return [];
  const label = say.held2(durationWords(ruling.hold.countedS / 60, 'down'));
  return [{ fromMs: run.startMs, toMs: run.endMs, label }];
}

function momentsOf(batch: Batch): CurveMoment[] {
  return batch.process.steps
    .filter((step) => step.kind !== 'chill')
    .flatMap((step) => [
      { iso: step.startedAt, label: step.kind === 'cook' ? say.inWord : step.kind },
      { iso: step.endedAt, label: say.out },
    ])
    .flatMap(({ iso, label }) => {
      const atMs = iso === null ? Number.NaN : Date.parse(iso);
      return Number.isFinite(atMs) ? [{ atMs, label }] : [];
    });
}

/** The cook as a chart: every probe with its limit, its action temperature and the hold that counts. */
export function cookChart(values: CookValues, batch: Batch, names: ReadonlyMap<string, string>): CurveModel {
  const ruling = values.logs.find(({ logId }) => logId === values.rulingLogId);
  return {
    offsetMin: offsetOfBatch(batch),
    series: values.logs
      .map(({ logId, readings }) => ({
        id: logId,
        name: names.get(logId) ?? logId,
        points: cookPart(readings),
      }))
      .filter(({ points }) => points.length > 0),
    levels: levelsOf(values),
    runs: runsOf(ruling),
    moments: momentsOf(batch),
  };
}
