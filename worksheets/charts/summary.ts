import * as say from '#words/charts/summary.ts';
import { dayWords, durationWords } from '../parts/clock-text.ts';
import type { CurveModel, CurveSeries } from './model.ts';
import { tempText } from './temp-text.ts';
import { dayOf, timeText } from './time-text.ts';
import { stretches, tracePoints } from './trace.ts';

const MINUTE_MS = 60_000;
const degrees = (tempC: number) => `${tempText(tempC)} °C`;
/** A prediction is told in whole degrees: its peak rounded down, where it ends up. */
const rough = (tempC: number, round: (value: number) => number = Math.round) =>
  `${String(round(Math.round(tempC * 100) / 100)).replace('-', '−')} °C`;

function seriesWords(series: CurveSeries, clock: (ms: number) => string): string {
  const points = tracePoints(series.points);
  const first = points[0];
  const last = points.at(-1);
  const excluded = series.points.filter((point) => point.mark === 'excluded').length;
  const out = excluded > 0 ? say.excluded(excluded) : '';
  if (!first || !last) return say.noReadingsThatCount(series.name, out);
  if (first === last) {
    return say.oneReadingAt(series.name, degrees(first.tempC), clock(first.atMs), out);
  }
  const top = points.reduce((best, point) => (point.tempC > best.tempC ? point : best), first);
  if (series.predicted) {
    return (
      say.predictedFromAt(series.name, rough(first.tempC), clock(first.atMs)) +
      say.toAtHighestAt(
        rough(last.tempC, Math.ceil),
        clock(last.atMs),
        rough(top.tempC, Math.floor),
        clock(top.atMs),
      )
    );
  }
  const parts = stretches(points);
  const gaps = parts.slice(1).map((part, i) => {
    const before = parts[i]?.at(-1)?.atMs ?? 0;
    const after = part[0]?.atMs ?? 0;
    return say.from(durationWords((after - before) / MINUTE_MS, 'down'), clock(before));
  });
  const holes = gaps.length > 0 ? say.withoutAReading(gaps.join(', ')) : '';
  return (
    say.readingsFromAt(series.name, points.length, degrees(first.tempC), clock(first.atMs)) +
    say.toAtHighestAt(degrees(last.tempC), clock(last.atMs), degrees(top.tempC), clock(top.atMs)) +
    `${holes}${out}`
  );
}

/** The chart in sentences, for who cannot see it. Days are named when the curves cross midnight. */
export function curveSummary(model: CurveModel): string {
  const times = model.series.flatMap((series) => tracePoints(series.points).map((point) => point.atMs));
  const days = new Set(times.map((atMs) => dayOf(model, atMs)));
  const clock = (atMs: number) =>
    days.size > 1 ? `${timeText(model, atMs)} ${dayWords(dayOf(model, atMs))}` : timeText(model, atMs);
  const parts = model.series.map((series) => seriesWords(series, clock));
  const list = (label: string, items: readonly string[]) =>
    items.length > 0 ? [`${label}: ${items.join('; ')}.`] : [];
  parts.push(
    ...list(
      say.lines,
      (model.levels ?? []).map(({ label }) => label),
    ),
    ...list(
      say.shaded,
      (model.runs ?? []).map((run) => say.to(run.label, clock(run.fromMs), clock(run.toMs))),
    ),
    ...list(say.band, model.corridor ? [model.corridor.label] : []),
    ...list(
      say.window,
      (model.window ?? []).map(({ label }) => label),
    ),
  );
  return parts.join(' ');
}
