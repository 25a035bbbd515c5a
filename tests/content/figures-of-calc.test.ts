import { newBatch } from '@larderwright/calc/batch';
import { AGAR_MELTS_C } from '@larderwright/calc/gelee';
import { type Ingredient, loadIngredients } from '@larderwright/calc/ingredients';
import { GROUND_KEEPS_DAYS } from '@larderwright/calc/seasoning';
import { describe, expect, it } from 'vitest';
import { FIGURES, type FigureId } from '../../content/figures/index.ts';

const rows = await loadIngredients();
const DAYS_PER_MONTH = 365.25 / 12;

/** Both ends of a figure. */
function ends(id: FigureId): readonly [number, number] {
  const { value } = FIGURES[id];
  return typeof value === 'number' ? [value, value] : value;
}

/*
 * Most figures that calc knows are read from its tables. These few cannot be, because calc loads its rows when they are
 * asked for, or because the page tells a range where calc reckons with one point of it: so they are held together here.
 */
describe('a figure that stands beside one of calc', () => {
  const kitchen: readonly (readonly [
    FigureId,
    row: string,
    read: (row: Ingredient) => number | null | undefined,
  ])[] = [
    ['fat-in-backfat', 'kitchen-pork-backfat', ({ fatFraction }) => fatFraction],
    ['fat-in-belly', 'kitchen-pork-belly', ({ fatFraction }) => fatFraction],
    ['fat-in-lean', 'kitchen-pork-shoulder-lean-95', ({ fatFraction }) => fatFraction],
    ['salt-of-bacon', 'kitchen-bacon-dry-cured', ({ saltFraction }) => saltFraction],
    ['salt-of-ham', 'kitchen-ham-cooked', ({ saltFraction }) => saltFraction],
    ['salt-of-bread', 'kitchen-bread-white', ({ saltFraction }) => saltFraction],
  ];

  it.each(kitchen)('%s holds what the kitchen’s own row %s says', (id, row, read) => {
    const found = rows.get(row);
    const percent = found ? (read(found) ?? Number.NaN) * 100 : Number.NaN;
    const [low, high] = ends(id);
    expect(percent).toBeGreaterThanOrEqual(low - 1e-6);
    expect(percent).toBeLessThanOrEqual(high + 1e-6);
  });

  it('holds the point that calc reckons with', () => {
    const [agarLow, agarHigh] = ends('agar-melts');
    expect(AGAR_MELTS_C).toBeGreaterThanOrEqual(agarLow);
    expect(AGAR_MELTS_C).toBeLessThanOrEqual(agarHigh);
    expect(Math.round(GROUND_KEEPS_DAYS / DAYS_PER_MONTH)).toBe(ends('spice-life')[1]);
    const { density } = newBatch({ id: 'x', at: '', zone: 'UTC' }).mould;
    expect(Number(density.text)).toBe(FIGURES['mix-density'].value);
  });
});
