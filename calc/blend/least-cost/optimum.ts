import { compensatedSum } from '../../quantities/index.ts';
import { type Makeup, makeupOf } from '../makeup.ts';
import { type Bound, boundsOf, freeMaterials, lockedShare, type Row, rowOf } from './bounds.ts';
import type { BlendProblem } from './problem.ts';
import type { Solver } from './solver.ts';

export interface MaterialShare {
  readonly materialId: string;
  /** Of the blend, 0–1. */
  readonly share: number;
  readonly massG: number;
}

/** A blend found: masses add up to the total. */
export interface Blend {
  readonly shares: readonly MaterialShare[];
  readonly costPerKg: number;
  /** Of the whole blend, money. */
  readonly cost: number;
  readonly makeup: Makeup;
}

const G_PER_KG = 1000;

/** Shares of the free materials back into a blend. What rounding in the solver left over is spread in proportion. */
export function blendOf(problem: BlendProblem, freeShares: readonly number[]): Blend {
  const { totalG } = problem;
  const found = compensatedSum(freeShares);
  const room = 1 - lockedShare(problem);
  const shares = new Map(
    freeMaterials(problem).map(({ id }, index) => [
      id,
      found > 0 ? ((freeShares[index] ?? 0) * room) / found : 0,
    ]),
  );
  const portions = problem.materials.map((material) => ({
    material,
    share: material.lockedG === null ? (shares.get(material.id) ?? 0) : material.lockedG / totalG,
  }));
  const costPerKg = compensatedSum(portions.map(({ material, share }) => share * material.perKg));
  return {
    shares: portions.map(({ material, share }) => ({
      materialId: material.id,
      share,
      massG: share * totalG,
    })),
    costPerKg,
    cost: (costPerKg * totalG) / G_PER_KG,
    makeup: makeupOf(portions.map(({ material, share }) => ({ fractions: material.fractions, share }))),
  };
}

export type Cheapest =
  | { readonly state: 'optimal'; readonly blend: Blend }
  | { readonly state: 'infeasible' }
  | { readonly state: 'no-answer' };

/** The cheapest blend within rows, or what stands in its way. */
export function cheapest(problem: BlendProblem, rows: readonly Row[], solve: Solver): Cheapest {
  const free = freeMaterials(problem);
  const solved = solve({
    costs: free.map(({ perKg }) => perKg),
    rows,
    sum: { of: free.length, total: 1 - lockedShare(problem) },
  });
  return solved.state === 'optimal' ? { state: 'optimal', blend: blendOf(problem, solved.values) } : solved;
}

/** The cheapest blend within every bound. */
export function cheapestWithin(problem: BlendProblem, solve: Solver): Cheapest {
  return cheapest(
    problem,
    boundsOf(problem).map((bound) => rowOf(problem, bound)),
    solve,
  );
}

/** Where a blend stands at a bound: g for a stock, else a share, a fraction or a ratio. Null where unknown. */
export function valueAt(bound: Bound, { shares, makeup }: Blend): number | null {
  if ('quality' in bound)
    return bound.quality === 'water-to-protein' ? makeup.waterToProtein : makeup[bound.quality];
  const found = shares.find(({ materialId }) => materialId === bound.materialId);
  return found ? (bound.kind === 'stock' ? found.massG : found.share) : null;
}
