/** Piecewise linear between points that rise in x; null outside them. */
export function interpolate(points: readonly (readonly [x: number, y: number])[], x: number): number | null {
  if (!Number.isFinite(x)) return null;
  for (const [index, [x1, y1]] of points.entries()) {
    if (x === x1) return y1;
    const next = points[index + 1];
    if (next === undefined || x < x1) return null;
    const [x2, y2] = next;
    if (x < x2) return y1 + ((y2 - y1) * (x - x1)) / (x2 - x1);
  }
  return null;
}
