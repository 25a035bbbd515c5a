import { STRENGTH_RANGE } from '../cure/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { CuringSaltPack } from './slice.ts';

/** Why the strength of a pack is not computed with. */
export type PackProblem = 'missing' | 'too-weak' | 'too-strong';

/** A pack as read. Fractions by mass; null is unknown or not believable. */
export interface PackReading {
  readonly nitriteFraction: number | null;
  readonly nitrateFraction: number | null;
  /** What is neither nitrite nor nitrate, taken as salt; with nitrate unknown, at most this much. */
  readonly saltFraction: number | null;
  readonly problem: PackProblem | null;
}

/**
 * What the pack of a curing salt says. A strength outside 0.4 to 10 % is taken for a slip of the
 * keyboard and not computed with.
 */
export function readPack(pack: CuringSaltPack): PackReading {
  const declared = entryValue('fraction', pack.strength.nitrite);
  const nitrateFraction = entryValue('fraction', pack.strength.nitrate);
  const problem = packProblem(declared);
  const nitriteFraction = problem === null ? declared : null;
  const saltFraction =
    nitriteFraction === null ? null : Math.max(0, 1 - nitriteFraction - (nitrateFraction ?? 0));
  return { nitriteFraction, nitrateFraction, saltFraction, problem };
}

function packProblem(fraction: number | null): PackProblem | null {
  if (fraction === null) return 'missing';
  if (fraction < STRENGTH_RANGE.min) return 'too-weak';
  return fraction > STRENGTH_RANGE.max ? 'too-strong' : null;
}
