import { newLine } from '@larderwright/calc/batch';
import { scaleToTotal } from '@larderwright/calc/formula';
import { enteredEntry } from '@larderwright/calc/quantities';
import { JOINTS_OZ, perPound, pricePerKg, purchaseG, trimYield } from '@larderwright/calc/yield';
import { describe, expect, it } from 'vitest';
import { listsItsChecks, published } from '../../tools/published.ts';

const LB = 453.59237;
const part = (role: 'usable' | 'by-product' | 'waste', massG: number, valuePerKg: number | null = null) => ({
  role,
  massG,
  valuePerKg,
});

describe('Published exercises of yield and cost', () => {
  it('a conversion factor with a changed portion, 1.77606 as printed', () => {
    // Published: cookery trade-calculation notes, recipe conversion. 35 × 185 g to 50 × 230 g.
    const line = { ...newLine('a', 'lean'), amount: enteredEntry('6475', 'g') };
    const scaled = scaleToTotal([line], 50 * 230);
    published({
      what: 'Factor from 35 portions of 185 g to 50 of 230 g',
      cited: 'Cookery trade-calculation notes',
      kind: 'printed',
      theirs: 1.77606,
      ours: scaled.ok ? scaled.factor : Number.NaN,
      unit: 'times',
      within: 5e-6,
    });
  });

  it('the price of the edible portion, 7.24 as printed', () => {
    // Published: the same notes. 5 kg at 5.50, 3.8 kg left.
    const result = trimYield(5000, 5.5, [part('usable', 3800)]);
    expect(result.usableFraction).toBeCloseTo(0.76, 9);
    published({
      what: 'Price of the edible kilogram: 5 kg at 5.50, of which 3.8 kg are left',
      cited: 'Cookery trade-calculation notes',
      kind: 'printed',
      theirs: 7.24,
      ours: result.costPerUsableKg ?? Number.NaN,
      unit: 'a kg',
      within: 0.005,
    });
  });

  it('raw weight from cooked weight, 8.63 kg as printed', () => {
    // Published: the same notes. 6.475 kg at 75 %.
    published({
      what: 'Raw weight for 6.475 kg cooked at 75 %',
      cited: 'Cookery trade-calculation notes',
      kind: 'printed',
      theirs: 8.63,
      ours: (purchaseG(6475, 0.75) ?? Number.NaN) / 1000,
      unit: 'kg',
      within: 0.005,
    });
  });

  it('a striploin, 88.5 % as printed; the yield is not rounded on the way', () => {
    // Published: the same course. 5.2 kg at 11.95, 4.6 kg left, 85 portions of 170 g.
    const result = trimYield(5200, 11.95, [part('usable', 4600)]);
    published({
      what: 'Yield of a striploin: 4.6 of 5.2 kg',
      cited: 'Cookery trade-calculation notes',
      kind: 'printed',
      theirs: 88.5,
      ours: (result.usableFraction ?? Number.NaN) * 100,
      unit: '%',
      within: 0.05,
    });
    expect(result.costPerUsableKg).toBeCloseTo(13.51, 2);
    expect(purchaseG(85 * 170, 4600 / 5200)).toBeCloseTo(16_335, 0);
  });

  it('a butcher’s test on a rib of beef', () => {
    // Problem published as a hospitality exercise; answers derived.
    const perKg = (perLb: number) => pricePerKg(perLb, 'lb');
    const result = trimYield(38.75 * LB, perKg(3.19), [
      part('by-product', 6.5 * LB, 0),
      part('by-product', 4.25 * LB, perKg(0.32)),
      part('by-product', 3.25 * LB, perKg(1.49)),
      part('by-product', 2.5 * LB, perKg(1.59)),
      part('waste', 0.25 * LB),
      part('usable', 22 * LB),
    ]);
    expect(result.creditMoney).toBeCloseTo(10.1775, 4);
    expect(result.usableFraction).toBeCloseTo(0.5677, 4);
    expect(perPound(result.costPerUsableKg ?? 0)).toBeCloseTo(5.156, 3);
    expect(result.costFactor).toBeCloseTo(1.616, 3);
  });

  it('trim at its value; the page prints 22.40 where 36.40 less 8.00 is 28.40', () => {
    // Inputs published in a trade article; the slip of the page is not copied.
    const perKg = (perLb: number) => pricePerKg(perLb, 'lb');
    const result = trimYield(28 * LB, perKg(1.3), [
      part('by-product', 3 * LB, perKg(0.1)),
      part('by-product', 4 * LB, perKg(0.3)),
      part('by-product', 5 * LB, perKg(1.3)),
      part('usable', 16 * LB),
    ]);
    expect(result.creditMoney).toBeCloseTo(8, 6);
    expect((result.costPerUsableKg ?? 0) * ((16 * LB) / 1000)).toBeCloseTo(28.4, 6);
    expect(perPound(result.costPerUsableKg ?? 0)).toBeCloseTo(1.775, 6);
    expect(result.costFactor).toBeCloseTo(1.365, 3);
  });

  it('a ham from shop to plate', () => {
    // The Book of Household Management, page 631: 191 oz bought, 13.25 waste, 58.75 lost in the cook.
    const ham = Object.values(JOINTS_OZ).find((joint) => JSON.stringify(joint).includes('191'));
    expect(ham).toBeDefined();
    const result = trimYield(191, null, [part('waste', 13.25), part('waste', 58.75), part('usable', 119)]);
    expect(result.usableFraction).toBeCloseTo(0.623, 3);
    expect(result.unaccountedG).toBeCloseTo(0, 9);
  });

  it('from purchase to edible by the refuse of the table', () => {
    // USDA SR28, NDB 10080: refuse 24 %; its own measure is 288 g from a steak of 380 g.
    expect(purchaseG(1000, 1 - 0.24)).toBeCloseTo(1316, 0);
    expect(purchaseG(288.8, 0.76)).toBeCloseTo(380, 6);
  });
});

listsItsChecks('yield');
