import type { HeatRun } from '../heat/index.ts';

/** Minutes between the pictures that a spot is followed by. */
export const FOLLOW_EVERY_MIN = 5;

type Followed = Pick<HeatRun, 'timesMin' | 'coreC' | 'coreHeightMm' | 'pictures' | 'network'>;

/**
 * The spot that is coldest when the heat ends, followed through, °C at the times of the run: up to then the coldest
 * spot of the middle line, from then on that very spot, read off the pictures and along straight lines between them,
 * which clips its peak a little. (The coldest spot itself moves to the surface as soon as the mould stands in the cold.)
 *
 * @param run with pictures every `FOLLOW_EVERY_MIN` or so
 */
export function followedCore(run: Followed, heatEndMin: number): Float64Array {
  const { timesMin, coreC, coreHeightMm, pictures } = run;
  let last = 0;
  for (const [i, timeMin] of timesMin.entries()) if (timeMin <= heatEndMin + 1e-9) last = i;
  const heightM = (coreHeightMm[last] ?? 0) / 1000;
  const seen = pictures
    .map(({ timeMin, tempC }) => ({ timeMin, tempC: onAxis(run, tempC, heightM) }))
    .sort((a, b) => a.timeMin - b.timeMin);
  const read = lineThrough(seen);
  // The pictures are of one net, the curve is blended of two: they meet where the heat ends.
  const apart = (coreC[last] ?? 0) - read(timesMin[last] ?? 0);
  return coreC.map((tempC, i) => (i <= last ? tempC : read(timesMin[i] ?? 0) + apart));
}

/** Temperature at a height of the upright middle line, along straight lines between its nodes. */
function onAxis({ network }: Followed, tempC: Float32Array, heightM: number): number {
  const { axisNodes, axisHeights } = network.solid;
  let above = 1;
  while (above < axisHeights.length - 1 && (axisHeights[above] ?? 0) < heightM) above++;
  const [low = 0, high = 0] = [axisHeights[above - 1], axisHeights[above]];
  const share = high > low ? Math.min(1, Math.max(0, (heightM - low) / (high - low))) : 0;
  const at = (place: number) => tempC[axisNodes[place] ?? 0] ?? Number.NaN;
  return at(above - 1) + share * (at(above) - at(above - 1));
}

/** Reads rising times off points along straight lines; the ends are held. */
function lineThrough(points: readonly { readonly timeMin: number; readonly tempC: number }[]) {
  let next = 1;
  return (timeMin: number): number => {
    if ((points[next - 1]?.timeMin ?? 0) > timeMin) next = 1;
    while (next < points.length - 1 && (points[next]?.timeMin ?? 0) < timeMin) next++;
    const [a, b] = [points[next - 1], points[next]];
    if (a === undefined) return Number.NaN;
    if (b === undefined || b.timeMin <= a.timeMin) return (b ?? a).tempC;
    const share = Math.min(1, Math.max(0, (timeMin - a.timeMin) / (b.timeMin - a.timeMin)));
    return a.tempC + share * (b.tempC - a.tempC);
  };
}
