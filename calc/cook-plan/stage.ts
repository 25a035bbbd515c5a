import type { MissingInput, StageResult } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { CookPlanFindingId } from './finding-ids.ts';
import { planFindings } from './plan-findings.ts';
import { type CookPlanContext, type PlanGround, planGround } from './problem.ts';
import type { CookPlanSlice } from './slice.ts';
import { bathLevelMm } from './stages.ts';
import type { CookPlanValues, PlanOutcome } from './values.ts';

/**
 * The plan of a cook and its chill. What it predicts is never a verdict: a curve nobody measured proves nothing. It
 * gives stops where the plan cannot reach the limit or cannot cool in time, and no pass.
 *
 * @param outcome of `solvePlan` on this plan's problem, or null while there is none
 */
export function cookPlanStage(
  slice: CookPlanSlice,
  context: CookPlanContext,
  outcome: PlanOutcome | null = null,
): StageResult<CookPlanValues, CookPlanFindingId> {
  const ground = planGround(slice, context);
  const { reading, body } = ground;
  const levelMm = slice.method === 'bath' && body !== null ? bathLevelMm({ reading, body }) : null;
  const values: CookPlanValues = { ground, levelMm, outcome };
  return {
    values,
    findings: planFindings(slice, values),
    verdicts: [],
    missing: planMissing(slice, context, ground),
  };
}

/** What is blank, and what cannot be predicted without it. */
function planMissing(slice: CookPlanSlice, context: CookPlanContext, ground: PlanGround): MissingInput[] {
  const missing: MissingInput[] = [...ground.reading.missing];
  const need = (field: string, neededFor = 'cook-plan.curve') => missing.push({ field, neededFor });
  if (ground.mould === null) need(context.moulds.moulds.length > 1 ? 'cookPlan.mouldId' : 'mould.moulds');
  else if (ground.body === null) need(`mould.moulds.${ground.mould.id}`);
  if (entryValue('density', context.moulds.density) === null) need('mould.density');
  if (ground.composition === null) need('cookPlan.water');
  if (ground.targetC === null) need('cookPlan.target');
  if (ground.holdMin === null) need('cookPlan.hold');
  if (ground.limit === null && ground.refusal === null)
    need(context.cookRuleSetId === null ? 'process.cookRuleSetId' : 'process.cookLimitId', 'cook-plan.limit');
  if (ground.coolSet === null) need('process.coolRuleSetId', 'cook-plan.cooling');
  if (slice.chill.length === 0) need('cookPlan.chill', 'cook-plan.cooling');
  return missing;
}
