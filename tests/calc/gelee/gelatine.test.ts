import {
  bloomLinearG,
  bloomSquareRootG,
  convertBloom,
  gPerLOfOzPerGallon,
  jellyUnderCrustMl,
  SHEETS,
  STOCK_RATIOS,
  sheetOf,
  sheetsFor,
  weakeningOf,
} from '@larderwright/calc/gelee';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('gelatine of another bloom', () => {
  it('10 g of 240 by 200, linear: 12.0 g (published: a gelatine supplier)', () => {
    expect(bloomLinearG(10, 240, 200)).toBeCloseTo(12, 2);
  });

  it('240 to 60, square root: twice as much; the linear rule says four times (published: an unofficial table)', () => {
    expect(bloomSquareRootG(1, 240, 60)).toBeCloseTo(2, 3);
    expect(bloomLinearG(1, 240, 60)).toBeCloseTo(4, 3);
  });

  it('250 to 200: 1.118 by the root, 1.25 by the product, and the difference is told (derived)', () => {
    const both = convertBloom(1, 250, 200);
    expect(both?.squareRootG).toBeCloseTo(1.118, 3);
    expect(both?.linearG).toBe(1.25);
    expect(both?.differenceG).toBeCloseTo(0.132, 3);
  });

  it.each([
    // Calculated by the square root rule.
    [250, 3.13],
    [160, 3.91],
  ])('3.5 %% at 200 is, at %d, %d %% (calculated)', (bloom, percent) => {
    expect(bloomSquareRootG(3.5, 200, bloom)).toBeCloseTo(percent, 2);
  });

  const bloom = fc.integer({ min: 50, max: 300 });
  it('there and back is the same mass by either rule, and neither rule moves equal blooms', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e4, noNaN: true }), bloom, bloom, (massG, from, to) => {
        for (const rule of [bloomLinearG, bloomSquareRootG]) {
          expect(rule(rule(massG, from, to) ?? Number.NaN, to, from)).toBeCloseTo(massG, 8);
          expect(rule(massG, from, from)).toBeCloseTo(massG, 9);
        }
      }),
    );
  });

  it('the linear rule always corrects at least as far as the root', () => {
    fc.assert(
      fc.property(bloom, bloom, (from, to) => {
        const both = convertBloom(100, from, to);
        const far = (grams = Number.NaN) => Math.abs(Math.log(grams / 100));
        expect(far(both?.linearG)).toBeGreaterThanOrEqual(far(both?.squareRootG) - 1e-12);
      }),
    );
  });

  it('is unknown for what is no mass or no bloom', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(convertBloom(bad, 200, 250)).toBe(null);
      expect(convertBloom(10, bad, 250)).toBe(null);
      expect(convertBloom(10, 200, bad)).toBe(null);
    }
    expect(bloomLinearG(10, 200, 0)).toBe(null);
  });
});

describe('sheets', () => {
  // Published: cookery writing, 2012.
  it.each([
    ['bronze', 125, 155, 3.3],
    ['silver', 160, 160, 2.5],
    ['gold', 190, 220, 2],
    ['platinum', 235, 265, 1.7],
  ] as const)('%s: %d to %d bloom, %d g', (grade, low, high, grams) => {
    expect(sheetOf(grade)).toMatchObject({ bloomLow: low, bloomHigh: high, sheetG: grams });
  });

  it('are evened out by mass as the linear rule would have it, not as the root: a count is not a strength (derived)', () => {
    const products = SHEETS.map(({ grade, sheetG }) => sheetOf(grade).bloom * sheetG);
    const roots = SHEETS.map(({ grade, sheetG }) => Math.sqrt(sheetOf(grade).bloom) * sheetG);
    const spread = (values: readonly number[]) => Math.max(...values) / Math.min(...values);
    expect(spread(products)).toBeLessThan(1.16);
    expect(spread(roots)).toBeGreaterThan(1.4);
  });

  it('six to the litre is one strength in gold and another in silver (derived)', () => {
    expect((6 * sheetOf('gold').sheetG) / 1000).toBeCloseTo(0.012, 9);
    expect((6 * sheetOf('silver').sheetG) / 1000).toBeCloseTo(0.015, 9);
    expect(sheetsFor(35, 2)).toBe(17.5);
    for (const bad of [Number.NaN, -1]) expect(sheetsFor(bad, 2)).toBe(null);
    expect(sheetsFor(35, 0)).toBe(null);
  });
});

describe('gelatine to the gallon of stock', () => {
  it('4 oz are 29.96 g/L (published inputs: ratio table of the cold kitchen; derived)', () => {
    expect(gPerLOfOzPerGallon(4)).toBeCloseTo(29.96, 2);
  });

  it.each([
    // Published ounces; grams derived.
    ['delicate', 15, 15],
    ['coating', 30, 30],
    ['sliceable', 44.9, 59.9],
    ['firm', 74.9, 89.9],
    ['mousse', 119.8, 119.8],
  ])('%s: %d to %d g/L', (id, low, high) => {
    const row = STOCK_RATIOS.rows.find((ratio) => ratio.id === id);
    expect(gPerLOfOzPerGallon(row?.minOz ?? 0)).toBeCloseTo(low, 1);
    expect(gPerLOfOzPerGallon(row?.maxOz ?? 0)).toBeCloseTo(high, 1);
  });
});

describe('what weakens a set', () => {
  // Common practice, no source: 10–25 % more below pH 4 or above 10 % alcohol.
  it('is acid below pH 4 and alcohol above a tenth, each by itself', () => {
    expect(weakeningOf(4, 0.1)).toEqual({ acid: false, alcohol: false, min: 1, max: 1 });
    expect(weakeningOf(3.9, 0)).toEqual({ acid: true, alcohol: false, min: 1.1, max: 1.25 });
    expect(weakeningOf(7, 0.12)).toEqual({ acid: false, alcohol: true, min: 1.1, max: 1.25 });
    expect(weakeningOf(3.5, 0.2).max).toBeCloseTo(1.5625, 12);
    expect(weakeningOf(null, null).max).toBe(1);
  });
});

describe('jelly under a crust', () => {
  it('is 60 to 120 mL for each litre of room (common practice, no source)', () => {
    expect(jellyUnderCrustMl(1000)).toEqual({ minMl: 60, maxMl: 120 });
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(jellyUnderCrustMl(bad)).toBe(null);
  });
});
