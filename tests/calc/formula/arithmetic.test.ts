import {
  addedWaterFraction,
  concentratedFraction,
  largestShareG,
  remainingFraction,
  twoTrimBlend,
} from '@larderwright/calc/formula';
import { describe, expect, it } from 'vitest';

describe('two trims to a target', () => {
  it.each([
    // Square of 10 % and 25 % to 20 %: 5 and 10 parts of 15. Textbook exercise, inputs from meat-judging class material.
    [0.1, 0.25, 0.2, 333.33 / 1000],
    // 3 % venison and 88 % back fat to 25 %: 74.12 : 25.88. Derived.
    [0.03, 0.88, 0.25, 0.7412],
    [0.03, 0.88, 0.03, 1],
    [0.03, 0.88, 0.88, 0],
  ])('%d and %d to %d takes %d of the first', (a, b, target, expected) => {
    const blend = twoTrimBlend(a, b, target);
    expect(blend?.fractionOfA).toBeCloseTo(expected, 4);
    expect((blend?.fractionOfA ?? 0) + (blend?.fractionOfB ?? 0)).toBeCloseTo(1, 12);
  });

  it('has no answer outside the two, for one and the same trim, or for what is no fraction', () => {
    // 20 % and 50 % never make 15 %. Derived.
    expect(twoTrimBlend(0.2, 0.5, 0.15)).toBe(null);
    expect(twoTrimBlend(0.2, 0.5, 0.51)).toBe(null);
    expect(twoTrimBlend(0.2, 0.2, 0.2)).toBe(null);
    expect(twoTrimBlend(-0.1, 0.5, 0.2)).toBe(null);
    expect(twoTrimBlend(0.1, Number.NaN, 0.2)).toBe(null);
    expect(twoTrimBlend(3, 88, 25)).toBe(null);
  });
});

describe('losses', () => {
  it('multiply', () => {
    // 0.92 × 0.97 × 0.98 = 0.874552: 87.5 %, where adding would say 87 %. Derived.
    expect(remainingFraction([0.08, 0.03, 0.02])).toBeCloseTo(0.874552, 9);
    expect(remainingFraction([])).toBe(1);
    expect(remainingFraction([1.1])).toBe(null);
    expect(remainingFraction([Number.NaN])).toBe(null);
  });

  it('concentrate what stays', () => {
    // 3.0 % at 35 % loss: 4.62 %; 1.7 % at 10 %: 1.89 %. Derived.
    expect(concentratedFraction(0.03, 0.35)).toBeCloseTo(0.0462, 4);
    expect(concentratedFraction(0.017, 0.1)).toBeCloseTo(0.0189, 4);
    expect(concentratedFraction(0.03, 0)).toBe(0.03);
    expect(concentratedFraction(0.03, 1)).toBe(null);
    expect(concentratedFraction(0.5, 0.9)).toBe(null);
    expect(concentratedFraction(Number.NaN, 0.1)).toBe(null);
  });
});

describe('shares that laws tie to names', () => {
  it('reckon added water as 9 CFR 318.22(b) does', () => {
    // 58 − 4 × (12 − (2.5 − 1)) = 16.0 %. 9 CFR 318.22(b), derived result.
    expect(addedWaterFraction(0.58, 0.12, 0.025)).toBeCloseTo(0.16, 12);
    // Under a point of other protein the allowance is not turned round: 58 − 48 = 10 %.
    expect(addedWaterFraction(0.58, 0.12, 0.005)).toBeCloseTo(0.1, 12);
    expect(addedWaterFraction(0.4, 0.12, 0)).toBe(0);
    expect(addedWaterFraction(0.4, 0.12, 0.2)).toBe(null);
    expect(addedWaterFraction(Number.NaN, 0.12, 0)).toBe(null);
  });

  it('count a share of the total on the total it is part of', () => {
    // 9 CFR 319.140: 3 % of total ingredients beside 9.70 kg of the rest is 0.300 kg, not 0.291.
    expect(largestShareG(9700, 0.03)).toBeCloseTo(300, 9);
    expect(largestShareG(9700, 1)).toBe(null);
    expect(largestShareG(-1, 0.03)).toBe(null);
  });
});
