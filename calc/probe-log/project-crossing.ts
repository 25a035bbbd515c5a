/** Fewest readings, and least minutes they must span, to draw a line into the future from. House rule. */
export const PROJECTION = { readings: 3, spanMin: 20 } as const;

const MS_PER_MIN = 60_000;
/** Closer to the medium than this a reading's rounding rules its logarithm. */
const CLOSEST_C = 0.3;

interface Placed {
  readonly atMs: number;
  readonly tempC: number;
}

/** The last readings that are many enough and span long enough; none when the log is too short. */
function tail(readings: readonly Placed[]): readonly Placed[] {
  const last = readings.at(-1);
  if (!last) return [];
  const spanMs = PROJECTION.spanMin * MS_PER_MIN;
  const start = readings.findLastIndex(
    ({ atMs }, index) => last.atMs - atMs >= spanMs && readings.length - index >= PROJECTION.readings,
  );
  return start === -1 ? [] : readings.slice(start);
}

/**
 * When a core will reach a temperature if it goes on toward its medium as in its last readings: the line of
 * ln |T − medium| on time, fitted to at least three readings over at least 20 minutes. A guess to act on early,
 * never a verdict. A change of medium inside the readings spoils it.
 *
 * @param readings sound readings in the order of time
 * @returns ms since 1970 UTC; null where the readings do not show it, or the target lies beyond the medium
 */
export function projectCrossingMs(
  readings: readonly Placed[],
  mediumC: number,
  targetC: number,
): number | null {
  const used = tail(readings);
  const last = used.at(-1);
  if (!last) return null;
  const side = Math.sign(last.tempC - mediumC);
  const far = used.every(({ tempC }) => (tempC - mediumC) * side >= CLOSEST_C);
  const ahead = (last.tempC - targetC) * side > 0 && (targetC - mediumC) * side > 0;
  if (side === 0 || !far || !ahead) return null;
  const points = used.map(({ atMs, tempC }) => ({
    x: (atMs - last.atMs) / MS_PER_MIN,
    y: Math.log((tempC - mediumC) * side),
  }));
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / points.length;
  const spread = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / spread;
  if (!(slope < 0)) return null;
  const minutes = (Math.log((targetC - mediumC) * side) - meanY) / slope + meanX;
  return minutes > 0 && Number.isFinite(minutes) ? last.atMs + minutes * MS_PER_MIN : null;
}
