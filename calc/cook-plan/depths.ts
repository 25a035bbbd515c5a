import type { PlanProblem } from './problem.ts';
import { solvePlan } from './solve.ts';
import type { PlanPrediction } from './values.ts';

/** Inside depths that are laid side by side, mm. */
export const DEPTHS_MM: readonly number[] = [40, 50, 60, 70, 80, 90, 100, 110];

export interface DepthRow {
  readonly depthMm: number;
  /** Null where the engine refuses the problem or the fill leaves no room. */
  readonly prediction: PlanPrediction | null;
}

/** What the same plan does in a mould of other depths, exactly. Yields its progress, 0–1. */
export function* depthRows(
  problems: readonly { readonly depthMm: number; readonly problem: PlanProblem | null }[],
): Generator<number, DepthRow[]> {
  const rows: DepthRow[] = [];
  for (const { depthMm, problem } of problems) {
    rows.push({ depthMm, prediction: problem && (solvePlan(problem)?.prediction ?? null) });
    yield rows.length / problems.length;
  }
  return rows;
}
