/** One point of a curve, minutes since the end of cooking and °C. */
export interface CoolPoint {
  readonly timeMin: number;
  readonly tempC: number;
}

/** A core known at every moment: straight lines between points, or Newton's fall toward the air. */
export type CoolingCurve =
  | { readonly kind: 'lines'; readonly points: readonly CoolPoint[] }
  | {
      readonly kind: 'newton';
      readonly startC: number;
      readonly airC: number;
      readonly ratePerMin: number;
      readonly endMin: number;
    };

/** Room for the last digit of a converted temperature. */
const TEMP_EPSILON = 1e-9;

/** Moment at which a line between two points has a temperature. */
export function crossingMin(a: CoolPoint, b: CoolPoint, tempC: number): number {
  return a.timeMin + ((tempC - a.tempC) / (b.tempC - a.tempC)) * (b.timeMin - a.timeMin);
}

function newtonMin(curve: Extract<CoolingCurve, { kind: 'newton' }>, tempC: number): number | null {
  if (curve.startC <= tempC + TEMP_EPSILON) return 0;
  if (tempC <= curve.airC) return null;
  const minutes = Math.log((curve.startC - curve.airC) / (tempC - curve.airC)) / curve.ratePerMin;
  return minutes <= curve.endMin ? minutes : null;
}

/** First moment at or below a temperature; null when the curve never gets there. */
export function firstAtOrBelow(curve: CoolingCurve, tempC: number): number | null {
  if (curve.kind === 'newton') return newtonMin(curve, tempC);
  let before: CoolPoint | undefined;
  for (const point of curve.points) {
    if (point.tempC <= tempC + TEMP_EPSILON)
      return before && before.tempC > tempC ? crossingMin(before, point, tempC) : point.timeMin;
    before = point;
  }
  return null;
}

/** Last moment above a temperature; null when the curve ends above it. A curve never above gives its start. */
export function lastAbove(curve: CoolingCurve, tempC: number): number | null {
  if (curve.kind === 'newton') return newtonMin(curve, tempC);
  const last = curve.points.at(-1);
  if (!last || last.tempC > tempC + TEMP_EPSILON) return null;
  for (let index = curve.points.length - 1; index > 0; index--) {
    const [before, here] = [curve.points[index - 1], curve.points[index]];
    if (before && here && before.tempC > tempC + TEMP_EPSILON) return crossingMin(before, here, tempC);
  }
  return curve.points.at(0)?.timeMin ?? null;
}

/** First and last moment of a curve. */
export function spanOf(curve: CoolingCurve): { startMin: number; endMin: number } {
  if (curve.kind === 'newton') return { startMin: 0, endMin: curve.endMin };
  return { startMin: curve.points.at(0)?.timeMin ?? 0, endMin: curve.points.at(-1)?.timeMin ?? 0 };
}

/** Time a curve spends above one temperature and at or below another, min, in as many pieces as there are. */
export function dwellMin(curve: CoolingCurve, aboveC: number, atOrBelowC: number): number {
  if (curve.kind === 'newton') {
    const { endMin } = curve;
    return (firstAtOrBelow(curve, aboveC) ?? endMin) - (firstAtOrBelow(curve, atOrBelowC) ?? endMin);
  }
  let minutes = 0;
  for (const [index, here] of curve.points.entries()) {
    const before = curve.points[index - 1];
    if (!before) continue;
    const [low, high] = [Math.min(before.tempC, here.tempC), Math.max(before.tempC, here.tempC)];
    const inside = Math.min(high, atOrBelowC) - Math.max(low, aboveC);
    const span = here.timeMin - before.timeMin;
    if (high > low) minutes += (span * Math.max(0, inside)) / (high - low);
    else if (low > aboveC && low <= atOrBelowC) minutes += span;
  }
  return minutes;
}

/** Whether a curve never rises. */
export function fallsThroughout(curve: CoolingCurve): boolean {
  if (curve.kind === 'newton') return curve.startC >= curve.airC;
  return curve.points.every(
    ({ tempC }, index) => tempC <= (curve.points[index - 1]?.tempC ?? tempC) + TEMP_EPSILON,
  );
}
