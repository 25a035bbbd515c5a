import { fatLiningG, fillOf, liningSheetMm, liningVolumeMl, mouldGeometry } from '@larderwright/calc/mould';
import { describe, expect, test } from 'vitest';

function box(length: number, width: number, depth: number) {
  const geometry = mouldGeometry('rectangular', { length, width, depth });
  if (!geometry) throw new Error('no geometry');
  return geometry;
}

const terrine = {
  geometry: box(290, 95, 75),
  waterFillMl: null,
  headspaceMm: 10,
  liningThicknessMm: 0,
  densityGPerMl: 1.04,
};

describe('fill of a mould', () => {
  test('290 × 95 × 75 mm with 10 mm headspace at 1.04 g/mL: 1.791 L and 1,862 g (derived)', () => {
    const fill = fillOf(terrine);
    expect(fill?.fillMl).toBeCloseTo(1790.75, 9);
    expect(fill?.fillG).toBeCloseTo(1862.4, 1);
  });

  test('the brim volume is not the fill: a litre of mould is not a kilogram', () => {
    const fill = fillOf(terrine);
    expect(fill?.brimMl).toBeCloseTo(2066.25, 9);
    expect(fill?.fillG).toBeLessThan(fill?.brimMl ?? 0);
  });

  test('a parfait bar 300 × 80 × 80 with 10 mm headspace at 1.00 takes 1,680 g (derived)', () => {
    expect(fillOf({ ...terrine, geometry: box(300, 80, 80), densityGPerMl: 1 })?.fillG).toBeCloseTo(1680, 9);
  });

  test('a bar 300 × 60 × 60 with 5 mm headspace at 0.98 takes 970 g (derived)', () => {
    const fill = fillOf({ ...terrine, geometry: box(300, 60, 60), headspaceMm: 5, densityGPerMl: 0.98 });
    expect(fill?.fillG).toBeCloseTo(970.2, 9);
  });

  test('water outranks the measures and scales the fill', () => {
    const fill = fillOf({ ...terrine, waterFillMl: 1950 });
    expect(fill?.brimMl).toBe(1950);
    expect(fill?.fillMl).toBeCloseTo((1790.75 * 1950) / 2066.25, 9);
  });

  test('2 mm of fat on all faces of 290 × 95 × 75 mm takes about 0.23 L (derived)', () => {
    expect(liningVolumeMl(terrine.geometry, 75, 2)).toBeCloseTo(225.7, 9);
    const fill = fillOf({ ...terrine, liningThicknessMm: 2 });
    // To 65 mm: bottom and top 27,550 mm² each, walls 770 × 65 mm.
    expect(fill?.liningMl).toBeCloseTo(((2 * 27550 + 770 * 65) * 2) / 1000, 9);
    expect(fill?.fillMl).toBeCloseTo(1790.75 - (fill?.liningMl ?? 0), 9);
  });

  test('fat sheet weighs area × thickness × 0.93 (common practice, no source)', () => {
    expect(fatLiningG(terrine.geometry, 2)).toBeCloseTo(225.7 * 0.93, 6);
  });

  test('no depth left, no room left or an unusable number gives null', () => {
    expect(fillOf({ ...terrine, headspaceMm: 75 })).toBeNull();
    expect(fillOf({ ...terrine, headspaceMm: 90 })).toBeNull();
    expect(fillOf({ ...terrine, liningThicknessMm: 40 })).toBeNull();
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(fillOf({ ...terrine, headspaceMm: bad })).toBeNull();
      expect(fillOf({ ...terrine, liningThicknessMm: bad })).toBeNull();
      expect(fillOf({ ...terrine, densityGPerMl: bad })).toBeNull();
      expect(fillOf({ ...terrine, waterFillMl: bad })).toBeNull();
    }
    expect(fillOf({ ...terrine, densityGPerMl: 0 })).toBeNull();
  });
});

describe('sheet to cut', () => {
  test('fat: width W + 2H + W + 40, length L + 2H + 40 (common practice, no source)', () => {
    expect(liningSheetMm('fat', terrine.geometry)).toEqual({ acrossMm: 380, alongMm: 480 });
  });

  test('film hangs 100 mm over on every side (common practice, no source)', () => {
    expect(liningSheetMm('film', terrine.geometry)).toEqual({ acrossMm: 445, alongMm: 640 });
  });

  test('parchment is one strip with tabs of 40 mm to lift by (common practice, no source)', () => {
    expect(liningSheetMm('parchment', terrine.geometry)).toEqual({ acrossMm: 325, alongMm: 290 });
  });

  test('leaves are laid, not cut to a sheet', () => {
    expect(liningSheetMm('leaf', terrine.geometry)).toBeNull();
    expect(liningSheetMm('none', terrine.geometry)).toBeNull();
  });
});
