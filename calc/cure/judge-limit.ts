import type { VerdictState } from '../findings/index.ts';
import type { CureAmounts, Span } from './amounts.ts';
import { exceeds } from './exceeds.ts';
import { countsNitrate, inLimitForm } from './in-limit-form.ts';
import { nitritePpm } from './nitrite-ppm.ts';
import { inResidualForm, type MeasuredResidual } from './residual.ts';
import type { CureLimit } from './rule-sets/index.ts';

/** Why a limit came out as it did. Ids of the words catalogue. */
export type LimitReason =
  | 'cure.within'
  | 'cure.nothing-added'
  | 'cure.over'
  | 'cure.empty'
  | 'cure.mass-unknown'
  | 'cure.no-meat-block'
  | 'cure.strength-unknown'
  | 'cure.cure-amount-unknown'
  | 'cure.carried-unknown'
  | 'cure.nitrate-not-declared'
  | 'cure.finished-unknown'
  | 'cure.residual-within'
  | 'cure.residual-to-be-measured'
  | 'cure.residual-measured-within'
  | 'cure.residual-over'
  | 'cure.residual-figure-incomplete'
  | 'cure.residual-nitrate-not-measured'
  | 'cure.residual-nitrate-counted-in';

/** One limit with the figure it was compared with, mg/kg in the limit's own form and on its own basis. */
export interface JudgedLimit {
  readonly limit: CureLimit;
  readonly state: VerdictState;
  readonly reason: LimitReason;
  /** From what is known for certain. */
  readonly ppm: number | null;
  /** With the worst the missing facts allow. */
  readonly highestPpm: number | null;
}

/**
 * Judges one limit on the amounts of a batch.
 *
 * A ceiling on what is put in: over when the certain part is over, within when even the worst case
 * is within, otherwise it cannot be told. A ceiling on what is left in the product is passed without
 * a laboratory only by its bound: cooking and keeping use nitrite up, so no more can be left than went
 * in, counted on the lighter of batch and finished product. Above that bound only a laboratory can tell,
 * and a laboratory's figure over the limit fails it whatever the bound says.
 *
 * @param measured what a laboratory found; only limits on what is left look at it
 */
export function judgeLimit(
  limit: CureLimit,
  amounts: CureAmounts,
  measured: MeasuredResidual | null = null,
): JudgedLimit {
  const bounded = judgeByAmounts(limit, amounts);
  if (limit.kind !== 'residual' || measured === null || amounts.isEmpty) return bounded;
  const { ppm: least, highestPpm: most } = bounded;
  const open = (reason: LimitReason): JudgedLimit => ({
    limit,
    state: 'cannot-tell',
    reason,
    ppm: least,
    highestPpm: most,
  });
  if (measured === 'incomplete') return open('cure.residual-figure-incomplete');
  const { ppm, counts } = inResidualForm(limit, measured);
  const found = { limit, ppm, highestPpm: ppm };
  const isOver = exceeds(ppm, limit.valuePpm);
  // Nitrite alone over a limit on both is over; nitrite and nitrate together within one on nitrite is within.
  if (isOver && counts !== 'more') return { ...found, state: 'fail', reason: 'cure.residual-over' };
  if (!isOver && counts !== 'less')
    return { ...found, state: 'pass', reason: 'cure.residual-measured-within' };
  if (bounded.state === 'pass') return bounded;
  return open(counts === 'less' ? 'cure.residual-nitrate-not-measured' : 'cure.residual-nitrate-counted-in');
}

function judgeByAmounts(limit: CureLimit, amounts: CureAmounts): JudgedLimit {
  const say = (state: VerdictState, reason: LimitReason, ppm: number | null, highestPpm: number | null) => ({
    limit,
    state,
    reason,
    ppm,
    highestPpm,
  });
  if (amounts.isEmpty) return say('cannot-tell', 'cure.empty', null, null);

  const span = spanFor(limit, amounts);
  const liningBare = limit.basis === 'meat-block' || amounts.liningNitriteG.high === 0;
  if (span.high === 0 && liningBare) return say('pass', 'cure.nothing-added', 0, 0);

  const basisG = basisMass(limit, amounts);
  if (basisG === null) {
    const reason =
      limit.basis === 'finished' && amounts.totalG !== null ? 'cure.finished-unknown' : 'cure.mass-unknown';
    return say('cannot-tell', reason, null, null);
  }
  if (basisG === 0) {
    return say(
      'cannot-tell',
      limit.basis === 'meat-block' ? 'cure.no-meat-block' : 'cure.mass-unknown',
      null,
      null,
    );
  }

  const ppm = concentration(limit, amounts, span.low, 'low', basisG);
  const highestPpm = span.high === null ? null : concentration(limit, amounts, span.high, 'high', basisG);
  if (limit.kind === 'residual') {
    if (highestPpm !== null && !exceeds(highestPpm, limit.valuePpm)) {
      return say('pass', 'cure.residual-within', ppm, highestPpm);
    }
    return say(
      'cannot-tell',
      highestPpm === null ? unknownReason(limit, amounts) : 'cure.residual-to-be-measured',
      ppm,
      highestPpm,
    );
  }
  if (ppm !== null && exceeds(ppm, limit.valuePpm)) return say('fail', 'cure.over', ppm, highestPpm);
  if (highestPpm === null || exceeds(highestPpm, limit.valuePpm)) {
    return say('cannot-tell', unknownReason(limit, amounts), ppm, highestPpm);
  }
  return say('pass', 'cure.within', ppm, highestPpm);
}

/** The substance in the limit's own form, g. */
function spanFor(limit: CureLimit, amounts: CureAmounts): Span {
  if (limit.substance === 'accelerator') return amounts.acceleratorG;
  const { nitriteG, nitrateG } = amounts;
  const withNitrate = countsNitrate(limit.expressedAs);
  const open = nitriteG.high === null || (withNitrate && nitrateG.high === null);
  return {
    low: inLimitForm(limit.expressedAs, nitriteG.low, nitrateG.low),
    high: open ? null : inLimitForm(limit.expressedAs, nitriteG.high ?? 0, nitrateG.high ?? 0),
  };
}

function basisMass(limit: CureLimit, amounts: CureAmounts): number | null {
  const { meatBlockG, totalG, finishedG } = amounts;
  if (limit.basis === 'meat-block') return meatBlockG;
  if (limit.basis === 'total') return totalG;
  // Losses concentrate what is left, so the lighter weight gives the bound.
  return totalG === null || finishedG === null ? null : Math.min(totalG, finishedG);
}

/** On the product as a whole the lining counts too: the worse of the forcemeat alone and with its lining. */
function concentration(
  limit: CureLimit,
  amounts: CureAmounts,
  bowlG: number,
  end: 'low' | 'high',
  basisG: number,
): number | null {
  const bowl = nitritePpm(bowlG, basisG);
  if (limit.basis === 'meat-block' || limit.substance === 'accelerator' || bowl === null) return bowl;
  const liningNitriteG = amounts.liningNitriteG[end];
  if (liningNitriteG === null) return end === 'low' ? bowl : null;
  const liningG = inLimitForm(limit.expressedAs, liningNitriteG, 0);
  if (liningG === 0) return bowl;
  if (amounts.liningG === null) return end === 'low' ? bowl : null;
  const lined = nitritePpm(bowlG + liningG, limit.basis === 'finished' ? basisG : basisG + amounts.liningG);
  return lined === null ? bowl : Math.max(bowl, lined);
}

function unknownReason(limit: CureLimit, amounts: CureAmounts): LimitReason {
  if (amounts.unboundedBecause === 'strength') return 'cure.strength-unknown';
  if (amounts.unboundedBecause === 'curing-salt-amount') return 'cure.cure-amount-unknown';
  if (countsNitrate(limit.expressedAs) && amounts.nitrateG.high === null) return 'cure.nitrate-not-declared';
  return 'cure.carried-unknown';
}
