import { ticks } from 'd3-array';

const MINUTE_MS = 60_000;
const DAY_MIN = 1440;
/** Steps a kitchen clock is read in, min. */
const STEPS_MIN = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, DAY_MIN, 2 * DAY_MIN, 7 * DAY_MIN];

/** A mark on the time axis. `newDay` is true where the wall clock passes midnight. */
export interface TimeTick {
  readonly atMs: number;
  readonly newDay: boolean;
}

/**
 * Whole clock times inside a span, on the batch's own wall clock.
 *
 * @param most how many labels there is room for (at least 2)
 */
export function timeTicks(fromMs: number, toMs: number, offsetMin: number, most: number): TimeTick[] {
  if (!(toMs > fromMs)) return Number.isFinite(fromMs) ? [{ atMs: fromMs, newDay: false }] : [];
  const spanMin = (toMs - fromMs) / MINUTE_MS;
  const room = Math.max(2, most);
  const step =
    STEPS_MIN.find((stepMin) => spanMin / stepMin <= room) ?? DAY_MIN * Math.ceil(spanMin / DAY_MIN / room);
  const wall = (ms: number) => ms / MINUTE_MS + offsetMin;
  const first = Math.ceil(wall(fromMs) / step) * step;
  const marks: TimeTick[] = [];
  for (let minute = first; minute <= wall(toMs); minute += step) {
    marks.push({ atMs: (minute - offsetMin) * MINUTE_MS, newDay: minute % DAY_MIN === 0 });
  }
  return marks;
}

/** Bounds and marks of the temperature axis, in whole tens of degrees where the span allows. */
export function tempAxis(
  lowC: number,
  highC: number,
  most: number,
): { domain: [number, number]; marks: number[] } {
  const room = Math.max(2, most);
  const step = [5, 10, 20, 50, 100].find((each) => (highC - lowC) / each <= room) ?? 200;
  // Adding 0 turns a negative zero into a plain one.
  const bottom = Math.floor(lowC / step) * step + 0;
  const top = Math.max(Math.ceil(highC / step) * step, bottom + step) + 0;
  return { domain: [bottom, top], marks: ticks(bottom, top, Math.round((top - bottom) / step)) };
}
