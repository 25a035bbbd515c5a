import { compensatedSum } from '../../quantities/index.ts';
import type { BoundQuality } from '../band.ts';
import type { MaterialFractions } from '../makeup.ts';
import type { BlendProblem, ProblemMaterial } from './problem.ts';

/** One wish or fact that narrows a blend. A share and a stock are of one material, a quality of the whole. */
export type Bound =
  | { readonly kind: 'stock'; readonly materialId: string; readonly limit: number }
  | { readonly kind: 'least-share' | 'most-share'; readonly materialId: string; readonly limit: number }
  | { readonly kind: 'quality-min' | 'quality-max'; readonly quality: BoundQuality; readonly limit: number };

/** A bound as a row over the free materials: Σ coefficient × share ≤ rhs, or ≥ rhs. */
export interface Row {
  readonly coefficients: readonly number[];
  readonly side: 'at-most' | 'at-least';
  readonly rhs: number;
}

/** Materials the programme may move. */
export function freeMaterials(problem: BlendProblem): ProblemMaterial[] {
  return problem.materials.filter(({ lockedG }) => lockedG === null);
}

/** Share of the blend that the locked materials take. */
export function lockedShare({ materials, totalG }: BlendProblem): number {
  return compensatedSum(materials.map(({ lockedG }) => (lockedG ?? 0) / totalG));
}

/** Every bound of a problem, in the order of materials and bands. A stock's limit is in g, the others are as typed. */
export function boundsOf(problem: BlendProblem): Bound[] {
  const ofMaterials = freeMaterials(problem).flatMap(
    ({ id: materialId, stockG, minShare, maxShare }): Bound[] => [
      ...(stockG === null ? [] : [{ kind: 'stock', materialId, limit: stockG } as const]),
      ...(minShare ? [{ kind: 'least-share', materialId, limit: minShare } as const] : []),
      ...(maxShare === null ? [] : [{ kind: 'most-share', materialId, limit: maxShare } as const]),
    ],
  );
  const ofBands = problem.bands.flatMap(({ quality, min, max }): Bound[] => [
    ...(min === null ? [] : [{ kind: 'quality-min', quality, limit: min } as const]),
    ...(max === null ? [] : [{ kind: 'quality-max', quality, limit: max } as const]),
  ]);
  return [...ofMaterials, ...ofBands];
}

/**
 * What a unit of a material adds to a quality's row. A ratio water : protein ≤ r is the straight line
 * Σ (water − r × protein) × share ≤ 0.
 */
function qualityCoefficient(quality: BoundQuality, limit: number, fractions: MaterialFractions): number {
  if (quality === 'water-to-protein') return (fractions.water ?? 0) - limit * (fractions.protein ?? 0);
  return fractions[quality] ?? 0;
}

/** The row of a bound. What the locked materials bring is moved to the right-hand side. */
export function rowOf(problem: BlendProblem, bound: Bound): Row {
  const free = freeMaterials(problem);
  if ('quality' in bound) {
    const { quality, limit } = bound;
    const locked = compensatedSum(
      problem.materials.map(
        ({ lockedG, fractions }) =>
          ((lockedG ?? 0) / problem.totalG) * qualityCoefficient(quality, limit, fractions),
      ),
    );
    return {
      coefficients: free.map(({ fractions }) => qualityCoefficient(quality, limit, fractions)),
      side: bound.kind === 'quality-min' ? 'at-least' : 'at-most',
      rhs: (quality === 'water-to-protein' ? 0 : limit) - locked,
    };
  }
  return {
    coefficients: free.map(({ id }) => (id === bound.materialId ? 1 : 0)),
    side: bound.kind === 'least-share' ? 'at-least' : 'at-most',
    rhs: bound.kind === 'stock' ? bound.limit / problem.totalG : bound.limit,
  };
}
