import {
  nitritePpm,
  sodiumNitriteFromPotassiumNitrite,
  sodiumNitriteFromSodiumNitrate,
} from '@larderwright/calc/cure';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const grams = fc.double({ min: 0.001, max: 1e6, noNaN: true });
const strength = fc.double({ min: 0.004, max: 0.1, noNaN: true });

describe('ingoing nitrite', () => {
  test('20 g to the kilogram of a 6.25 % salt taken for plain salt is 1,250 mg/kg (derived)', () => {
    expect(nitritePpm(20 * 0.0625, 1000)).toBe(1250);
  });

  test('2.5 g to the kilogram of a 6.25 % salt is 156.25 mg/kg to the last digit (9 CFR 424.21(c))', () => {
    expect(nitritePpm(2.5 * 0.0625, 1000)).toBe(156.25);
  });

  test('the same weight of a 0.6 % salt gives 15 mg/kg (derived)', () => {
    expect(nitritePpm(2.5 * 0.006, 1000)).toBeCloseTo(15, 9);
  });

  test('one dose is two figures: 5.4 g of 6.25 % is 120.5 on the meat block and 87.7 on everything (derived)', () => {
    expect(nitritePpm(5.4 * 0.0625, 2800)).toBeCloseTo(120.5, 1);
    expect(nitritePpm(5.4 * 0.0625, 3850.1)).toBeCloseTo(87.7, 1);
  });

  test('nothing added is 0, not unknown', () => {
    expect(nitritePpm(0, 1000)).toBe(0);
  });

  test('an unusable number or an empty basis gives null, never NaN or infinity', () => {
    for (const [nitriteG, basisG] of [
      [Number.NaN, 1000],
      [1, Number.NaN],
      [1, 0],
      [1, -0],
      [1, -5],
      [-1, 1000],
      [Number.POSITIVE_INFINITY, 1000],
      [1, Number.POSITIVE_INFINITY],
    ] as const) {
      expect(nitritePpm(nitriteG, basisG)).toBeNull();
    }
  });

  test('a batch scaled as a whole keeps its nitrite', () => {
    fc.assert(
      fc.property(
        grams,
        grams,
        strength,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (cureG, meatG, f, k) => {
          const one = nitritePpm(cureG * f, meatG) ?? Number.NaN;
          const scaled = nitritePpm(cureG * k * f, meatG * k) ?? Number.NaN;
          expect(scaled / one).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('more curing salt never lowers it', () => {
    fc.assert(
      fc.property(grams, grams, grams, strength, (cureG, moreG, meatG, f) => {
        const less = nitritePpm(cureG * f, meatG) ?? Number.NaN;
        const more = nitritePpm((cureG + moreG) * f, meatG) ?? Number.NaN;
        expect(more).toBeGreaterThanOrEqual(less);
      }),
    );
  });
});

describe('nitrite and nitrate in other forms', () => {
  test('148 mg/kg of potassium nitrite is 120 of sodium nitrite (9 CFR 424.22(b)(1) prints the pair)', () => {
    expect(sodiumNitriteFromPotassiumNitrite(148)).toBeCloseTo(120, 1);
  });

  test('sodium nitrate counts as sodium nitrite by 68.9953 ÷ 84.9947 (derived)', () => {
    expect(sodiumNitriteFromSodiumNitrate(100)).toBeCloseTo(81.176, 3);
  });
});
