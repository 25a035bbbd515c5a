import type { CurvePoint } from './model.ts';
import type { Scale } from './scale.ts';

/** Longest gap between two readings that a line may cross, ms: beyond it nobody knows what the core did. */
const LONGEST_BRIDGE_MS = 60 * 60_000;

/** Readings that carry the line, in order of time. Excluded ones are drawn as marks only. */
export function tracePoints(points: readonly CurvePoint[]): CurvePoint[] {
  return points
    .filter(
      (point) => point.mark !== 'excluded' && Number.isFinite(point.atMs) && Number.isFinite(point.tempC),
    )
    .sort((a, b) => a.atMs - b.atMs);
}

/** Ordered readings cut into stretches without a gap. */
export function stretches(points: readonly CurvePoint[], bridgeMs = LONGEST_BRIDGE_MS): CurvePoint[][] {
  const parts: CurvePoint[][] = [];
  let part: CurvePoint[] = [];
  for (const point of points) {
    const last = part.at(-1);
    if (last && point.atMs - last.atMs > bridgeMs) {
      parts.push(part);
      part = [];
    }
    part.push(point);
  }
  if (part.length > 0) parts.push(part);
  return parts;
}

/**
 * A long log thinned for drawing: of each column of the picture the first, lowest, highest and last
 * reading stay, so that no peak or dip is lost. Short logs come back whole.
 */
export function thinned(points: readonly CurvePoint[], columns: number): CurvePoint[] {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || points.length <= columns * 4 || last.atMs <= first.atMs) return [...points];
  const columnMs = (last.atMs - first.atMs) / columns;
  const kept: CurvePoint[] = [];
  let column: CurvePoint[] = [];
  let at = 0;
  const close = () => {
    const head = column[0];
    const tail = column.at(-1);
    if (!head || !tail) return;
    let low = head;
    let high = head;
    for (const point of column) {
      if (point.tempC < low.tempC) low = point;
      if (point.tempC > high.tempC) high = point;
    }
    kept.push(...[...new Set([head, low, high, tail])].sort((a, b) => a.atMs - b.atMs));
    column = [];
  };
  for (const point of points) {
    const here = Math.min(columns - 1, Math.floor((point.atMs - first.atMs) / columnMs));
    if (here !== at) {
      close();
      at = here;
    }
    column.push(point);
  }
  close();
  return kept;
}

const place = (value: number) => Math.round(value * 10) / 10;

/** The `d` of a line through points. Empty for fewer than two. */
export function linePath(points: readonly { x: number; y: number }[]): string {
  if (points.length < 2) return '';
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${place(x)} ${place(y)}`).join('');
}

/** Lines of one series: solid where readings follow each other, and the gaps apart, to be drawn dotted. */
export function seriesPaths(
  points: readonly CurvePoint[],
  x: Scale,
  y: Scale,
  columns: number,
): { line: string; gaps: string } {
  const parts = stretches(tracePoints(points));
  const put = (point: CurvePoint) => ({ x: x(point.atMs), y: y(point.tempC) });
  const line = parts.map((part) => linePath(thinned(part, columns).map(put))).join('');
  const gaps = parts
    .slice(1)
    .map((part, i) => {
      const before = parts[i]?.at(-1);
      const after = part[0];
      return before && after ? linePath([put(before), put(after)]) : '';
    })
    .join('');
  return { line, gaps };
}

/** Where a curve stands at a moment along straight lines, °C; null outside its readings. */
export function tempAt(points: readonly CurvePoint[], atMs: number): number | null {
  const trace = tracePoints(points);
  const after = trace.findIndex((point) => point.atMs >= atMs);
  const b = trace[after];
  if (!b) return null;
  const a = trace[after - 1];
  if (b.atMs === atMs) return b.tempC;
  if (!a) return null;
  return a.tempC + ((b.tempC - a.tempC) * (atMs - a.atMs)) / (b.atMs - a.atMs);
}
