import { type Bound, boundsOf } from './bounds.ts';
import { type Blend, cheapestWithin, valueAt } from './optimum.ts';
import type { BlendProblem } from './problem.ts';
import type { Solver } from './solver.ts';

/** What a bound costs: the same blend solved again with that one bound moved. */
export interface BoundWorth {
  readonly bound: Bound;
  /** How far it was moved, in its own unit: g for a stock, else share or ratio. + loosens. */
  readonly movedBy: number;
  /** Change in the cost of the whole blend, money: below zero saves. Null: no blend is left. */
  readonly costChange: number | null;
}

/** Blends lighter than this are asked about by the hundred grams, heavier ones by the kilogram. */
const LARGE_BLEND_G = 5000;
const LARGE_STEP_G = 1000;
const SMALL_STEP_G = 100;
/** A point of a quality or share, and a tenth in a ratio. */
const SHARE_STEP = 0.01;
const SALT_STEP = 0.001;
const RATIO_STEP = 0.1;
/** A bound this near to its limit binds. */
const AT_LIMIT = 1e-7;

/** How far each bound is moved, in its own unit. */
function stepOf(bound: Bound, totalG: number): number {
  if (bound.kind === 'stock') return totalG >= LARGE_BLEND_G ? LARGE_STEP_G : SMALL_STEP_G;
  if (!('quality' in bound)) return SHARE_STEP;
  if (bound.quality === 'water-to-protein') return RATIO_STEP;
  return bound.quality === 'salt' ? SALT_STEP : SHARE_STEP;
}

function withLimit(problem: BlendProblem, bound: Bound, limit: number): BlendProblem {
  if ('quality' in bound) {
    const side = bound.kind === 'quality-min' ? 'min' : 'max';
    const bands = problem.bands.map((band) =>
      band.quality === bound.quality ? { ...band, [side]: limit } : band,
    );
    return { ...problem, bands };
  }
  const field = ({ stock: 'stockG', 'least-share': 'minShare', 'most-share': 'maxShare' } as const)[
    bound.kind
  ];
  const materials = problem.materials.map((material) =>
    material.id === bound.materialId ? { ...material, [field]: limit } : material,
  );
  return { ...problem, materials };
}

/**
 * What every binding bound is worth over one stated step: the blend is solved again with the limit moved outward and,
 * for a stock, inward too. Not a derivative: what is told holds for the whole step.
 * Derived: linear programming.
 */
export function boundWorths(problem: BlendProblem, best: Blend, solve: Solver): BoundWorth[] {
  return boundsOf(problem)
    .filter((bound) => {
      const value = valueAt(bound, best);
      const scale = bound.kind === 'stock' ? problem.totalG : 1;
      return value !== null && Math.abs(value - bound.limit) <= AT_LIMIT * scale;
    })
    .flatMap((bound) => {
      const step = stepOf(bound, problem.totalG);
      const outward = bound.kind === 'least-share' || bound.kind === 'quality-min' ? -1 : 1;
      const moves = bound.kind === 'stock' ? [step, -step] : [step];
      return moves.flatMap((movedBy): BoundWorth[] => {
        const limit = bound.limit + outward * movedBy;
        if (limit < 0) return [];
        const moved = cheapestWithin(withLimit(problem, bound, limit), solve);
        if (moved.state === 'no-answer') return [];
        const costChange = moved.state === 'optimal' ? moved.blend.cost - best.cost : null;
        return [{ bound, movedBy, costChange }];
      });
    });
}
