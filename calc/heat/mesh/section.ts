/** Which way a surface looks. `end` closes a loaf lengthwise. */
export type Face = 'bottom' | 'side' | 'top' | 'end';

/** A straight piece of the section's outline, between two nodes. */
export interface OutlineEdge {
  readonly a: number;
  readonly b: number;
  readonly face: Face;
}

/** Corners of a triangle, as node numbers. */
export type Triangle = readonly [number, number, number];

/**
 * Half of a plane section as a net of nodes, mirrored about x = 0. Each pair of nodes that touch share a
 * weight, the width of the path between them over its length; each node holds an area. That is the
 * linear finite-element form with its mass lumped, of second order on any shape.
 */
export interface Section {
  /** Node co-ordinates, m: across from the plane of symmetry, and up from the base. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly area: Float64Array;
  readonly edgeA: Int32Array;
  readonly edgeB: Int32Array;
  readonly edgeWeight: Float64Array;
  readonly outline: readonly OutlineEdge[];
  readonly triangles: readonly Triangle[];
}

export interface SectionParts {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly triangles: readonly Triangle[];
  readonly outline: readonly OutlineEdge[];
}

/** Weights below this share of the largest are the diagonals of rectangles and carry nothing. */
const NOTHING = 1e-12;

/** Builds the net: each triangle gives a third of its area to its corners, half a cotangent to its sides. */
export function sectionOf({ x, y, triangles, outline }: SectionParts): Section {
  const area = new Float64Array(x.length);
  const weights = new Map<number, number>();
  for (const triangle of triangles) {
    for (const turn of [0, 1, 2] as const) {
      const a = triangle[turn];
      const b = triangle[(turn + 1) % 3] as number;
      const apex = triangle[(turn + 2) % 3] as number;
      const [ax, ay] = [at(x, a) - at(x, apex), at(y, a) - at(y, apex)];
      const [bx, by] = [at(x, b) - at(x, apex), at(y, b) - at(y, apex)];
      const twice = Math.abs(ax * by - ay * bx);
      area[apex] = at(area, apex) + twice / 6;
      const key = Math.min(a, b) * x.length + Math.max(a, b);
      weights.set(key, (weights.get(key) ?? 0) + (ax * bx + ay * by) / twice / 2);
    }
  }
  const largest = Math.max(...weights.values());
  const edges = [...weights].filter(([, weight]) => Math.abs(weight) > NOTHING * largest);
  return {
    x: Float64Array.from(x),
    y: Float64Array.from(y),
    area,
    edgeA: Int32Array.from(edges, ([key]) => Math.floor(key / x.length)),
    edgeB: Int32Array.from(edges, ([key]) => key % x.length),
    edgeWeight: Float64Array.from(edges, ([, weight]) => weight),
    outline,
    triangles,
  };
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}
