/** Layers across one way of a body: where they stand, what each holds, and how heat passes between them. */
export interface Lengthwise {
  readonly place: Float64Array;
  /** Extent of each layer, m. */
  readonly thickness: Float64Array;
  /** Conductance per conductivity and area between layers a and b at `a × layers + b`, 1/m. Symmetric. */
  readonly weight: Float64Array;
  /** Whether only neighbours meet. */
  readonly banded: boolean;
}

/** Even layers of `cells` cells over `reach` m. */
export function evenLayers(reach: number, cells: number): Lengthwise {
  const layers = cells + 1;
  const gap = reach / cells;
  const weight = new Float64Array(layers * layers);
  for (let layer = 1; layer < layers; layer++) {
    weight[layer * layers + layer - 1] = 1 / gap;
    weight[(layer - 1) * layers + layer] = 1 / gap;
  }
  return {
    place: Float64Array.from({ length: layers }, (_, layer) => layer * gap),
    thickness: Float64Array.from({ length: layers }, (_, layer) =>
      layer === 0 || layer === cells ? gap / 2 : gap,
    ),
    weight,
    banded: true,
  };
}

/**
 * Layers from the plane of symmetry to the end, `reach` m away, at the Gauss–Lobatto points of an even
 * polynomial of degree `2 × cells`: few of them follow a smooth field closely. Not for a freezing front.
 * Source: `canuto-2006-spectral`.
 */
export function smoothLayers(reach: number, cells: number): Lengthwise {
  const degree = 2 * cells;
  const points = lobattoPoints(degree);
  const legendre = points.map((x) => legendreAt(degree, x).value);
  const masses = legendre.map((value) => 2 / (degree * (degree + 1) * value * value));
  /** Slope at point a of the polynomial that is one at point b and nil at the others. */
  const slope = (a: number, b: number): number => {
    if (a !== b) return at(legendre, a) / (at(legendre, b) * (at(points, a) - at(points, b)));
    const corner = (degree * (degree + 1)) / 4;
    return a === 0 ? -corner : a === degree ? corner : 0;
  };
  const stiffness = (a: number, b: number): number =>
    masses.reduce((sum, mass, q) => sum + mass * slope(q, a) * slope(q, b), 0);
  const layers = cells + 1;
  const weight = new Float64Array(layers * layers);
  for (let a = 0; a < layers; a++) {
    for (let b = 0; b < a; b++) {
      // An even field is the same on both sides of the plane of symmetry.
      const folded =
        b === 0
          ? stiffness(cells + a, cells)
          : stiffness(cells + a, cells + b) + stiffness(cells + a, cells - b);
      weight[a * layers + b] = -folded / reach;
      weight[b * layers + a] = -folded / reach;
    }
  }
  const half = points.slice(cells);
  return {
    place: Float64Array.from(half, (x) => x * reach),
    thickness: Float64Array.from(masses.slice(cells), (mass, a) => (a === 0 ? mass / 2 : mass) * reach),
    weight,
    banded: false,
  };
}

/** Where the polynomial is level, and both ends, in −1…1. */
function lobattoPoints(degree: number): number[] {
  return Array.from({ length: degree + 1 }, (_, k) => {
    if (2 * k === degree) return 0;
    let x = -Math.cos((Math.PI * k) / degree);
    if (k === 0 || k === degree) return x;
    for (let round = 0; round < 30; round++) {
      const { value, slope } = legendreAt(degree, x);
      const bend = (2 * x * slope - degree * (degree + 1) * value) / (1 - x * x);
      x -= slope / bend;
    }
    return x;
  });
}

/** Legendre polynomial of a degree, and its slope inside −1…1. */
function legendreAt(degree: number, x: number) {
  let [before, value] = [1, x];
  for (let n = 2; n <= degree; n++) {
    [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
  }
  return { value, slope: (degree * (before - x * value)) / (1 - x * x) };
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}
