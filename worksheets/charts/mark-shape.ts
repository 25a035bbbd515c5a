import type { PointMark } from './model.ts';

/** Marks of the first, second, third … probe. */
const PROBE_SHAPES = ['circle', 'square', 'triangle'] as const;
export type MarkShape = (typeof PROBE_SHAPES)[number] | 'cross' | 'diamond';

/** Excluded readings are crosses and flagged ones diamonds, whichever the probe. */
export function shapeOf(mark: PointMark, probe: number): MarkShape {
  if (mark === 'excluded') return 'cross';
  if (mark === 'flagged') return 'diamond';
  return PROBE_SHAPES[probe % PROBE_SHAPES.length] ?? 'circle';
}

const f = (value: number) => Math.round(value * 10) / 10;

/** The outline of a mark around a point; `r` is its half width, px. */
export function markPath(shape: MarkShape, x: number, y: number, r: number): string {
  switch (shape) {
    case 'circle':
      return `M${f(x - r)} ${f(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
    case 'square':
      return `M${f(x - r)} ${f(y - r)}h${2 * r}v${2 * r}h${-2 * r}Z`;
    case 'triangle':
      return `M${f(x)} ${f(y - r)}L${f(x + r)} ${f(y + r)}H${f(x - r)}Z`;
    case 'diamond':
      return `M${f(x)} ${f(y - r)}L${f(x + r)} ${f(y)}L${f(x)} ${f(y + r)}L${f(x - r)} ${f(y)}Z`;
    case 'cross':
      return `M${f(x - r)} ${f(y - r)}L${f(x + r)} ${f(y + r)}M${f(x + r)} ${f(y - r)}L${f(x - r)} ${f(y + r)}`;
  }
}
