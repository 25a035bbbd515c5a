export type { Bound } from './bounds.ts';
export { leastCostFindings } from './findings.ts';
export { type LeastCost, leastCostBlend, solveProblem } from './least-cost.ts';
export type { Blend, MaterialShare } from './optimum.ts';
export type { BlendProblem, ProblemMaterial } from './problem.ts';
export type { Relaxation, Relaxed } from './relax.ts';
export type { BoundWorth } from './worth.ts';
