import { expect } from 'vitest';
import { FIGURES, type FigureId } from '../../content/figures/index.ts';

/** The single value of a figure. */
export function value(id: FigureId): number {
  const { value: one } = FIGURES[id];
  if (typeof one !== 'number') throw new Error(`${id} is a range.`);
  return one;
}

/** Decimals a figure is printed with: half of the last one is what rounding may hide. */
function decimals(id: FigureId): number {
  return String(value(id)).split('.')[1]?.length ?? 0;
}

/** The figure is the exact number, rounded to the decimals it is printed with. */
export function expectFigure(id: FigureId, exact: number): void {
  expect(Math.abs(value(id) - exact)).toBeLessThanOrEqual(0.5 * 10 ** -decimals(id) + 1e-9);
}
