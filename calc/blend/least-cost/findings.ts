import type { Finding, Params, Severity } from '../../findings/index.ts';
import type { BlendFindingId } from '../finding-ids.ts';
import { isBlendQuality } from '../read-blend.ts';
import type { BlendSlice } from '../slice.ts';
import type { Bound } from './bounds.ts';
import type { LeastCost } from './least-cost.ts';
import type { Relaxation } from './relax.ts';
import type { BoundWorth } from './worth.ts';

type BlendFinding = Finding<BlendFindingId>;

/** Changes below this are no news: a hundredth of the smallest coin of a currency with two decimals. */
const SMALLEST_CHANGE = 1e-4;

function fieldOf(bound: Bound): string {
  if ('quality' in bound && !isBlendQuality(bound.quality)) return 'blend.standard';
  if ('quality' in bound)
    return `blend.bands.${bound.quality}.${bound.kind === 'quality-min' ? 'min' : 'max'}`;
  const field = ({ stock: 'stock', 'least-share': 'minShare', 'most-share': 'maxShare' } as const)[
    bound.kind
  ];
  return `blend.materials.${bound.materialId}.${field}`;
}

/** What a sentence needs of a bound: its kind, the material's own name or the quality, and its limit. */
function boundParams(bound: Bound, slice: BlendSlice): Params {
  const what =
    'quality' in bound
      ? bound.quality
      : (slice.materials.find(({ id }) => id === bound.materialId)?.name ?? bound.materialId);
  return { kind: bound.kind, what, limit: bound.limit };
}

/**
 * What a least-cost answer has to tell, each at the field of its bound.
 * @param currency the kitchen's label of its money, for the words
 */
export function leastCostFindings(answer: LeastCost, slice: BlendSlice, currency = ''): BlendFinding[] {
  const tell = (
    id: BlendFindingId,
    severity: Severity,
    field: string,
    params: Params = {},
  ): BlendFinding => ({
    id,
    severity,
    stage: 'blend',
    field,
    params,
  });
  const relaxed =
    (id: BlendFindingId) =>
    ({ bound, reachable, by }: Relaxation) =>
      tell(id, 'caution', fieldOf(bound), { ...boundParams(bound, slice), reachable, by });
  switch (answer.state) {
    case 'cannot-tell':
      return [];
    case 'nothing-to-choose':
      return [tell('blend.nothing-to-choose', 'note', 'blend.materials')];
    case 'no-answer':
      return [tell('blend.no-answer', 'caution', 'blend.materials')];
    case 'infeasible':
      return [
        tell('blend.no-blend', 'caution', 'blend.materials', { count: answer.together.length }),
        ...answer.together.map(relaxed('blend.relax-together')),
        ...(answer.alone.length > 0
          ? answer.alone.map(relaxed('blend.relax-alone'))
          : [tell('blend.no-way-alone', 'note', 'blend.materials')]),
      ];
    case 'optimal':
      return answer.worths.flatMap((worth) => worthFinding(worth, slice, currency, tell));
  }
}

function worthFinding(
  { bound, movedBy, costChange }: BoundWorth,
  slice: BlendSlice,
  currency: string,
  tell: (id: BlendFindingId, severity: Severity, field: string, params: Params) => BlendFinding,
): BlendFinding[] {
  const params = { ...boundParams(bound, slice), movedBy: Math.abs(movedBy) };
  if (costChange === null) return [tell('blend.stock-is-last', 'note', fieldOf(bound), params)];
  if (Math.abs(costChange) < SMALLEST_CHANGE) return [];
  const told = { ...params, money: Math.abs(costChange), currency };
  if (bound.kind !== 'stock') return [tell('blend.bound-costs', 'note', fieldOf(bound), told)];
  const id = movedBy > 0 ? 'blend.more-stock-saves' : 'blend.less-stock-costs';
  return [tell(id, 'note', fieldOf(bound), told)];
}
