import { type TimeTick, tempAxis, timeTicks } from './axis.ts';
import type { ChartSize, CurveModel } from './model.ts';
import { extentOf, linearScale, type Scale } from './scale.ts';
import { type WindowStep, windowSteps } from './window-shape.ts';

/** Room for the marks around the drawing, px. */
const EDGE = { top: 22, right: 22, bottom: 40, left: 46 } as const;
/** Width a clock label and height a temperature label need, px. */
const CLOCK_ROOM = 64;
const DEGREE_ROOM = 34;
const MINUTE_MS = 60_000;
/** Shortest span drawn: one reading is not stretched over the whole picture. */
const LEAST_SPAN_MS = 30 * MINUTE_MS;
/** How long the deadlines of a cooling rule stay in view past the last one. */
const AFTER_WINDOW_MS = 20 * MINUTE_MS;

/** Where everything goes. Built from the model alone, so that it can be tested without a screen. */
export interface ChartLayout {
  readonly x: Scale;
  readonly y: Scale;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly clocks: readonly TimeTick[];
  readonly degrees: readonly number[];
  readonly window: readonly WindowStep[];
}

function* timesOf(model: CurveModel): Generator<number> {
  for (const series of model.series) for (const point of series.points) yield point.atMs;
  for (const leg of model.window ?? []) {
    yield leg.fromMs;
    yield leg.byMs + AFTER_WINDOW_MS;
  }
  for (const moment of model.moments ?? []) yield moment.atMs;
}

function* tempsOf(model: CurveModel): Generator<number> {
  for (const series of model.series) for (const point of series.points) yield point.tempC;
  for (const level of model.levels ?? []) yield level.tempC + 2;
  for (const { lowC, highC } of model.corridor?.points ?? []) {
    yield lowC;
    yield highC;
  }
  for (const leg of model.window ?? []) {
    yield leg.toC;
    if (leg.fromC !== null) yield leg.fromC;
  }
}

/** Lays a chart out, or null when there is no moment to draw it at. */
export function layoutChart(model: CurveModel, size: ChartSize): ChartLayout | null {
  const times = extentOf(timesOf(model));
  const temps = extentOf(tempsOf(model));
  if (!times || !temps) return null;
  const [startMs] = times;
  const endMs = Math.max(times[1], startMs + LEAST_SPAN_MS);
  const left = EDGE.left;
  const right = Math.max(left + CLOCK_ROOM, size.width - EDGE.right);
  const top = EDGE.top;
  const bottom = Math.max(top + DEGREE_ROOM, size.height - EDGE.bottom);
  const axis = tempAxis(Math.min(0, temps[0]), temps[1], (bottom - top) / DEGREE_ROOM);
  return {
    x: linearScale([startMs, endMs], [left, right]),
    y: linearScale(axis.domain, [bottom, top]),
    left,
    right,
    top,
    bottom,
    clocks: timeTicks(startMs, endMs, model.offsetMin, (right - left) / CLOCK_ROOM),
    degrees: axis.marks,
    window: windowSteps(model.window ?? [], endMs),
  };
}
