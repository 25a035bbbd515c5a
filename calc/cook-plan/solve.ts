import { type BatchThermal, foodMaterial, type HeatRun, simulate, type Tier } from '../heat/index.ts';
import { FOLLOW_EVERY_MIN, followedCore } from './followed-core.ts';
import { predict } from './predict.ts';
import type { PlanProblem } from './problem.ts';
import { sectionOfRun, sectionPictures } from './section.ts';
import type { PlanMark, PlanOutcome } from './values.ts';

export interface SolveOptions {
  readonly tier?: Tier;
  /** Minutes between pictures of the section. */
  readonly pictureEveryMin?: number;
}

/** The batch as the engine takes it. Null for a composition that cannot be. */
export function thermalOf(problem: PlanProblem): BatchThermal | null {
  const { composition, densityKgM3, airFraction, shape, coat, startC } = problem;
  const material = foodMaterial(composition, { densityKgM3, airFraction });
  return material && { shape, material, layers: coat, startC };
}

/**
 * Simulates a plan and says what it predicts. The same function answers on the page, in a worker and in Node.
 * @returns null when the engine refuses a measure, a film or a temperature
 */
export function solvePlan(problem: PlanProblem, options: SolveOptions = {}): PlanOutcome | null {
  const { tier = 'exact', pictureEveryMin = FOLLOW_EVERY_MIN } = options;
  const batch = thermalOf(problem);
  if (batch === null) return null;
  const run = simulate(
    batch,
    problem.stages.map(({ heat }) => heat),
    { tier, pictureEveryMin },
  );
  if (run === null) return null;
  const marks = marksOf(problem, run);
  const prediction = predict(problem, run, marks);
  const { net, nodes } = sectionOfRun(run);
  return {
    tier,
    timesMin: run.timesMin,
    coreC: followedCore(run, prediction.heatEndMin),
    hottestC: run.hottestC,
    topC: run.topC,
    bathC: bathOf(problem, run, marks),
    coreHeightMm: run.coreHeightMm,
    marks,
    prediction,
    section: net,
    pictures: sectionPictures(run, nodes),
    energy: run.energy,
  };
}

export function marksOf({ stages }: PlanProblem, run: Pick<HeatRun, 'stages'>): PlanMark[] {
  return stages.map(({ kind, legId }, index) => ({
    kind,
    legId,
    startMin: run.stages[index - 1]?.timeMin ?? 0,
    endMin: run.stages[index]?.timeMin ?? Number.NaN,
    reached: run.stages[index]?.reached ?? false,
  }));
}

/** The engine keeps the bath's last temperature after it; the plan shows it only while the mould stands in it. */
function bathOf(
  problem: PlanProblem,
  { timesMin, bathC }: HeatRun,
  marks: readonly PlanMark[],
): Float64Array {
  const heated = problem.stages.flatMap(({ heat }, index) =>
    heat.water?.bath.kind === 'oven' ? [marks[index]?.endMin ?? 0] : [],
  );
  const untilMin = Math.max(-1, ...heated);
  const first = problem.stages[0]?.heat.water?.bath;
  const startC = first?.kind === 'oven' ? first.startC : null;
  return bathC.map((tempC, i) => {
    const timeMin = timesMin[i] ?? 0;
    if (timeMin === 0 && startC !== null) return startC;
    return timeMin <= untilMin + 1e-9 ? tempC : Number.NaN;
  });
}
