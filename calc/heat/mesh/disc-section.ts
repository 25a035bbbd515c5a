import { type OutlineEdge, type Section, sectionOf, type Triangle } from './section.ts';

/** A sector of a disc or an ellipse about a centre on the plane of symmetry. */
export interface DiscMeasures {
  /** Half-axes, m: across and up. */
  readonly acrossRadius: number;
  readonly upRadius: number;
  /** Height of the centre over the base, m. */
  readonly centreY: number;
  /** Where the sector starts and how many eighths of a turn it spans: a quarter is 2, a half 4. */
  readonly startEighth: number;
  readonly eighths: number;
  /** What the straight side at the end of the sector is. Null: a plane of symmetry, or x = 0. */
  readonly endFace: 'top' | null;
}

/** A sector as `rings` rings of nearly even triangles; ring j has j pieces in each eighth. */
export function discSection(measures: DiscMeasures, rings: number): Section {
  const { acrossRadius, upRadius, centreY, startEighth, eighths, endFace } = measures;
  const x = [0];
  const y = [centreY];
  const first = [0];
  for (let j = 1; j <= rings; j++) {
    first.push(x.length);
    for (let i = 0; i <= eighths * j; i++) {
      const angle = ((startEighth + i / j) * Math.PI) / 4;
      const cosine =
        (startEighth + i / j) % 4 === 2 || (startEighth + i / j) % 4 === -2 ? 0 : Math.cos(angle);
      x.push(acrossRadius * (j / rings) * cosine);
      y.push(centreY + upRadius * (j / rings) * Math.sin(angle));
    }
  }
  const node = (i: number, j: number) => (first[j] ?? 0) + i;
  const triangles: Triangle[] = [];
  const outline: OutlineEdge[] = [];
  for (let j = 0; j < rings; j++) {
    for (let eighth = 0; eighth < eighths; eighth++) {
      for (let i = 0; i <= j; i++) {
        const inner = eighth * j + i;
        const outer = eighth * (j + 1) + i;
        triangles.push([node(inner, j), node(outer, j + 1), node(outer + 1, j + 1)]);
        if (i < j) triangles.push([node(inner, j), node(outer + 1, j + 1), node(inner + 1, j)]);
      }
    }
    if (endFace !== null)
      outline.push({ a: node(eighths * j, j), b: node(eighths * (j + 1), j + 1), face: endFace });
  }
  for (let i = 0; i < eighths * rings; i++) {
    outline.push({ a: node(i, rings), b: node(i + 1, rings), face: 'side' });
  }
  return sectionOf({ x, y, triangles, outline });
}
