export type { BlendFindingId } from './finding-ids.ts';
export {
  type Blend,
  type BlendProblem,
  type Bound,
  type BoundWorth,
  type LeastCost,
  leastCostBlend,
  leastCostFindings,
  type MaterialShare,
  type ProblemMaterial,
  type Relaxation,
  type Relaxed,
  solveProblem,
} from './least-cost/index.ts';
export { type Makeup, makeupOf } from './makeup.ts';
export { newBlendMaterial, newBlendSlice, newBlendStandard } from './new-blend.ts';
export { BLEND_QUALITIES } from './read-blend.ts';
export type * from './slice.ts';
export { type LockedLine, type Square, type SquareProblem, squareBlend } from './square.ts';
export { type BlendLine, type BlendValues, blendStage } from './stage.ts';
export { judgeStandard } from './standard.ts';
