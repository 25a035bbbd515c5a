import { clockAt, dateAt } from '../parts/clock-text.ts';
import type { CurveModel } from './model.ts';

const MINUTE_MS = 60_000;

/** A moment as the chart reads it: the wall clock, or hours and minutes since the start (`13:05`). */
export function timeText(
  { clock, offsetMin }: Pick<CurveModel, 'clock' | 'offsetMin'>,
  atMs: number,
): string {
  if (clock !== 'elapsed') return clockAt(atMs, offsetMin);
  const minutes = Math.round(atMs / MINUTE_MS);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

/** The day of a moment; none where time only counts from a start. */
export function dayOf({ clock, offsetMin }: Pick<CurveModel, 'clock' | 'offsetMin'>, atMs: number): string {
  return clock === 'elapsed' ? '' : dateAt(atMs, offsetMin);
}
