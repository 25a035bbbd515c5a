import { type Bound, boundsOf, freeMaterials, lockedShare, type Row, rowOf } from './bounds.ts';
import { type Blend, blendOf, cheapest, valueAt } from './optimum.ts';
import type { BlendProblem } from './problem.ts';
import type { Solver } from './solver.ts';

/** A bound that must give way, and how far. Units are the bound's own: g for a stock, else shares or ratios. */
export interface Relaxation {
  readonly bound: Bound;
  /** The nearest limit that can be met. */
  readonly reachable: number;
  /** How far that is from the limit asked for, above zero. */
  readonly by: number;
}

export interface Relaxed {
  /** The least loosening over all bounds together, weighted: these give way at once. */
  readonly together: readonly Relaxation[];
  /** The cheapest blend once they have given way. */
  readonly compromise: Blend | null;
  /** Bounds each of which would do alone, all others kept. */
  readonly alone: readonly Relaxation[];
}

/**
 * How unwelcome it is to move a bound by its whole scale: stocks and shares are easiest to change, then the make-up,
 * salt last of all. House choice; it decides only which way out is named first.
 */
const WEIGHTS = {
  material: 1,
  fat: 3,
  liver: 3,
  'water-to-protein': 3,
  protein: 5,
  ice: 10,
  'added-water': 10,
  'fat-and-added-water': 10,
  salt: 30,
} as const;

function weightOf(bound: Bound): number {
  return 'quality' in bound ? WEIGHTS[bound.quality] : WEIGHTS.material;
}

/** Below this a slack is noise of the solver. */
const NOISE = 1e-8;
/** Room given to a relaxed row so that rounding does not close it again. */
const ROOM = 1e-9;
/** Rounds after which a ratio has settled; it takes three or four. */
const MAX_ROUNDS = 30;

/** Bounds of a problem loosened by slack variables that stand after the shares in every row. */
function elastic(problem: BlendProblem, soft: readonly Bound[], hard: readonly Bound[], solve: Solver) {
  const free = freeMaterials(problem);
  const blank = soft.map(() => 0);
  const rows: Row[] = [
    ...hard.map((bound) => {
      const row = rowOf(problem, bound);
      return { ...row, coefficients: [...row.coefficients, ...blank] };
    }),
    ...soft.map((bound, index) => {
      const row = rowOf(problem, bound);
      const slack = blank.map((_, other) => (other === index ? (row.side === 'at-most' ? -1 : 1) : 0));
      return { ...row, coefficients: [...row.coefficients, ...slack] };
    }),
  ];
  const solved = solve({
    costs: [...free.map(() => 0), ...soft.map(weightOf)],
    rows,
    sum: { of: free.length, total: 1 - lockedShare(problem) },
  });
  if (solved.state !== 'optimal') return null;
  return {
    blend: blendOf(problem, solved.values.slice(0, free.length)),
    slacks: solved.values.slice(free.length),
  };
}

function relaxation(bound: Bound, reachable: number): Relaxation {
  return { bound, reachable, by: Math.abs(reachable - bound.limit) };
}

/**
 * The least that one bound must give when all others hold: the row's own lowest (or highest) value. A ratio is no
 * straight line, so it is asked for again at the ratio just reached until nothing more can be gained (Dinkelbach
 * 1967). Null when this bound cannot help alone.
 */
function alone(problem: BlendProblem, bound: Bound, solve: Solver): Relaxation | null {
  const rows = boundsOf(problem)
    .filter((other) => !isSame(other, bound))
    .map((other) => rowOf(problem, other));
  const free = freeMaterials(problem);
  const isRatio = 'quality' in bound && bound.quality === 'water-to-protein';
  let asked = bound;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const { coefficients, side } = rowOf(problem, asked);
    const solved = solve({
      costs: coefficients.map((coefficient) => (side === 'at-most' ? coefficient : -coefficient)),
      rows,
      sum: { of: free.length, total: 1 - lockedShare(problem) },
    });
    const reached = solved.state === 'optimal' ? valueAt(bound, blendOf(problem, solved.values)) : null;
    if (reached === null) return null;
    if (!isRatio || Math.abs(reached - asked.limit) <= NOISE) return relaxation(bound, reached);
    asked = { ...asked, limit: reached };
  }
  return null;
}

function isSame(one: Bound, other: Bound): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/**
 * What to do about a blend that cannot be: the bounds that must give way together by the least weighted slack (an
 * elastic programme), the cheapest blend then, and every bound that would do alone.
 * Derived: linear programming; elastic relaxation is textbook.
 */
export function relaxedBlend(problem: BlendProblem, solve: Solver): Relaxed {
  const bounds = boundsOf(problem);
  const found = elastic(problem, bounds, [], solve);
  const slacks = found?.slacks ?? [];
  const rows = bounds.map((bound, index) => {
    const row = rowOf(problem, bound);
    const slack = slacks[index] ?? 0;
    const room = slack > NOISE ? slack + ROOM : ROOM;
    return { ...row, rhs: row.side === 'at-most' ? row.rhs + room : row.rhs - room };
  });
  const best = found ? cheapest(problem, rows, solve) : null;
  const compromise = best?.state === 'optimal' ? best.blend : (found?.blend ?? null);
  const together = bounds.flatMap((bound, index): Relaxation[] => {
    if ((slacks[index] ?? 0) <= NOISE || compromise === null) return [];
    const reachable = valueAt(bound, compromise);
    return reachable === null ? [] : [relaxation(bound, reachable)];
  });
  return {
    together,
    compromise,
    alone: bounds.flatMap((bound) => alone(problem, bound, solve) ?? []),
  };
}
