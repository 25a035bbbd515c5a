import { adjustStage, SPREAD, simulate, UNADJUSTED } from '../heat/index.ts';
import { LEAST_UNSURE } from './band.ts';
import { predict } from './predict.ts';
import type { PlanProblem } from './problem.ts';
import { marksOf, thermalOf } from './solve.ts';
import type { PlanStage } from './stages.ts';

/** Latest into the chill so that every leg of the cooling rule set is still met by the slow edge. */
export interface LastMoment {
  /** Minutes after the mould went in. Null: even at once the slow edge would not be in time. */
  readonly byMin: number | null;
  /** The wait was followed no further than this, min out of the heat: there is at least so much time. */
  readonly atLeast: boolean;
}

/** Nobody lets a terrine stand longer, min. */
const LONGEST_WAIT_MIN = 240;
const NEAR_MIN = 1;
/** One-sided edge of nine in ten: so many deviations. */
const EDGE_DEVIATIONS = 1.645;
const isHeat = ({ kind }: PlanStage) => kind === 'cook' || kind === 'hold';

/** A search needs no finer net than a draw. */
const COARSE = { tier: 'preview', fineness: 3, toleranceC: 0.05, everyMin: 3 } as const;

/**
 * The last moment to move to the chill, from the pessimistic edge: films of the chill at the slow edge of what is
 * known, and every time of the model longer by a fifth. Null without cooling limits, a usable cure where they ask for
 * one, a rest to wait in, or a chill in the plan.
 */
export function lastMomentToChill(problem: PlanProblem): LastMoment | null {
  const { cool, stages } = problem;
  const heat = stages.filter(isHeat);
  const chill = stages.filter(({ kind }) => kind === 'chill');
  const wait = stages.find(({ kind }) => kind === 'rest' || kind === 'press');
  if (cool === null || !cool.usable || heat.length === 0 || chill.length === 0 || !wait) return null;
  const slow = { ...UNADJUSTED, filmFactor: Math.exp(-EDGE_DEVIATIONS * SPREAD.filmFactor) };
  const slowChill = chill.map((stage) => ({ ...stage, heat: adjustStage(stage.heat, slow) }));
  const waiting = (minutes: number): PlanStage[] =>
    minutes > 0 ? [{ ...wait, heat: { ...wait.heat, end: { when: 'time', minutes } } }] : [];
  const inTime = (minutes: number) =>
    meets({ ...problem, stages: [...heat, ...waiting(minutes), ...slowChill] });
  const outMin = inTime(0);
  if (outMin === null) return null;
  if (!outMin.met) return { byMin: null, atLeast: false };
  const most = Math.min(LONGEST_WAIT_MIN, cool.chillStartMaxMin ?? LONGEST_WAIT_MIN);
  if (inTime(most)?.met) return { byMin: outMin.heatEndMin + most, atLeast: most === LONGEST_WAIT_MIN };
  let [good, bad] = [0, most];
  while (bad - good > NEAR_MIN) {
    const middle = (good + bad) / 2;
    if (inTime(middle)?.met) good = middle;
    else bad = middle;
  }
  return { byMin: outMin.heatEndMin + Math.floor(good), atLeast: false };
}

/** Whether every leg would be met with a fifth of its time to spare. */
function meets(problem: PlanProblem): { readonly met: boolean; readonly heatEndMin: number } | null {
  const batch = thermalOf(problem);
  const { cool } = problem;
  if (batch === null || cool === null) return null;
  const run = simulate(
    batch,
    problem.stages.map(({ heat }) => heat),
    COARSE,
  );
  if (run === null) return null;
  const { cooling, heatEndMin } = predict(problem, run, marksOf(problem, run));
  const met = cool.legs.every((leg) => {
    const took = cooling?.legs.find(({ legId }) => legId === leg.id)?.elapsedMin ?? null;
    return took !== null && took * (1 + LEAST_UNSURE) <= leg.maxMin;
  });
  return { met, heatEndMin };
}
