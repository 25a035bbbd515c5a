import type { Row } from './bounds.ts';

/** A linear programme to be minimised over variables that are never below zero. */
export interface Programme {
  readonly costs: readonly number[];
  readonly rows: readonly Row[];
  /** What the first `of` variables add up to. */
  readonly sum: { readonly of: number; readonly total: number };
}

export type Solved =
  | { readonly state: 'optimal'; readonly values: readonly number[]; readonly objective: number }
  | { readonly state: 'infeasible' }
  /** The solver gave up: unbounded or going in circles. Neither should happen in a blend. */
  | { readonly state: 'no-answer' };

export type Solver = (programme: Programme) => Solved;

/** Shares are told apart down to this: a tenth of a milligram in a tonne. */
const PRECISION = 1e-10;

/**
 * Load the solver, a revised simplex in a package of its own, when a least-cost blend is asked for and not before.
 */
export async function loadSolver(): Promise<Solver> {
  const { solve } = await import('yalps');
  return ({ costs, rows, sum }) => {
    const constraints = new Map<string, { min?: number; max?: number; equal?: number }>([
      ['sum', { equal: sum.total }],
      ...rows.map(
        ({ side, rhs }, index) => [`row ${index}`, side === 'at-most' ? { max: rhs } : { min: rhs }] as const,
      ),
    ]);
    const variables = costs.map((cost, variable) => {
      const coefficients: [string, number][] = rows.map(({ coefficients: row }, index) => [
        `row ${index}`,
        row[variable] ?? 0,
      ]);
      if (variable < sum.of) coefficients.push(['sum', 1]);
      return [`${variable}`, new Map([...coefficients, ['cost', cost]])] as const;
    });
    const answer = solve(
      { direction: 'minimize', objective: 'cost', constraints, variables },
      { precision: PRECISION, includeZeroVariables: true },
    );
    if (answer.status === 'infeasible') return { state: 'infeasible' };
    if (answer.status !== 'optimal') return { state: 'no-answer' };
    return { state: 'optimal', values: answer.variables.map(([, value]) => value), objective: answer.result };
  };
}
