import type { VerdictState } from '../findings/index.ts';
import { type CoolLeg, exactC } from './cool-leg.ts';
import { type CoolingCurve, firstAtOrBelow, lastAbove, spanOf } from './cooling-curve.ts';

/** Limits are inclusive: a hair of arithmetic over them is not a miss, min. */
const TIME_EPSILON = 6e-5;

export interface CurveLeg {
  readonly legId: string;
  /** Last moment above the end less first moment at or below the start, min; null while the curve ends above. */
  readonly elapsedMin: number | null;
  readonly state: VerdictState;
}

export interface CurveJudgement {
  readonly state: VerdictState;
  readonly legs: readonly CurveLeg[];
}

function judgeLeg(curve: CoolingCurve, leg: CoolLeg): CurveLeg {
  const { startMin, endMin } = spanOf(curve);
  const beginMin = leg.from === null ? startMin : firstAtOrBelow(curve, exactC(leg.from));
  if (beginMin === null) return { legId: leg.id, elapsedMin: null, state: 'cannot-tell' };
  const finishMin = lastAbove(curve, exactC(leg.to));
  const inside = (minutes: number) =>
    leg.strict ? minutes < leg.maxMin : minutes <= leg.maxMin + TIME_EPSILON;
  if (finishMin === null)
    return { legId: leg.id, elapsedMin: null, state: inside(endMin - beginMin) ? 'cannot-tell' : 'fail' };
  const elapsedMin = Math.max(0, finishMin - beginMin);
  return { legId: leg.id, elapsedMin, state: inside(elapsedMin) ? 'pass' : 'fail' };
}

/**
 * Judge a core that is known at every moment, as a simulation or a straight line through readings draws it. Its time
 * zero is the end of cooking. Fails when any leg fails; a curve that ends too warm to tell is "cannot tell".
 * A log of readings is judged by `judgeCooling`, for nobody saw what lay between them.
 */
export function judgeCurve(curve: CoolingCurve, legs: readonly CoolLeg[]): CurveJudgement {
  const judged = legs.map((leg) => judgeLeg(curve, leg));
  const states = judged.map(({ state }) => state);
  const state = states.includes('fail')
    ? 'fail'
    : states.includes('pass') && !states.includes('cannot-tell')
      ? 'pass'
      : 'cannot-tell';
  return { state, legs: judged };
}
