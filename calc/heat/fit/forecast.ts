import { type BatchThermal, type HeatRun, simulate } from '../solve/index.ts';
import type { HeatStage } from '../stages/index.ts';
import { type Adjustment, adjustmentOf, adjustStage, type Unknowns } from './adjust.ts';
import type { Fit } from './fit.ts';
import { cholesky, solveUpper } from './solve-small.ts';

/** Edges and middle of what the draws gave: nine in ten lie between `low` and `high`. */
export interface Band {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface Forecast {
  /** End of each stage, min from the start. A stage that never ends in its time counts as that time. */
  readonly stageEndMin: readonly Band[];
  /** Hottest the middle gets after the first stage, °C. */
  readonly peakC: Band;
  readonly draws: number;
  /** How many draws did not reach a stage's end temperature in its time. */
  readonly unreached: number;
}

/** Draws differ by minutes and degrees: a net coarser than the preview's does for them. */
const DRAW = { tier: 'preview', fineness: 3, toleranceC: 0.05, everyMin: 3 } as const;

const NAMES: readonly (keyof Adjustment)[] = ['filmFactor', 'mediumShiftC', 'heatingFactor'];
const NONE: Unknowns = { filmFactor: 0, mediumShiftC: 0, heatingFactor: 0 };

/**
 * Runs the stages once for each draw of what is not known, on a coarse net: from the spreads alone before
 * the first reading, from the fit after it. A generator, so that a worker can tell its progress (the
 * value of each step, 0–1) and be stopped between draws. `random` gives even numbers in 0–1.
 */
export function* forecast(
  batch: BatchThermal,
  stages: readonly HeatStage[],
  fit: Fit | null,
  draws: number,
  random: () => number,
): Generator<number, Forecast | null> {
  const runs: HeatRun[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const adjustment = adjustmentOf(drawn(fit, random));
    const adjusted = stages.map((stage) => adjustStage(stage, adjustment));
    const run = simulate(batch, adjusted, DRAW);
    if (run === null) return null;
    runs.push(run);
    yield (draw + 1) / draws;
  }
  return {
    stageEndMin: stages.map((_, index) =>
      bandOf(runs.map(({ stages: marks }) => marks[index]?.timeMin ?? Number.NaN)),
    ),
    peakC: bandOf(runs.map(peakOf)),
    draws,
    unreached: runs.filter(({ stages: marks }) => marks.some(({ reached }) => !reached)).length,
  };
}

/** A kitchen drawn from what a fit leaves open; without a fit from the spreads. `random` gives even numbers in 0–1. */
export const drawAdjustment = (fit: Fit | null, random: () => number): Adjustment =>
  adjustmentOf(drawn(fit, random));

function drawn(fit: Fit | null, random: () => number): Unknowns {
  if (fit === null)
    return Object.fromEntries(NAMES.map((name) => [name, normal(random)])) as Record<
      keyof Adjustment,
      number
    >;
  const moved = solveUpper(
    cholesky(fit.precision),
    fit.names.map(() => normal(random)),
  );
  const pairs = fit.names.map((name, i) => [name, fit.unknowns[name] + (moved[i] ?? 0)] as const);
  return { ...NONE, ...Object.fromEntries(pairs) };
}

/** A normal deviate, by the polar form of Box and Muller. */
function normal(random: () => number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}

/** Hottest that the middle gets after the end of the first stage, °C. */
function peakOf({ timesMin, centreC, stages }: HeatRun): number {
  const from = stages[0]?.timeMin ?? 0;
  return centreC.reduce(
    (most, value, i) => ((timesMin[i] ?? 0) >= from ? Math.max(most, value) : most),
    Number.NEGATIVE_INFINITY,
  );
}

function bandOf(values: readonly number[]): Band {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { low: at(0.05), middle: at(0.5), high: at(0.95) };
}

/**
 * Core at which to stop heating so that carry-over takes it to `peakC`, °C. The first stage must end at a
 * core temperature; the next ones are what follows. Computed on the exact tier. Null when the problem is not sound.
 */
export function pullAtC(batch: BatchThermal, stages: readonly HeatStage[], peakC: number): number | null {
  const [cook, ...after] = stages;
  if (cook === undefined || cook.end.when === 'time') return null;
  let pull = peakC;
  for (let round = 0; round < 4; round++) {
    const end = { when: 'core-reaches', tempC: pull, mostMin: cook.end.mostMin } as const;
    const run = simulate(batch, [{ ...cook, end }, ...after]);
    if (run === null) return null;
    const over = peakOf(run) - peakC;
    pull -= over;
    if (Math.abs(over) < 0.05) break;
  }
  return pull;
}
