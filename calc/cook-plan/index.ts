export { LEAST_UNSURE, PLAN_SPREADS, type PlanBand, type PlanBands, planBands } from './band.ts';
export { depthMmOf, type MouldBody, mouldBody } from './body.ts';
export { coldestSpot } from './coldest-spot.ts';
export { DEPTHS_MM, type DepthRow, depthRows } from './depths.ts';
export type { CookPlanFindingId } from './finding-ids.ts';
export { type LastMoment, lastMomentToChill } from './last-moment.ts';
export { type LiveCook, type LiveForecast, type LiveReading, liveForecast } from './live.ts';
export { type MixProperties, mixProperties } from './mix-properties.ts';
export { newChillLeg, newCookPlanSlice, shippedOven } from './new-cook-plan.ts';
export {
  type CookPlanContext,
  type MixFractions,
  type PlanChange,
  type PlanGround,
  type PlanProblem,
  planGround,
} from './problem.ts';
export { type CarryOverPull, pullForCarryOver } from './pull.ts';
export { mediumField } from './read-plan.ts';
export { type SectionNet, type SectionPicture, sectionAt } from './section.ts';
export type * from './slice.ts';
export { solvePlan } from './solve.ts';
export { cookPlanStage } from './stage.ts';
export type { PlanStageKind } from './stages.ts';
export { toldPlan } from './told.ts';
export type * from './values.ts';
