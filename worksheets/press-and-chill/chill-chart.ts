import type { Batch } from '@larderwright/calc/batch';
import { type CoolingResult, type CoolValues, exactC } from '@larderwright/calc/cooling';
import * as say from '#words/press-and-chill/chill-chart.ts';
import type { CurveModel, CurveMoment, CurvePoint, WindowLeg } from '../charts/index.ts';
import { clockAt } from '../parts/clock-text.ts';
import { curvePoint } from '../readings/curve-point.ts';
import { offsetOfBatch } from '../readings/offset-of-batch.ts';
import { limitTemp } from '../words/limit-temp.ts';

/** The cooling that is drawn: the last that has readings. */
function drawn({ coolings }: CoolValues): CoolingResult | undefined {
  return coolings.findLast(({ logs }) => logs.some(({ readings }) => readings.length > 0));
}

/** Without an end of heating the curve is drawn from its highest reading. */
function fromTop(points: readonly CurvePoint[]): readonly CurvePoint[] {
  const taken = points.filter(({ mark }) => mark === 'taken');
  const top = taken.reduce<CurvePoint | undefined>(
    (best, point) => (best === undefined || point.tempC > best.tempC ? point : best),
    undefined,
  );
  return top === undefined ? points : points.filter(({ atMs }) => atMs >= top.atMs);
}

/** The legs whose clock has started, with the earliest deadline any probe gives. */
function windowOf(cooling: CoolingResult, offsetMin: number): WindowLeg[] {
  const legs = new Map<string, WindowLeg>();
  for (const { leg, judged } of cooling.logs.flatMap((log) => log.legs)) {
    const { startEarliestMs, deadlineMs } = judged;
    if (startEarliestMs === null || deadlineMs === null) continue;
    const before = legs.get(leg.id);
    if (before && before.byMs <= deadlineMs) continue;
    legs.set(leg.id, {
      fromMs: startEarliestMs,
      byMs: deadlineMs,
      fromC: leg.from === null ? null : exactC(leg.from),
      toC: exactC(leg.to),
      label: say.by2(limitTemp(leg.to, 'maximum').celsius, clockAt(deadlineMs, offsetMin)),
    });
  }
  return [...legs.values()];
}

function momentsOf(batch: Batch, sinceMs: number): CurveMoment[] {
  const moments = [
    { iso: batch.press.startedAt, label: say.pressOn },
    ...batch.process.steps
      .filter((step) => step.kind === 'chill')
      .map((step) => ({ iso: step.startedAt, label: say.chill })),
  ];
  return moments.flatMap(({ iso, label }) => {
    const atMs = iso === null ? Number.NaN : Date.parse(iso);
    return atMs >= sinceMs ? [{ atMs, label }] : [];
  });
}

/** The chill as a chart: every probe from the end of the heat on, with the window it must stay under. */
export function chillChart(values: CoolValues, batch: Batch, names: ReadonlyMap<string, string>): CurveModel {
  const offsetMin = offsetOfBatch(batch);
  const cooling = drawn(values);
  if (!cooling) return { offsetMin, series: [] };
  const series = cooling.logs
    .map(({ logId, readings }) => {
      const points = readings.flatMap((reading) => curvePoint(reading) ?? []);
      return {
        id: logId,
        name: names.get(logId) ?? logId,
        points: cooling.heatEndMs === null ? fromTop(points) : points,
      };
    })
    .filter(({ points }) => points.length > 0);
  const sinceMs = Math.min(...series.flatMap(({ points }) => points.map(({ atMs }) => atMs)));
  return { offsetMin, series, window: windowOf(cooling, offsetMin), moments: momentsOf(batch, sinceMs) };
}
