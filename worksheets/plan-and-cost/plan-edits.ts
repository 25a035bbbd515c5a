import type { Batch } from '@larderwright/calc/batch';
import { newPlanLine, newPlanSlice, type PlanLine, type PlanSlice } from '@larderwright/calc/plan';

/** How a line of the formula is bought; one nobody has priced is bought ready to use. */
export function planLineOf(plan: PlanSlice, lineId: string): PlanLine {
  return plan.lines.find((line) => line.lineId === lineId) ?? newPlanLine(lineId);
}

/** The batch with something changed in how a line is bought. A plan is begun where there was none. */
export function withPlanLine(batch: Batch, lineId: string, change: Partial<PlanLine>): Batch {
  const plan = batch.plan ?? newPlanSlice();
  const changed = { ...planLineOf(plan, lineId), ...change };
  const lines = plan.lines.some((line) => line.lineId === lineId)
    ? plan.lines.map((line) => (line.lineId === lineId ? changed : line))
    : [...plan.lines, changed];
  return { ...batch, plan: { ...plan, lines } };
}
