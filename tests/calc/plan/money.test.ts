import {
  foodCost,
  foodCostFraction,
  inMinorUnits,
  type LineToBuy,
  priceAtFoodCost,
  priceLeaving,
  priceOf,
  purchaseOf,
  withTax,
} from '@larderwright/calc/plan';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

function line(change: Partial<LineToBuy>): LineToBuy {
  return {
    lineId: 'l',
    name: 'Pork',
    part: 'lean',
    massG: 1000,
    price: 6,
    priceBasis: 'kg',
    eachMassG: null,
    yieldFraction: 1,
    ...change,
  };
}

describe('what a line costs', () => {
  it('is the purchase times the price: what is trimmed away was paid for', () => {
    // 1,000 g at a yield of 80 % is 1,250 g bought; × 14.00 = 17.50, where costing the bowl says 14.00. Derived.
    const bought = purchaseOf(line({ price: 14, yieldFraction: 0.8 }), 1);
    expect(bought.purchaseG).toBeCloseTo(1250, 9);
    expect(bought.cost).toBeCloseTo(17.5, 9);
  });

  it('by the pound or the piece', () => {
    expect(purchaseOf(line({ massG: 453.59237, priceBasis: 'lb', price: 3 }), 2).cost).toBeCloseTo(6, 9);
    // 160 g of egg of 50 g: 3.2 eggs at 0.30 = 0.96; four are opened. Derived.
    const eggs = purchaseOf(line({ massG: 160, priceBasis: 'each', price: 0.3, eachMassG: 50 }), 1);
    expect(eggs.pieces).toEqual({ exact: expect.closeTo(3.2, 9), whole: 4 });
    expect(eggs.cost).toBeCloseTo(0.96, 9);
    expect(
      purchaseOf(line({ massG: 150, priceBasis: 'each', price: 1, eachMassG: 50 }), 1).pieces?.whole,
    ).toBe(3);
  });

  it('is unknown while a figure is blank, and nothing of its own in the sundries', () => {
    for (const change of [
      { price: null },
      { massG: null },
      { yieldFraction: null },
      { yieldFraction: 0 },
      { priceBasis: 'each' },
      { priceBasis: 'each', eachMassG: 0 },
    ] as const)
      expect(purchaseOf(line(change), 1).cost).toBe(null);
    expect(purchaseOf(line({ price: null, priceBasis: 'sundries' }), 1).cost).toBe(0);
  });

  it('adds up to the batch, or to a floor while something is unknown', () => {
    const two = [purchaseOf(line({}), 1), purchaseOf(line({ price: null }), 1)];
    expect(foodCost(two, 1)).toEqual({ total: null, known: 7 });
    expect(foodCost(two.slice(0, 1), 1)).toEqual({ total: 7, known: 7 });
    expect(foodCost(two.slice(0, 1), null)).toEqual({ total: null, known: 6 });
    expect(foodCost([], 0)).toEqual({ total: null, known: 0 });
  });

  it('scales with the batch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), (hundredths) => {
        const factor = hundredths / 100;
        expect(purchaseOf(line({ yieldFraction: 0.7 }), factor).cost).toBeCloseTo((factor * 6) / 0.7, 8);
      }),
    );
  });
});

describe('prices', () => {
  it('0.82 at 70 % gross profit is 2.73', () => {
    // Common practice; derived: 0.82 ÷ 0.30 = 2.7333.
    expect(priceLeaving(0.82, 0.7)).toBeCloseTo(2.7333, 4);
    expect(priceAtFoodCost(0.82, 0.3)).toBeCloseTo(2.7333, 4);
  });

  it('leave the share asked for, and the food the rest', () => {
    const price = priceLeaving(0.78, 0.7) ?? Number.NaN;
    expect((price - 0.78) / price).toBeCloseTo(0.7, 12);
    expect(foodCostFraction(0.78, price)).toBeCloseTo(0.3, 12);
    expect(withTax(2.6, 0.2)).toBeCloseTo(3.12, 12);
  });

  it('of a country pâté of invented prices: 13.20 a batch, 6.946 a kilogram, 0.3881 a portion, food cost 9.95 %', () => {
    // Weights, prices and results of a worked recipe check; arithmetic derived.
    const recipe: readonly (readonly [g: number, perKg: number])[] = [
      [1000, 7.5],
      [400, 3.2],
      [350, 4],
      [100, 4.8],
      [100, 6.5],
      [60, 5.5],
      [40, 24],
      [30, 0.8],
      [15, 14],
      [10, 9],
      [4, 12],
      [4, 28],
      [1, 45],
      [1, 32],
      [1, 36],
    ];
    const { total } = foodCost(
      recipe.map(([massG, price]) => purchaseOf(line({ massG, price }), 1)),
      0,
    );
    expect(total).toBeCloseTo(13.2, 1);
    expect((total ?? 0) / 1.9).toBeCloseTo(6.946, 3);
    expect((total ?? 0) / 34).toBeCloseTo(0.3881, 4);
    expect(foodCostFraction((total ?? 0) / 34, 3.9)).toBeCloseTo(0.09952, 5);
  });

  it.each([
    [1, 1],
    [1, -0.1],
    [1, 1.1],
    [1, Number.NaN],
    [-1, 0.7],
    [Number.NaN, 0.7],
    [Number.POSITIVE_INFINITY, 0.7],
  ])('are unknown for a cost of %d and a share of %d', (cost, share) =>
    expect(priceLeaving(cost, share)).toBe(null),
  );

  it('at no food cost, or of nothing, are unknown', () => {
    expect(priceAtFoodCost(1, 0)).toBe(null);
    expect(foodCostFraction(1, 0)).toBe(null);
    expect(withTax(1, Number.NaN)).toBe(null);
  });

  it('follow the method: gross profit and food cost look at food, a margin at everything', () => {
    const cost = { food: 3, full: 6 };
    const pricing = { shareFraction: 0.4, taxFraction: 0.1, currency: 'cu' };
    expect(priceOf(cost, { ...pricing, method: 'gross-profit' }).exTax).toBeCloseTo(5, 12);
    expect(priceOf(cost, { ...pricing, method: 'food-cost' }).exTax).toBeCloseTo(7.5, 12);
    expect(priceOf(cost, { ...pricing, method: 'margin' }).incTax).toBeCloseTo(11, 12);
    expect(priceOf({ food: 3, full: null }, { ...pricing, method: 'margin' })).toEqual({
      exTax: null,
      incTax: null,
    });
    expect(priceOf(cost, { ...pricing, method: 'margin', taxFraction: null })).toEqual({
      exTax: expect.closeTo(10, 12),
      incTax: null,
    });
  });
});

describe('money as printed', () => {
  it('is rounded to the smallest coin by its digits, and the total is the sum of what is printed', () => {
    expect(inMinorUnits([1.005, 2.005])).toEqual({ parts: [101, 201], total: 302 });
    expect(inMinorUnits([0.333, 0.333, 0.334])).toEqual({ parts: [33, 33, 33], total: 99 });
    expect(inMinorUnits([1234.5], 0)).toEqual({ parts: [1235], total: 1235 });
    expect(inMinorUnits([])).toEqual({ parts: [], total: 0 });
  });

  it('is whole coins', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1e6, noNaN: true })), (amounts) => {
        const { parts, total } = inMinorUnits(amounts);
        expect(parts.every(Number.isInteger)).toBe(true);
        expect(total).toBe(parts.reduce((sum, part) => sum + part, 0));
        for (const [index, part] of parts.entries())
          expect(Math.abs(part / 100 - (amounts[index] ?? 0))).toBeLessThan(0.00501);
      }),
    );
  });
});
