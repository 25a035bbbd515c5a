import {
  type Adjustment,
  adjustStage,
  type BatchThermal,
  foodMaterial,
  type HeatStage,
  OVEN_VAPOUR_KPA,
  SPREAD,
  simulate,
} from '../heat/index.ts';
import { followedCore } from './followed-core.ts';
import { predict } from './predict.ts';
import type { PlanProblem } from './problem.ts';
import { marksOf } from './solve.ts';

/**
 * Edges and middle of a predicted figure: nine draws in ten lie between `low` and `high`. Infinite where a draw never
 * gets there.
 */
export interface PlanBand {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface PlanBands {
  /** Minutes to the target. */
  readonly targetMin: PlanBand;
  readonly heatEndMin: PlanBand;
  readonly peakC: PlanBand;
  /** Minutes of each leg of the cooling rule set. */
  readonly legs: readonly { readonly legId: string; readonly elapsedMin: PlanBand }[];
  /** Share of the draws that break a limit, 0–1: of the cook, and of the cooling. */
  readonly missesCook: number;
  readonly missesCooling: number;
  /** The slowest and the quickest core of nine draws in ten, °C, at the times given. */
  readonly corridor: {
    readonly timesMin: Float64Array;
    readonly lowC: Float64Array;
    readonly highC: Float64Array;
  };
  readonly draws: number;
}

/** What is not known of a kitchen, one standard deviation either way unless said. The page lists these. */
export const PLAN_SPREADS = {
  /** Films of air and water: of their logarithm. `film-coefficient-ranges`. */
  filmFactor: SPREAD.filmFactor,
  /** Ovens, baths and refrigerators against what they show, °C. Common practice, no source. */
  mediumC: SPREAD.mediumShiftC,
  /** How strongly the oven heats the pan: of its logarithm. Common practice, no source. */
  heatingFactor: SPREAD.heatingFactor,
  /** Conductivity of the mix: of its logarithm. Scatter of published data ±7 % (`yano-1982`, memory). */
  conductivity: 0.07,
  /** Core when it goes in, °C. Common practice, no source. */
  startC: 1,
  /** Height of the fill, mm. Common practice, no source. */
  depthMm: 1.5,
} as const;

/**
 * No prediction is better than this, whatever the draws say: a model and a measured joint in ice water differed by a
 * fifth, and no measured core curve of a terrine in a bath is published. Every band of time is at least this wide.
 */
export const LEAST_UNSURE = 0.2;

export interface BandOptions {
  readonly draws: number;
  /** Even numbers in 0–1, the same row for the same seed. */
  readonly random: () => number;
  /** Longest each stage of a chill is followed, min: past the last deadline nobody need know how late it is. */
  readonly chillMostMin?: number;
}

/** Draws differ by minutes and degrees: a coarse net and a loose step do for them. */
const DRAW = { tier: 'preview', fineness: 3, toleranceC: 0.05, everyMin: 4, pictureEveryMin: 8 } as const;
const CORRIDOR_EVERY_MIN = 4;

/** One kitchen's curve. */
export interface Draw {
  readonly timesMin: Float64Array;
  readonly coreC: Float64Array;
  readonly prediction: ReturnType<typeof predict>;
}

/**
 * Runs a plan once for each draw of what is not known. A generator, so that a worker can tell its progress (the value
 * of each step, 0–1) and be stopped between draws.
 * @returns null when the engine refuses the problem
 */
export function* planBands(
  given: PlanProblem,
  { draws, random, chillMostMin = Number.POSITIVE_INFINITY }: BandOptions,
): Generator<number, PlanBands | null> {
  const problem = followedUpTo(given, chillMostMin);
  const runs: Draw[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const run = drawOne(problem, random);
    if (run === null) return null;
    runs.push(run);
    yield (draw + 1) / draws;
  }
  return bandsOf(problem, runs, 0);
}

/** The problem with no stage of its chill followed longer than so many minutes. */
export function followedUpTo(problem: PlanProblem, chillMostMin: number): PlanProblem {
  const stages = problem.stages.map((stage) => {
    const { end } = stage.heat;
    if (stage.kind !== 'chill' || end.when === 'time') return stage;
    const mostMin = Math.min(end.mostMin, chillMostMin);
    return { ...stage, heat: { ...stage.heat, end: { ...end, mostMin } } };
  });
  return { ...problem, stages };
}

/** A kitchen drawn from the spreads. */
export function drawKitchen(random: () => number): Adjustment {
  return {
    filmFactor: Math.exp(PLAN_SPREADS.filmFactor * normal(random)),
    mediumShiftC: PLAN_SPREADS.mediumC * normal(random),
    heatingFactor: Math.exp(PLAN_SPREADS.heatingFactor * normal(random)),
  };
}

/** Runs one drawn kitchen. Null when the engine refuses it. */
export function runDraw(
  problem: PlanProblem,
  batch: BatchThermal,
  stages: readonly HeatStage[],
): Draw | null {
  const run = simulate(batch, stages, DRAW);
  if (run === null) return null;
  const prediction = predict(problem, run, marksOf(problem, run));
  return { timesMin: run.timesMin, coreC: followedCore(run, prediction.heatEndMin), prediction };
}

function drawOne(problem: PlanProblem, random: () => number): Draw | null {
  const kitchen = drawKitchen(random);
  const conducts = Math.exp(PLAN_SPREADS.conductivity * normal(random));
  const startC = problem.startC + PLAN_SPREADS.startC * normal(random);
  const stretch = PLAN_SPREADS.depthMm * normal(random);
  const vapourKPa = between(OVEN_VAPOUR_KPA.low, OVEN_VAPOUR_KPA.usual, OVEN_VAPOUR_KPA.high, random);
  const material = foodMaterial(problem.composition, problem);
  if (material === null) return null;
  const batch = {
    shape: deeper(problem.shape, stretch),
    layers: problem.coat,
    startC,
    material: { ...material, conductivityWmK: (tempC: number) => conducts * material.conductivityWmK(tempC) },
  };
  const stages = problem.stages.map(({ heat }) => withVapour(adjustStage(heat, kitchen), vapourKPa));
  return runDraw(problem, batch, stages);
}

/** A fill a little higher or lower. */
function deeper(shape: PlanProblem['shape'], byMm: number): PlanProblem['shape'] {
  switch (shape.kind) {
    case 'half-cylinder':
      return { ...shape, diameterMm: Math.max(1, shape.diameterMm + 2 * byMm) };
    case 'cylinder':
      return { ...shape, diameterMm: Math.max(1, shape.diameterMm + byMm) };
    case 'cube':
      return { ...shape, sideMm: Math.max(1, shape.sideMm + byMm) };
    case 'slab':
      return { ...shape, thicknessMm: Math.max(1, shape.thicknessMm + byMm) };
    default:
      return { ...shape, depthMm: Math.max(1, shape.depthMm + byMm) };
  }
}

function withVapour(stage: HeatStage, vapourKPa: number): HeatStage {
  const { water } = stage;
  if (water?.bath.kind !== 'oven' || water.bath.pan.covered) return stage;
  return {
    ...stage,
    water: { ...water, bath: { ...water.bath, pan: { ...water.bath.pan, vapourKPa } } },
  };
}

/** A normal deviate, by Box and Muller. */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A triangular deviate. */
function between(low: number, usual: number, high: number, random: () => number): number {
  const share = random();
  const turn = (usual - low) / (high - low);
  return share < turn
    ? low + Math.sqrt(share * (high - low) * (usual - low))
    : high - Math.sqrt((1 - share) * (high - low) * (high - usual));
}

/**
 * The bands of many runs. Times are at least as unsure as the model, counted from `knownMin`: what has been read so far
 * is certain.
 */
export function bandsOf(problem: PlanProblem, runs: readonly Draw[], knownMin: number): PlanBands {
  const predictions = runs.map(({ prediction }) => prediction);
  const times = (of: (prediction: Draw['prediction']) => number | null) =>
    widened(bandOf(predictions.map((prediction) => of(prediction) ?? Number.POSITIVE_INFINITY)), 0);
  const sinceThen = (of: (prediction: Draw['prediction']) => number | null) =>
    widened(bandOf(predictions.map((prediction) => of(prediction) ?? Number.POSITIVE_INFINITY)), knownMin);
  return {
    targetMin: sinceThen(({ targetMin }) => targetMin),
    heatEndMin: sinceThen(({ heatEndMin }) => heatEndMin),
    peakC: bandOf(predictions.map(({ peak }) => peak.tempC)),
    legs: (problem.cool?.legs ?? []).map(({ id }) => ({
      legId: id,
      elapsedMin: times(({ cooling }) => cooling?.legs.find(({ legId }) => legId === id)?.elapsedMin ?? null),
    })),
    missesCook: shareOf(predictions, ({ targetMin, hold }) => targetMin === null || hold?.state === 'beyond'),
    missesCooling: shareOf(predictions, ({ cooling }) => cooling?.state === 'beyond'),
    corridor: corridorOf(runs),
    draws: runs.length,
  };
}

/** Outside its edges lies one draw in twenty on either side. */
const EDGE = 0.05;

function bandOf(values: readonly number[]): PlanBand {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { low: at(EDGE), middle: at(0.5), high: at(1 - EDGE) };
}

/** A band of times, no narrower than the model can be trusted with what lies beyond a known time. */
function widened({ low, middle, high }: PlanBand, knownMin: number): PlanBand {
  // Where most kitchens never get there, what is known is the quickest.
  const centre = Number.isFinite(middle) ? middle : low;
  const ahead = LEAST_UNSURE * Math.max(0, centre - knownMin);
  if (!Number.isFinite(centre)) return { low, middle, high };
  return { low: Math.min(low, centre - ahead), middle, high: Math.max(high, centre + ahead) };
}

function shareOf<T>(all: readonly T[], is: (one: T) => boolean): number {
  return all.filter(is).length / Math.max(1, all.length);
}

/** The curves side by side. One that has ended keeps its last value. */
function corridorOf(runs: readonly Draw[]): PlanBands['corridor'] {
  const longest = Math.max(0, ...runs.map(({ timesMin }) => timesMin.at(-1) ?? 0));
  const count = Math.floor(longest / CORRIDOR_EVERY_MIN) + 1;
  const timesMin = Float64Array.from({ length: count }, (_, i) => i * CORRIDOR_EVERY_MIN);
  const readers = runs.map(readerOf);
  const bands = Array.from(timesMin, (timeMin) => bandOf(readers.map((read) => read(timeMin))));
  return {
    timesMin,
    lowC: Float64Array.from(bands, ({ low }) => low),
    highC: Float64Array.from(bands, ({ high }) => high),
  };
}

/** Reads a curve at times that only grow. */
function readerOf({ timesMin, coreC }: Draw): (timeMin: number) => number {
  let next = 1;
  return (timeMin) => {
    while (next < timesMin.length - 1 && (timesMin[next] ?? 0) < timeMin) next++;
    const [t0 = 0, t1 = 0] = [timesMin[next - 1], timesMin[next]];
    const [v0 = 0, v1 = v0] = [coreC[next - 1], coreC[next]];
    if (timeMin >= t1) return v1;
    return t1 > t0 ? v0 + ((v1 - v0) * Math.max(0, timeMin - t0)) / (t1 - t0) : v1;
  };
}
