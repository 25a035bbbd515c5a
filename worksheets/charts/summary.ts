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
  const out = excluded > 0 ? ` ${excluded} excluded.` : '';
  if (!first || !last) return `${series.name}: no readings that count.${out}`;
  if (first === last) {
    return `${series.name}: one reading, ${degrees(first.tempC)} at ${clock(first.atMs)}.${out}`;
  }
  const top = points.reduce((best, point) => (point.tempC > best.tempC ? point : best), first);
  if (series.predicted) {
    return (
      `${series.name}, predicted: from ${rough(first.tempC)} at ${clock(first.atMs)} ` +
      `to ${rough(last.tempC, Math.ceil)} at ${clock(last.atMs)}, highest ${rough(top.tempC, Math.floor)} at ${clock(top.atMs)}.`
    );
  }
  const parts = stretches(points);
  const gaps = parts.slice(1).map((part, i) => {
    const before = parts[i]?.at(-1)?.atMs ?? 0;
    const after = part[0]?.atMs ?? 0;
    return `${durationWords((after - before) / MINUTE_MS, 'down')} from ${clock(before)}`;
  });
  const holes = gaps.length > 0 ? ` Without a reading: ${gaps.join(', ')}.` : '';
  return (
    `${series.name}: ${points.length} readings from ${degrees(first.tempC)} at ${clock(first.atMs)} ` +
    `to ${degrees(last.tempC)} at ${clock(last.atMs)}, highest ${degrees(top.tempC)} at ${clock(top.atMs)}.` +
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
      'Lines',
      (model.levels ?? []).map(({ label }) => label),
    ),
    ...list(
      'Shaded',
      (model.runs ?? []).map((run) => `${run.label}, ${clock(run.fromMs)} to ${clock(run.toMs)}`),
    ),
    ...list('Band', model.corridor ? [model.corridor.label] : []),
    ...list(
      'Window',
      (model.window ?? []).map(({ label }) => label),
    ),
  );
  return parts.join(' ');
}
