/** One point of a temperature history, minutes and °C. */
export interface GrowthPoint {
  readonly timeMin: number;
  readonly tempC: number;
}

/** Nodes and weights of Gauss and Legendre on −1 to 1, five points: exact to the ninth power. */
const NODES: readonly (readonly [node: number, weight: number])[] = [
  [0, 128 / 225],
  ...[-1, 1].flatMap((side): [number, number][] => [
    [(side * Math.sqrt(5 - 2 * Math.sqrt(10 / 7))) / 3, (322 + 13 * Math.sqrt(70)) / 900],
    [(side * Math.sqrt(5 + 2 * Math.sqrt(10 / 7))) / 3, (322 - 13 * Math.sqrt(70)) / 900],
  ]),
];
/** Widest piece of temperature integrated at once, °C. */
const PIECE_C = 5;

/** Mean rate along a straight line between two temperatures, cut where the rate has a corner. */
function meanRate(fromC: number, toC: number, rate: (tempC: number) => number, corners: readonly number[]) {
  if (fromC === toC) return rate(fromC);
  const [low, high] = [Math.min(fromC, toC), Math.max(fromC, toC)];
  const cuts = [low, ...corners.filter((corner) => corner > low && corner < high), high].sort(
    (a, b) => a - b,
  );
  let sum = 0;
  for (const [index, end] of cuts.entries()) {
    const begin = cuts[index - 1];
    if (begin === undefined) continue;
    const pieces = Math.max(1, Math.ceil((end - begin) / PIECE_C));
    const half = (end - begin) / pieces / 2;
    for (let piece = 0; piece < pieces; piece++) {
      const middle = begin + (2 * piece + 1) * half;
      sum += half * NODES.reduce((total, [node, weight]) => total + weight * rate(middle + half * node), 0);
    }
  }
  return sum / (high - low);
}

/**
 * ∫ μ(T) dt along straight lines between points, in natural logarithms. Averaging the temperature first would come out
 * too small, for the rate bends upward.
 *
 * @param points in the order of time; fewer than two give 0
 * @param ratePerH growth rate at a temperature, 1/h
 * @param corners temperatures at which the rate has a corner: its two ends
 */
export function rateIntegral(
  points: readonly GrowthPoint[],
  ratePerH: (tempC: number) => number,
  corners: readonly number[] = [],
): number {
  let sum = 0;
  let before: GrowthPoint | undefined;
  for (const point of points) {
    if (before) {
      const hours = (point.timeMin - before.timeMin) / 60;
      sum += hours * meanRate(before.tempC, point.tempC, ratePerH, corners);
    }
    before = point;
  }
  return sum;
}
