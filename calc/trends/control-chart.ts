import { compensatedSum } from '../quantities/index.ts';
import { type RunSignal, runSignals } from './run-signals.ts';

/**
 * Mean range of two normal observations, in standard deviations: 2/√π, printed as 1.128. NIST/SEMATECH e-Handbook of
 * Statistical Methods, 6.3.2.2.
 */
const D2 = 2 / Math.sqrt(Math.PI);
/** Standard deviation of that range, √(2 − 4/π), printed as 0.853. Derived. */
const D3 = Math.sqrt(2 - 4 / Math.PI);
/** Limits stand three standard deviations off: 3/d2 is the 2.66 of the textbooks. */
const SIGMAS = 3;

/** Fewer batches draw no limits: the mean range of fewer moves too much from one batch to the next. The example of the handbook has ten. */
export const LEAST_BATCHES = 10;
/** Under so many the limits are trial limits. Common practice, no source. */
export const SETTLED_BATCHES = 20;

export interface ControlPoint {
  /** Null: not recorded. It is no point of the chart, and never zero. */
  readonly value: number | null;
  /** Difference to the batch before it; null for the first, and beside one that was not recorded. */
  readonly range: number | null;
  readonly signals: readonly RunSignal[];
  /** The range lies over its limit: a jump between two batches. */
  readonly jump: boolean;
}

export interface ControlLimits {
  readonly mean: number;
  readonly meanRange: number;
  /** Standard deviation, from the mean range. */
  readonly sigma: number;
  readonly lower: number;
  readonly upper: number;
  /** The range has no lower limit. */
  readonly rangeUpper: number;
  /** Fewer than `SETTLED_BATCHES` batches stand behind them. */
  readonly isTrial: boolean;
}

export interface ControlChart {
  readonly points: readonly ControlPoint[];
  /** How many of the batches have the figure. */
  readonly recorded: number;
  /** Null: too few to draw limits, or none differ. */
  readonly limits: ControlLimits | null;
}

const mean = (values: readonly number[]) => compensatedSum(values) / values.length;

/**
 * Chart of individual values and moving ranges (Shewhart), in the order of the work. Limits tell what this work has
 * done so far. They are no limits of safety.
 *
 * @param values one for each batch, null where nobody recorded it
 */
export function controlChart(values: readonly (number | null)[]): ControlChart {
  const known = values.filter((value) => value !== null);
  const ranges = values.map((value, at) => {
    const before = at > 0 ? (values[at - 1] ?? null) : null;
    return value === null || before === null ? null : Math.abs(value - before);
  });
  const limits = limitsOf(
    known,
    ranges.filter((range) => range !== null),
  );
  const signals = limits ? runSignals(values, limits.mean, limits.sigma) : values.map(() => []);
  return {
    points: values.map((value, at) => {
      const range = ranges[at] ?? null;
      return {
        value,
        range,
        signals: signals[at] ?? [],
        jump: limits !== null && range !== null && range > limits.rangeUpper,
      };
    }),
    recorded: known.length,
    limits,
  };
}

function limitsOf(known: readonly number[], ranges: readonly number[]): ControlLimits | null {
  if (known.length < LEAST_BATCHES || ranges.length < LEAST_BATCHES - 1) return null;
  const meanRange = mean(ranges);
  const sigma = meanRange / D2;
  if (!(sigma > 0)) return null;
  const middle = mean(known);
  return {
    mean: middle,
    meanRange,
    sigma,
    lower: middle - SIGMAS * sigma,
    upper: middle + SIGMAS * sigma,
    rangeUpper: meanRange + SIGMAS * D3 * sigma,
    isTrial: known.length < SETTLED_BATCHES,
  };
}
