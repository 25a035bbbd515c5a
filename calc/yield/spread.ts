import { compensatedSum } from '../quantities/index.ts';

/** Several measurements of one thing. */
export interface Spread {
  readonly count: number;
  readonly mean: number;
  /** Sample standard deviation (n − 1); null for a single measurement, which has no spread. */
  readonly sampleSd: number | null;
  readonly min: number;
  readonly max: number;
}

/**
 * Mean, sample standard deviation and range.
 * Derived: the usual definitions, the deviation with n − 1 (ISO 3534-1, from memory).
 * @returns null for no values or one that is not a number
 * @example spreadOf([0.7, 0.72, 0.74]) // mean 0.72, sampleSd 0.02, 0.7 to 0.74
 */
export function spreadOf(values: readonly number[]): Spread | null {
  const count = values.length;
  if (count === 0 || !values.every(Number.isFinite)) return null;
  const mean = compensatedSum(values) / count;
  const squares = compensatedSum(values.map((value) => (value - mean) ** 2));
  return {
    count,
    mean,
    sampleSd: count > 1 ? Math.sqrt(squares / (count - 1)) : null,
    min: Math.min(...values),
    max: Math.max(...values),
  };
}
