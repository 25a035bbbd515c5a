import { simulate } from '../heat/index.ts';
import { FOLLOW_EVERY_MIN, followedCore } from './followed-core.ts';
import type { PlanProblem } from './problem.ts';
import { thermalOf } from './solve.ts';

export interface CarryOverPull {
  /** Coldest spot when it comes out of the heat, °C. */
  readonly tempC: number;
  readonly timeMin: number;
}

/** How long after the heat the core is followed on its climb, min. */
const CLIMB_MIN = 90;
/** How near the peak must come to the target, °C, and in how many rounds. The curve is known at whole minutes. */
const NEAR_C = 0.12;
const ROUNDS = 8;
/** Degrees of the pull for one of the peak: never followed further than this. */
const MOST_SLOPE = 4;

/**
 * When to take the mould out so that carry-over brings its coldest spot just to the target. Information: whoever goes
 * by it meets the limit by carry-over alone. Null with a hold, which is kept in the heat, without a rest or chill
 * after it, and where the target is not reached.
 */
export function pullForCarryOver(problem: PlanProblem): CarryOverPull | null {
  const batch = thermalOf(problem);
  const [cook, ...after] = problem.stages;
  if (batch === null || cook === undefined || problem.holdMin > 0 || after.length === 0) return null;
  const { end } = cook.heat;
  if (end.when !== 'core-reaches') return null;
  let left = CLIMB_MIN;
  const climb = after.flatMap(({ heat }) => {
    const minutes = Math.min(left, heat.end.when === 'time' ? heat.end.minutes : left);
    left -= minutes;
    return minutes > 0 ? [{ ...heat, end: { when: 'time', minutes } as const }] : [];
  });
  let pullC = problem.targetC;
  let before: { readonly pullC: number; readonly over: number } | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    const stages = [{ ...cook.heat, end: { ...end, tempC: pullC } }, ...climb];
    const run = simulate(batch, stages, { pictureEveryMin: FOLLOW_EVERY_MIN });
    const out = run?.stages[0];
    if (run === null || out === undefined || !out.reached) return null;
    const peakC = followedCore(run, out.timeMin).reduce((most, tempC) => Math.max(most, tempC), pullC);
    const over = peakC - problem.targetC;
    if (over <= NEAR_C && over >= 0) return { tempC: pullC, timeMin: out.timeMin };
    // Along the line through the last two tries, to the safe side: the peak ends at the target or just over it.
    const slope: number =
      before === null || before.over === over ? 1 : (pullC - before.pullC) / (over - before.over);
    before = { pullC, over };
    pullC -= Math.min(MOST_SLOPE, Math.max(1 / MOST_SLOPE, slope)) * (over - NEAR_C / 2);
  }
  return null;
}
