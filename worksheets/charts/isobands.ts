import type { SectionNet } from '@larderwright/calc/cook-plan';

/** A straight piece of a line, mm. */
export type Piece = readonly [x1: number, y1: number, x2: number, y2: number];

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly t: number;
}

function* trianglesOf(net: SectionNet, tempC: Float32Array): Generator<[Corner, Corner, Corner]> {
  const corner = (node: number): Corner => ({
    x: net.xMm[node] ?? 0,
    y: net.yMm[node] ?? 0,
    t: tempC[node] ?? Number.NaN,
  });
  for (let i = 0; i + 2 < net.triangles.length; i += 3) {
    yield [
      corner(net.triangles[i] ?? 0),
      corner(net.triangles[i + 1] ?? 0),
      corner(net.triangles[i + 2] ?? 0),
    ];
  }
}

function between(a: Corner, b: Corner, t: number): Corner {
  const share = (t - a.t) / (b.t - a.t);
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y), t };
}

/** What of a polygon lies on one side of a temperature. */
function cut(polygon: readonly Corner[], t: number, above: boolean): Corner[] {
  const inside = (corner: Corner) => (above ? corner.t >= t : corner.t < t);
  return polygon.flatMap((corner, i) => {
    const next = polygon[(i + 1) % polygon.length] ?? corner;
    const here = inside(corner) ? [corner] : [];
    return inside(corner) === inside(next) ? here : [...here, between(corner, next, t)];
  });
}

/** A polygon of the cut, its corners in mm: x, y, x, y … */
export type Polygon = readonly number[];

/**
 * The cut parted by temperature: for each band the pieces of triangles that lie in it, along straight lines between
 * the nodes. Band i lies from `stepsC[i]` up to `stepsC[i + 1]`, the first and the last without an outer edge.
 *
 * @param stepsC rising; the first is the foot of the first band
 */
export function isobands(net: SectionNet, tempC: Float32Array, stepsC: readonly number[]): Polygon[][] {
  const bands: Polygon[][] = stepsC.map(() => []);
  for (const triangle of trianglesOf(net, tempC)) {
    const low = Math.min(...triangle.map(({ t }) => t));
    const high = Math.max(...triangle.map(({ t }) => t));
    for (const [band, fromC] of stepsC.entries()) {
      const toC = stepsC[band + 1] ?? Number.POSITIVE_INFINITY;
      const foot = band === 0 ? Number.NEGATIVE_INFINITY : fromC;
      if (high < foot || low >= toC) continue;
      const over = low < foot ? cut(triangle, foot, true) : [...triangle];
      const polygon = high >= toC ? cut(over, toC, false) : over;
      if (polygon.length > 2) bands[band]?.push(polygon.flatMap(({ x, y }) => [x, y]));
    }
  }
  return bands;
}

/** The line of one temperature through the cut, in pieces. */
export function isoline(net: SectionNet, tempC: Float32Array, atC: number): Piece[] {
  const pieces: Piece[] = [];
  for (const [a, b, c] of trianglesOf(net, tempC)) {
    const ends = (
      [
        [a, b],
        [b, c],
        [c, a],
      ] as const
    )
      .filter(([p, q]) => p.t < atC !== q.t < atC)
      .map(([p, q]) => between(p, q, atC));
    const [from, to] = ends;
    if (from && to) pieces.push([from.x, from.y, to.x, to.y]);
  }
  return pieces;
}

/** The outline of the half cut without its plane of symmetry: edges that belong to one triangle only. */
export function outlinePieces(net: SectionNet): Piece[] {
  const seen = new Map<string, [number, number]>();
  for (let i = 0; i + 2 < net.triangles.length; i += 3) {
    for (const [p, q] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      const [a, b] = [net.triangles[i + p] ?? 0, net.triangles[i + q] ?? 0];
      const key = a < b ? `${a} ${b}` : `${b} ${a}`;
      if (seen.has(key)) seen.delete(key);
      else seen.set(key, [a, b]);
    }
  }
  const on = (node: number) => Math.abs(net.xMm[node] ?? 0) < 1e-6;
  return [...seen.values()]
    .filter(([a, b]) => !(on(a) && on(b)))
    .map(([a, b]) => [net.xMm[a] ?? 0, net.yMm[a] ?? 0, net.xMm[b] ?? 0, net.yMm[b] ?? 0]);
}
