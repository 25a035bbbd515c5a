import type { CureAmounts, Span, UnboundedBecause } from '../cure/index.ts';
import type { PackReading } from './pack.ts';

/** Whole muscle with its cure, as far as limits look at it. Masses in g; null is unknown. */
export interface WholeMuscleMass {
  /** Green weight without skin. */
  readonly greenG: number | null;
  /** Meat with all the cure that counts as part of the product. */
  readonly totalG: number | null;
  readonly finishedG: number | null;
  /** Curing salt that goes in; null where nobody has said, 0 where none does. */
  readonly curingSaltG: Span | null;
}

/** The facts `judgeLimit` of cure asks for, from one piece or one vat. */
export function wholeMuscleAmounts(mass: WholeMuscleMass, pack: PackReading): CureAmounts {
  const { greenG, totalG, finishedG, curingSaltG } = mass;
  const isNone = curingSaltG !== null && curingSaltG.high === 0;
  const nitrate = pack.nitrateFraction;
  return {
    isEmpty: greenG === null && (curingSaltG === null || isNone),
    meatBlockG: greenG,
    totalG,
    liningG: 0,
    finishedG,
    nitriteG: part(curingSaltG, pack.nitriteFraction),
    liningNitriteG: { low: 0, high: 0 },
    nitrateG: part(curingSaltG, nitrate),
    declaresNitrate: !isNone && (nitrate ?? 0) > 0,
    acceleratorG: { low: 0, high: 0 },
    unboundedBecause: unboundedBecause(curingSaltG, pack),
  };
}

function part(curingSaltG: Span | null, fraction: number | null): Span {
  if (curingSaltG?.high === 0) return { low: 0, high: 0 };
  if (fraction === 0) return { low: 0, high: 0 };
  if (curingSaltG === null || fraction === null) return { low: 0, high: null };
  const { low, high } = curingSaltG;
  return { low: low * fraction, high: high === null ? null : high * fraction };
}

function unboundedBecause(curingSaltG: Span | null, pack: PackReading): UnboundedBecause | null {
  if (curingSaltG?.high === 0) return null;
  if (pack.nitriteFraction === null) return 'strength';
  return curingSaltG === null || curingSaltG.high === null ? 'curing-salt-amount' : null;
}
