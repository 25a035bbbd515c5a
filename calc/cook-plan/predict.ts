import { type CoolPoint, judgeCurve } from '../cooling/index.ts';
import type { HeatRun } from '../heat/index.ts';
import {
  COME_UP,
  type CurvePoint,
  LINE_70_Z7_5,
  LINE_70_Z10,
  pasteurisationValue,
} from '../lethality/index.ts';
import { followedCore } from './followed-core.ts';
import type { PlanProblem } from './problem.ts';
import type { PlanMark, PlanPrediction, PlanValues, PredictedState } from './values.ts';

/** Under this the value by z = 7.5 °C counts nothing, as on the cook log. */
const VALUE_FLOOR_C = 60;
/** Room for the engine's landing on a stage's end temperature, °C. */
const LANDING_C = 0.001;

/** What a run must have recorded: its curves, and pictures of the field a few minutes apart. */
type Curves = Pick<HeatRun, 'timesMin' | 'coreC' | 'coreHeightMm' | 'hottestC' | 'pictures' | 'network'>;

/** Reads a predicted curve by the limit and the cooling rule set of the plan. */
export function predict(problem: PlanProblem, run: Curves, marks: readonly PlanMark[]): PlanPrediction {
  const cook = marks.find(({ kind }) => kind === 'cook');
  const heatEndMin = marks.findLast(({ kind }) => kind === 'cook' || kind === 'hold')?.endMin ?? 0;
  const core = pointsOf(run.timesMin, followedCore(run, heatEndMin));
  const peak = core.reduce((best, point) => (point.tempC > best.tempC ? point : best), {
    timeMin: 0,
    tempC: Number.NEGATIVE_INFINITY,
  });
  const atHeatEndC = valueAt(core, heatEndMin);
  const inHeat = core.filter(({ timeMin }) => timeMin <= heatEndMin + 1e-9);
  const values = (line: typeof LINE_70_Z10, floorC?: number): PlanValues => {
    const options = floorC === undefined ? {} : { floorC };
    return {
      heatMin: pasteurisationValue(inHeat, line, options),
      wholeMin: pasteurisationValue(core, line, options),
    };
  };
  const firstChill = marks.find(({ kind }) => kind === 'chill');
  return {
    targetMin: targetOf(problem, core, cook),
    heatEndMin,
    peak,
    carryOverC: Math.max(0, peak.tempC - atHeatEndC),
    hold: problem.limit && holdOf(problem.limit, core),
    comeUpMin: spanBetween(core, COME_UP.fromC, COME_UP.toC),
    value: { z7_5: values(LINE_70_Z7_5, VALUE_FLOOR_C), z10: values(LINE_70_Z10) },
    cooling: coolingOf(problem, run, heatEndMin),
    chillStart: firstChill ? chillStartOf(problem, firstChill.startMin - heatEndMin) : null,
    endC: run.hottestC.at(-1) ?? Number.NaN,
    endMin: run.timesMin.at(-1) ?? Number.NaN,
  };
}

/** When the target is reached: the end of a cook that waits for it; else where the curve first crosses it. */
function targetOf(
  { stages, targetC }: PlanProblem,
  core: readonly CurvePoint[],
  cook: PlanMark | undefined,
): number | null {
  const waits = stages.find(({ kind }) => kind === 'cook')?.heat.end.when !== 'time';
  if (waits) return cook?.reached ? cook.endMin : null;
  const there = core.findIndex(({ tempC }) => tempC >= targetC - LANDING_C);
  const [a, b] = [core[there - 1], core[there]];
  return b === undefined ? null : a ? crossing(a, b, targetC) : b.timeMin;
}

function pointsOf(timesMin: Float64Array, tempC: Float64Array): CurvePoint[] {
  return Array.from(timesMin, (timeMin, i) => ({ timeMin, tempC: tempC[i] ?? Number.NaN }));
}

/** The curve at a time along straight lines; its end outside. */
function valueAt(points: readonly CurvePoint[], timeMin: number): number {
  const later = points.findIndex((point) => point.timeMin >= timeMin - 1e-9);
  const b = points[later] ?? points.at(-1);
  const a = points[later - 1];
  if (b === undefined) return Number.NaN;
  if (a === undefined || b.timeMin <= timeMin) return b.tempC;
  return a.tempC + ((b.tempC - a.tempC) * (timeMin - a.timeMin)) / (b.timeMin - a.timeMin);
}

/** Longest stretch at or above a temperature along straight lines, min. */
function dwellAbove(points: readonly CurvePoint[], tempC: number): number | null {
  let longest: number | null = null;
  let since: number | null = null;
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    const reached = point.tempC >= tempC - LANDING_C;
    if (reached && since === null)
      since = before && before.tempC < tempC ? crossing(before, point, tempC) : point.timeMin;
    if (since === null) continue;
    const until = reached || !before ? point.timeMin : crossing(before, point, tempC);
    longest = Math.max(longest ?? 0, until - since);
    if (!reached) since = null;
  }
  return longest;
}

function crossing(a: CurvePoint, b: CurvePoint, tempC: number): number {
  const share = b.tempC === a.tempC ? 1 : (tempC - a.tempC) / (b.tempC - a.tempC);
  return a.timeMin + Math.min(1, Math.max(0, share)) * (b.timeMin - a.timeMin);
}

function holdOf(limit: NonNullable<PlanProblem['limit']>, core: readonly CurvePoint[]) {
  const heldMin = dwellAbove(core, limit.thresholdC);
  const held = heldMin !== null && heldMin >= limit.holdMin - 1e-6;
  return { state: held ? 'within' : 'beyond', heldMin: heldMin ?? 0 } as const;
}

function spanBetween(points: readonly CurvePoint[], fromC: number, toC: number): number | null {
  const hot = points.findIndex(({ tempC }) => tempC >= toC);
  const after = points[hot];
  const before = points[hot - 1];
  if (!after) return null;
  const endMin = before ? crossing(before, after, toC) : after.timeMin;
  const warm = points.findIndex(({ tempC }) => tempC > fromC);
  const [a, b] = [points[warm - 1], points[warm]];
  const startMin = a && b ? crossing(a, b, fromC) : (points[0]?.timeMin ?? 0);
  return endMin - startMin;
}

function coolingOf({ cool }: PlanProblem, run: Curves, heatEndMin: number): PlanPrediction['cooling'] {
  if (cool === null) return null;
  const slowest = pointsOf(run.timesMin, run.hottestC);
  const points: CoolPoint[] = [
    { timeMin: heatEndMin, tempC: valueAt(slowest, heatEndMin) },
    ...slowest.filter(({ timeMin }) => timeMin > heatEndMin + 1e-9),
  ];
  const judged = judgeCurve({ kind: 'lines', points }, cool.legs);
  const stateOf = (state: 'pass' | 'fail' | 'cannot-tell'): PredictedState =>
    state === 'fail' ? 'beyond' : state === 'pass' && cool.usable ? 'within' : 'cannot-tell';
  return {
    state: stateOf(judged.state),
    legs: judged.legs.map(({ legId, elapsedMin, state }) => ({ legId, elapsedMin, state: stateOf(state) })),
  };
}

function chillStartOf({ cool }: PlanProblem, waitMin: number): PlanPrediction['chillStart'] {
  const most = cool?.chillStartMaxMin ?? null;
  return { waitMin, state: most === null ? 'cannot-tell' : waitMin > most ? 'beyond' : 'within' };
}
