import { type OutlineEdge, type Section, sectionOf, type Triangle } from './section.ts';

export interface TrapezoidMeasures {
  /** Full inside widths, m. */
  readonly bottomWidth: number;
  readonly topWidth: number;
  readonly depth: number;
}

/**
 * Half of an upright trapezoid (a rectangle when both widths agree) as `across` × `up` cells.
 * Node `i + j (across + 1)` is column i from the middle, row j from the base.
 */
export function trapezoidSection(
  { bottomWidth, topWidth, depth }: TrapezoidMeasures,
  across: number,
  up: number,
): Section {
  const x: number[] = [];
  const y: number[] = [];
  for (let j = 0; j <= up; j++) {
    const halfWidth = (bottomWidth + ((topWidth - bottomWidth) * j) / up) / 2;
    for (let i = 0; i <= across; i++) {
      x.push((halfWidth * i) / across);
      y.push((depth * j) / up);
    }
  }
  const node = (i: number, j: number) => i + j * (across + 1);
  const triangles: Triangle[] = [];
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const [a, b, c, d] = [node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)];
      // The shorter diagonal keeps every angle opposite an edge from being blunt.
      if (topWidth >= bottomWidth) triangles.push([a, b, d], [b, c, d]);
      else triangles.push([a, b, c], [a, c, d]);
    }
  }
  const outline: OutlineEdge[] = [];
  for (let i = 0; i < across; i++) {
    outline.push({ a: node(i, 0), b: node(i + 1, 0), face: 'bottom' });
    outline.push({ a: node(i, up), b: node(i + 1, up), face: 'top' });
  }
  for (let j = 0; j < up; j++) outline.push({ a: node(across, j), b: node(across, j + 1), face: 'side' });
  return sectionOf({ x, y, triangles, outline });
}

/**
 * Half of a triangle standing on its point, flat side up, as rows of right-angled cells: a roof mould
 * as it is filled.
 */
export function roofSection(topWidth: number, depth: number, rows: number): Section {
  const x: number[] = [];
  const y: number[] = [];
  const node = (i: number, j: number) => (j * (j + 1)) / 2 + i;
  for (let j = 0; j <= rows; j++) {
    for (let i = 0; i <= j; i++) {
      x.push((topWidth / 2) * (i / rows));
      y.push(depth * (j / rows));
    }
  }
  const triangles: Triangle[] = [];
  const outline: OutlineEdge[] = [];
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i <= j; i++) {
      triangles.push([node(i, j), node(i, j + 1), node(i + 1, j + 1)]);
      if (i < j) triangles.push([node(i, j), node(i + 1, j), node(i + 1, j + 1)]);
    }
    outline.push({ a: node(j, j), b: node(j + 1, j + 1), face: 'side' });
    outline.push({ a: node(j, rows), b: node(j + 1, rows), face: 'top' });
  }
  return sectionOf({ x, y, triangles, outline });
}
