import { type BatchThermal, type HeatRun, simulate } from '../solve/index.ts';
import type { HeatStage } from '../stages/index.ts';
import { type Adjustment, adjustmentOf, adjustStage, type Unknowns } from './adjust.ts';
import { solveSymmetric } from './solve-small.ts';

/** A core reading, minutes after the mould went in. */
export interface Reading {
  readonly timeMin: number;
  readonly tempC: number;
}

export interface Fit {
  readonly adjustment: Adjustment;
  /** Best unknowns, in spreads, and how sure they are: the inverse of their covariance. */
  readonly unknowns: Unknowns;
  readonly names: readonly (keyof Adjustment)[];
  readonly precision: readonly (readonly number[])[];
  /** Root mean square of what the fitted model leaves, °C. */
  readonly residualC: number;
  /** Numbers of the readings no such kitchen can give. They were kept out of the fit and of nothing else. */
  readonly impossible: readonly number[];
}

/** How far a sound probe scatters about the model, °C. */
const SCATTER_C = 0.7;
/** A reading this far off what any fitted kitchen gives was not of the core, °C. */
const IMPOSSIBLE_C = 5;
const ITERATIONS = 4;
/** Readings scatter by more than a coarse net errs: a net of the preview, its steps longer. */
const FIT = { tier: 'preview', fineness: 4, toleranceC: 0.03, everyMin: 2 } as const;
/** Step of the finite differences, in spreads. */
const NUDGE = 0.1;
const NONE: Unknowns = { filmFactor: 0, mediumShiftC: 0, heatingFactor: 0 };

/**
 * Learns what the stages leave open from core readings, by least squares with the spreads as prior
 * knowledge, on the preview. Null when nothing can be read or the problem is not sound.
 */
export function fitToReadings(
  batch: BatchThermal,
  stages: readonly HeatStage[],
  readings: readonly Reading[],
): Fit | null {
  const sound = readings.map(
    ({ timeMin, tempC }) => Number.isFinite(timeMin) && timeMin >= 0 && Number.isFinite(tempC),
  );
  if (!sound.includes(true)) return null;
  const names = unknownsOf(stages);
  const last = Math.max(...readings.filter((_, i) => sound[i]).map(({ timeMin }) => timeMin));
  const model = (unknowns: Unknowns) => coreAt(batch, stages, adjustmentOf(unknowns), readings, last);
  if (model(NONE) === null) return null;

  let impossible = sound.flatMap((ok, i) => (ok ? [] : [i]));
  let fit = descend(names, model, readings, impossible);
  for (let round = 0; round < 3; round++) {
    const worst = worstOf(fit.left, impossible);
    if (worst === null) break;
    impossible = [...impossible, worst];
    fit = descend(names, model, readings, impossible);
  }
  const used = fit.left.filter((_, i) => !impossible.includes(i));
  return {
    adjustment: adjustmentOf(fit.unknowns),
    unknowns: fit.unknowns,
    names,
    precision: fit.precision,
    residualC: Math.sqrt(used.reduce((sum, left) => sum + left * left, 0) / Math.max(1, used.length)),
    impossible: impossible.filter(
      (i) => Math.abs(fit.left[i] ?? Number.POSITIVE_INFINITY) > IMPOSSIBLE_C || !sound[i],
    ),
  };
}

/** What can be learnt: how the bath is heated if it has a balance of its own, else how far its temperature is off. */
function unknownsOf(stages: readonly HeatStage[]): (keyof Adjustment)[] {
  const balanced = stages.some(({ water }) => water?.bath.kind === 'oven');
  return ['filmFactor', balanced ? 'heatingFactor' : 'mediumShiftC'];
}

/** The reading left furthest off, when that is further than possible. */
function worstOf(left: readonly number[], known: readonly number[]): number | null {
  let worst: number | null = null;
  for (const [i, value] of left.entries()) {
    const more = Math.abs(value) > Math.max(IMPOSSIBLE_C, Math.abs(worst === null ? 0 : (left[worst] ?? 0)));
    if (!known.includes(i) && more) worst = i;
  }
  return worst;
}

type Model = (unknowns: Unknowns) => readonly number[] | null;

/** Gauss–Newton from the prior, readings in `without` left out. Their residuals are still told. */
function descend(
  names: readonly (keyof Adjustment)[],
  model: Model,
  readings: readonly Reading[],
  without: readonly number[],
) {
  let unknowns = NONE;
  let precision: number[][] = [];
  let left: number[] = [];
  for (let iteration = 0; iteration < ITERATIONS; iteration++) {
    const base = model(unknowns) ?? [];
    left = readings.map(({ tempC }, i) => tempC - (base[i] ?? Number.NaN));
    const slopes = names.map((name) => {
      const moved = model({ ...unknowns, [name]: unknowns[name] + NUDGE }) ?? [];
      return base.map((value, i) => ((moved[i] ?? value) - value) / NUDGE);
    });
    const sum = (of: (i: number) => number) =>
      readings.reduce(
        (total, _, i) => (without.includes(i) ? total : total + of(i) * weightOf(left[i] ?? 0)),
        0,
      );
    precision = names.map((_, a) =>
      names.map((_, b) => sum((i) => (slopes[a]?.[i] ?? 0) * (slopes[b]?.[i] ?? 0)) + (a === b ? 1 : 0)),
    );
    const right = names.map((name, a) => sum((i) => (slopes[a]?.[i] ?? 0) * (left[i] ?? 0)) - unknowns[name]);
    const move = solveSymmetric(precision, right);
    const next = names.map((name, a) => [name, clamp(unknowns[name] + (move[a] ?? 0))] as const);
    const length = Math.hypot(...move);
    unknowns = { ...unknowns, ...Object.fromEntries(next) };
    if (length < 0.01) break;
  }
  const final = model(unknowns) ?? [];
  return { unknowns, precision, left: readings.map(({ tempC }, i) => tempC - (final[i] ?? Number.NaN)) };
}

/** Readings far off count for less, so that one slipped probe does not bend the curve. */
const weightOf = (leftC: number) => 1 / (SCATTER_C ** 2 * Math.max(1, Math.abs(leftC) / (2 * SCATTER_C)));
const clamp = (value: number) => Math.min(4, Math.max(-4, value));

/** Core of the model at each reading, °C; what lies outside the run takes its end. */
function coreAt(
  batch: BatchThermal,
  stages: readonly HeatStage[],
  adjustment: Adjustment,
  readings: readonly Reading[],
  lastMin: number,
): number[] | null {
  const run = simulate(
    batch,
    upTo(stages, lastMin).map((stage) => adjustStage(stage, adjustment)),
    FIT,
  );
  return run === null ? null : readings.map(({ timeMin }) => coreOfRun(run, timeMin));
}

/** The stages as far as a time, a stage that ends at a temperature held on to that time. */
function upTo(stages: readonly HeatStage[], lastMin: number): HeatStage[] {
  const kept: HeatStage[] = [];
  let left = lastMin + 1;
  for (const stage of stages) {
    if (left <= 0) break;
    const minutes = stage.end.when === 'time' ? Math.min(left, stage.end.minutes) : left;
    kept.push({ ...stage, end: { when: 'time', minutes } });
    left -= minutes;
  }
  return kept;
}

/** What a probe in the middle reads in a run at a time, °C, by the straight line between its points. */
export function coreOfRun({ timesMin, centreC }: HeatRun, timeMin: number): number {
  const later = timesMin.findIndex((time) => time >= timeMin);
  if (later <= 0) return (later === 0 ? centreC[0] : centreC.at(-1)) ?? Number.NaN;
  const [t0 = 0, t1 = 0] = [timesMin[later - 1], timesMin[later]];
  const [v0 = 0, v1 = 0] = [centreC[later - 1], centreC[later]];
  return v0 + ((v1 - v0) * (timeMin - t0)) / (t1 - t0);
}
