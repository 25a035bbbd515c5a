import { type LethalityLine, lethalRate, zAt } from './lethal-rate.ts';

/** One point of a temperature history, minutes and °C. */
export interface CurvePoint {
  readonly timeMin: number;
  readonly tempC: number;
}

/**
 * `exact`: the integral along straight lines. `trapezoid`: the mean of the two rates, which over-states a rise or fall.
 * `fail-safe`: the lower of the two rates.
 */
export type Integration = 'exact' | 'trapezoid' | 'fail-safe';

export interface ValueOptions {
  readonly method?: Integration;
  /** Below this nothing is counted, °C. */
  readonly floorC?: number;
}

/** Integral of the rate along a straight line on one side of Tref, min at Tref: t × L × (e^x − 1) ÷ x, x = ln 10 × rise ÷ z. */
function exactPiece(fromC: number, toC: number, minutes: number, line: LethalityLine): number {
  const zC = zAt(line, (fromC + toC) / 2);
  const x = (Math.LN10 * (toC - fromC)) / zC;
  const mean = x === 0 ? 1 : Math.expm1(x) / x;
  return minutes * 10 ** ((fromC - line.refC) / zC) * mean;
}

/** Exact integral of one step, cut where the line bends and at the floor. */
function exactStep(from: CurvePoint, to: CurvePoint, line: LethalityLine, floorC: number): number {
  const minutes = to.timeMin - from.timeMin;
  const rise = to.tempC - from.tempC;
  const inside = [line.refC, floorC].filter((cut) => (cut - from.tempC) * (cut - to.tempC) < 0);
  const cuts = [from.tempC, ...inside.toSorted((a, b) => (a - b) * Math.sign(rise)), to.tempC];
  let value = 0;
  for (const [index, toC] of cuts.entries()) {
    const fromC = cuts[index - 1];
    if (fromC === undefined || (fromC + toC) / 2 < floorC) continue;
    const share = rise === 0 ? 1 : (toC - fromC) / rise;
    value += exactPiece(fromC, toC, minutes * share, line);
  }
  return value;
}

/**
 * Pasteurisation value of a temperature history: minutes at Tref that it is worth on one line of resistance.
 * Always print it with its Tref and z. Information beside a verdict, never a verdict.
 *
 * @param points in the order of time; fewer than two give 0
 * @example pasteurisationValue([{ timeMin: 0, tempC: 70 }, { timeMin: 2, tempC: 70 }], { refC: 70, zC: 7.5 }) // 2
 */
export function pasteurisationValue(
  points: readonly CurvePoint[],
  line: LethalityLine,
  { method = 'exact', floorC = Number.NEGATIVE_INFINITY }: ValueOptions = {},
): number {
  const rate = ({ tempC }: CurvePoint) => (tempC < floorC ? 0 : lethalRate(tempC, line));
  let value = 0;
  let before: CurvePoint | undefined;
  for (const point of points) {
    if (before) {
      const minutes = point.timeMin - before.timeMin;
      if (method === 'exact') value += exactStep(before, point, line, floorC);
      else if (method === 'trapezoid') value += (minutes * (rate(before) + rate(point))) / 2;
      else value += minutes * Math.min(rate(before), rate(point));
    }
    before = point;
  }
  return value;
}
