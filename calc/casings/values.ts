import type { Spread } from '../yield/index.ts';
import type { Links } from './links.ts';
import type { CasingLength } from './mass-per-metre.ts';

export interface CasingsValues {
  readonly batchG: number | null;
  readonly stuffedMm: number | null;
  /** At the fullness told, g/m. */
  readonly perMetreG: number | null;
  readonly metresPerKg: number | null;
  readonly casing: CasingLength | null;
  /** Whole strands and bundles to soak, where their lengths are told. */
  readonly strands: number | null;
  readonly hanks: number | null;
  readonly links: Links | null;
  /** Come-up time against a sausage of 30 mm, for the middle to heat: grows with the square. */
  readonly comeUpTimes30: number | null;
  /** Links as weighed, g. */
  readonly actual: Spread | null;
  readonly actualOffFraction: number | null;
}
