import { adjustStage, drawAdjustment, type Fit, fitToReadings, UNADJUSTED } from '../heat/index.ts';
import {
  type BandOptions,
  bandsOf,
  type Draw,
  drawKitchen,
  followedUpTo,
  type PlanBands,
  runDraw,
} from './band.ts';
import { type LastMoment, lastMomentToChill } from './last-moment.ts';
import type { PlanProblem } from './problem.ts';
import { solvePlan, thermalOf } from './solve.ts';
import type { PlanStage } from './stages.ts';
import type { PlanOutcome } from './values.ts';

/** A core reading, minutes after the mould went in, °C with the probe's offset taken off. */
export interface LiveReading {
  readonly timeMin: number;
  readonly tempC: number;
}

/** A cook that is on: what was read so far, and when the heat ended if it has. */
export interface LiveCook {
  readonly problem: PlanProblem;
  readonly readings: readonly LiveReading[];
  readonly heatEndMin: number | null;
}

/** What the readings say of the kitchen, and what the core will do in it. Plain data. */
export interface LiveForecast {
  readonly kitchen: {
    readonly filmFactor: number;
    readonly heatingFactor: number;
    readonly mediumShiftC: number;
  };
  /** Root mean square of what the fitted plan leaves, °C, over so many readings. */
  readonly residualC: number;
  readonly used: number;
  /** Places in `readings` of those no such kitchen gives. They were left out of the fit and of nothing else. */
  readonly unlikely: readonly number[];
  /** Core of the plan as it was made, to draw beside. */
  readonly planned: Pick<PlanOutcome, 'timesMin' | 'coreC'>;
  /** The plan as this kitchen runs it, exactly. */
  readonly outcome: PlanOutcome;
  readonly bands: PlanBands;
  /** Latest into the chill for the cooling rule set, from the slow edge; null where nothing can be said. */
  readonly lastMoment: LastMoment | null;
}

const isHeat = ({ kind }: PlanStage) => kind === 'cook' || kind === 'hold';

/**
 * Learns the kitchen from the readings of a cook and runs the plan on in it. Only the heat is learnt: the cold keeps
 * the plan's own figures and their whole spread. Yields its progress, 0–1.
 * @returns null when no reading can be used or the engine refuses the problem
 */
export function* liveForecast(
  { problem: planned, readings, heatEndMin }: LiveCook,
  { draws, random, chillMostMin = Number.POSITIVE_INFINITY }: BandOptions,
): Generator<number, LiveForecast | null> {
  const problem = asItWent(planned, heatEndMin);
  const batch = thermalOf(problem);
  if (batch === null) return null;
  const heats = problem.stages.filter(isHeat).map(({ heat }) => heat);
  const inHeat = readings.filter(({ timeMin }) => heatEndMin === null || timeMin <= heatEndMin);
  const fit = fitToReadings(batch, heats, inHeat);
  if (fit === null) return null;
  const outcome = solvePlan(fitted(problem, fit.adjustment));
  const made = solvePlan(planned);
  if (outcome === null || made === null) return null;
  yield 1 / (draws + 1);

  const followed = followedUpTo(problem, chillMostMin);
  const runs: Draw[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const run = drawLive(followed, batch, fit, random);
    if (run === null) return null;
    runs.push(run);
    yield (draw + 2) / (draws + 1);
  }
  const lastMin = inHeat.reduce((latest, { timeMin }) => Math.max(latest, timeMin), 0);
  const place = inHeat.map((reading) => readings.indexOf(reading));
  return {
    kitchen: fit.adjustment,
    residualC: fit.residualC,
    used: inHeat.length - fit.impossible.length,
    unlikely: fit.impossible.map((index) => place[index] ?? index),
    planned: { timesMin: made.timesMin, coreC: made.coreC },
    outcome,
    bands: bandsOf(problem, runs, lastMin),
    lastMoment: lastMomentToChill(fitted(problem, fit.adjustment)),
  };
}

function fitted(problem: PlanProblem, adjustment: Fit['adjustment']): PlanProblem {
  return {
    ...problem,
    stages: problem.stages.map((stage) =>
      isHeat(stage) ? { ...stage, heat: adjustStage(stage.heat, adjustment) } : stage,
    ),
  };
}

function drawLive(
  problem: PlanProblem,
  batch: NonNullable<ReturnType<typeof thermalOf>>,
  fit: Fit,
  random: () => number,
): Draw | null {
  const heat = drawAdjustment(fit, random);
  const cold = drawKitchen(random);
  const stages = problem.stages.map((stage) =>
    adjustStage(stage.heat, isHeat(stage) ? { ...UNADJUSTED, ...heat } : cold),
  );
  return runDraw(problem, batch, stages);
}

/** The plan with its heat ended when it did. A mould that is still in the heat stays to its target and hold. */
function asItWent(problem: PlanProblem, heatEndMin: number | null): PlanProblem {
  const [cook, ...after] = problem.stages;
  if (heatEndMin === null || cook === undefined) return problem;
  const heat = { ...cook.heat, end: { when: 'time', minutes: heatEndMin } as const };
  return { ...problem, stages: [{ ...cook, heat }, ...after.filter(({ kind }) => kind !== 'hold')] };
}
