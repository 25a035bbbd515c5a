import {
  COOKING_LOSSES,
  JOINTS_OZ,
  PIG_BREAKDOWN,
  perPound,
  pricePerKg,
  purchaseG,
  spreadOf,
  trimYield,
  YIELDS_FROM_PROTEIN,
} from '@larderwright/calc/yield';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const usable = (massG: number | null) => ({ role: 'usable', massG, valuePerKg: null }) as const;
const byProduct = (massG: number | null, valuePerKg: number | null) =>
  ({ role: 'by-product', massG, valuePerKg }) as const;
const waste = (massG: number | null) => ({ role: 'waste', massG, valuePerKg: null }) as const;

describe('a trim test', () => {
  it('tells yield, credit, cost of the usable kilogram and cost factor', () => {
    // 10 kg at 6.00 = 60.00; fat 2 kg at 1.50 = 3.00; 57.00 ÷ 7 kg = 8.142857; ÷ 6.00 = 1.357. Derived.
    const result = trimYield(10_000, 6, [usable(7000), byProduct(2000, 1.5), waste(900)]);
    expect(result.usableFraction).toBeCloseTo(0.7, 12);
    expect(result.creditMoney).toBeCloseTo(3, 12);
    expect(result.costPerUsableKg).toBeCloseTo(8.142857, 6);
    expect(result.costWithoutCreditPerKg).toBeCloseTo(60 / 7, 12);
    expect(result.costFactor).toBeCloseTo(1.357143, 6);
    expect(result.unaccountedFraction).toBeCloseTo(0.01, 12);
    expect(result.partFractions).toEqual([0.7, 0.2, 0.09]);
  });

  it('costs a material on what is left of it: price ÷ yield where nothing else is worth anything', () => {
    // Common practice of cookery schools: EP price = AP price ÷ yield. 14.00 at 80 % = 17.50. Derived.
    expect(trimYield(5000, 14, [usable(4000), waste(1000)]).costPerUsableKg).toBeCloseTo(17.5, 12);
  });

  it('adds up several usable piles', () => {
    expect(trimYield(1000, 1, [usable(600), usable(100), waste(300)]).usableFraction).toBeCloseTo(0.7, 12);
  });

  it('does not take a blank pile, value or price for nothing', () => {
    const blankPile = trimYield(10_000, 6, [usable(7000), waste(null)]);
    expect(blankPile.usableFraction).toBeCloseTo(0.7, 12);
    expect(blankPile.unaccountedG).toBe(null);
    const blankValue = trimYield(10_000, 6, [usable(7000), byProduct(2000, null), waste(1000)]);
    expect(blankValue.costPerUsableKg).toBe(null);
    expect(blankValue.costWithoutCreditPerKg).toBeCloseTo(60 / 7, 12);
    expect(trimYield(10_000, null, [usable(7000)]).costPerUsableKg).toBe(null);
    expect(trimYield(null, 6, [usable(7000)]).usableFraction).toBe(null);
    expect(trimYield(0, 6, [usable(0)]).usableFraction).toBe(null);
    expect(trimYield(10_000, 6, [usable(null)]).usableFraction).toBe(null);
    expect(trimYield(10_000, 6, []).usableFraction).toBe(null);
    expect(trimYield(10_000, 6, [usable(0), waste(10_000)]).costPerUsableKg).toBe(null);
  });

  it('a by-product of which there is none needs no value', () => {
    expect(trimYield(1000, 2, [usable(800), byProduct(0, null), waste(200)]).costPerUsableKg).toBe(2.5);
  });

  it('conserves mass: piles and what is unaccounted for are the purchase, to 1 mg', () => {
    const tenths = fc.integer({ min: 0, max: 2_000_000 }).map((n) => n / 10);
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000_000 }),
        fc.array(tenths, { minLength: 1 }),
        (bought, masses) => {
          const { unaccountedG } = trimYield(bought / 10, null, masses.map(usable));
          const total = masses.reduce((sum, massG) => sum + massG, unaccountedG ?? Number.NaN);
          expect(Math.abs(total - bought / 10)).toBeLessThan(1e-3);
        },
      ),
    );
  });
});

describe('mean and spread of trials', () => {
  it('are the mean, the sample deviation with n − 1, and the range', () => {
    // 70, 72, 74 %: mean 72, deviations −2, 0, 2, so √(8 ÷ 2) = 2. Derived.
    expect(spreadOf([0.7, 0.72, 0.74])).toEqual({
      count: 3,
      mean: expect.closeTo(0.72, 12),
      sampleSd: expect.closeTo(0.02, 12),
      min: 0.7,
      max: 0.74,
    });
    // 2, 4, 4, 4, 5, 5, 7, 9: textbook example, sample deviation √(32 ÷ 7). Derived.
    expect(spreadOf([2, 4, 4, 4, 5, 5, 7, 9])?.sampleSd).toBeCloseTo(Math.sqrt(32 / 7), 12);
  });

  it('of one trial: it has no spread; of none or of nonsense there is nothing', () => {
    expect(spreadOf([0.7])?.sampleSd).toBe(null);
    expect(spreadOf([])).toBe(null);
    expect(spreadOf([0.7, Number.NaN])).toBe(null);
    expect(spreadOf([Number.POSITIVE_INFINITY])).toBe(null);
  });
});

describe('what to buy', () => {
  it('is needed ÷ yield, not needed plus the loss', () => {
    // 7 kg at 70 %: 10 kg. Adding 30 % would buy 9.1 kg, of which 6.37 kg is left. Derived.
    expect(purchaseG(7000, 0.7)).toBeCloseTo(10_000, 9);
    expect((purchaseG(7000, 0.7) ?? 0) * 0.7).toBeCloseTo(7000, 9);
  });

  it.each([
    [7000, 0],
    [7000, 1.01],
    [7000, Number.NaN],
    [-1, 0.7],
    [Number.NaN, 0.7],
    [Number.POSITIVE_INFINITY, 0.7],
  ])('is unknown for %d g at a yield of %d', (needed, fraction) =>
    expect(purchaseG(needed, fraction)).toBe(null),
  );
});

describe('prices by mass', () => {
  it('go between kilogram and pound by the exact pound', () => {
    // NIST SP 811 (2008), appendix B.8: 1 lb = 0.45359237 kg.
    expect(pricePerKg(4.5359237, 'lb')).toBeCloseTo(10, 12);
    expect(pricePerKg(10, 'kg')).toBe(10);
    expect(perPound(10)).toBeCloseTo(4.5359237, 12);
  });
});

describe('published weights', () => {
  it('of joints: the ham closes; leg and loin weigh an ounce more than was bought, which is told', () => {
    // The Book of Household Management, page 631: printed ounces.
    const open = JOINTS_OZ.joints.map(({ bought, waste: w, cooking, eatable }) =>
      trimYield(bought, null, [usable(eatable), waste(w), waste(cooking)]),
    );
    expect(open.map(({ unaccountedG }) => unaccountedG)).toEqual([0, -1, -1]);
    // 119 of 191 oz: 62.3 %. Derived.
    expect(open[0]?.usableFraction).toBeCloseTo(0.623, 3);
  });

  it('of a pig: 81 of 115 kg, and no part heavier than the carcass', () => {
    // Oklahoma Department of Agriculture; 70.43 % derived.
    const { live = 0, carcass = 0, ...cuts } = PIG_BREAKDOWN.partsKg;
    expect(trimYield(live, null, [usable(carcass)]).usableFraction).toBeCloseTo(0.7043, 4);
    expect(Object.keys(PIG_BREAKDOWN.partsKg)).toHaveLength(13);
    expect(Object.values(cuts).reduce((sum, kg) => sum + kg, 0)).toBeLessThan(carcass);
  });

  it('are carried whole: 3 joints, 2 cooking losses, 17 pairs of raw and cooked rows', () => {
    expect(JOINTS_OZ.joints).toHaveLength(3);
    expect(COOKING_LOSSES.cuts).toHaveLength(2);
    // Food Science of Animal Resources 41 (2), 2021, table 2.
    expect(COOKING_LOSSES.cuts[1]).toEqual({ name: 'pork shoulder butt', least: 0.244, most: 0.253 });
    expect(YIELDS_FROM_PROTEIN.pairs).toHaveLength(17);
    // USDA SR28; ratio derived.
    expect(YIELDS_FROM_PROTEIN.pairs.find(([name]) => name === 'cod, dry heat')).toEqual([
      'cod, dry heat',
      15015,
      15016,
      0.78,
    ]);
  });
});
