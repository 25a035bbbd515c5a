import {
  apparentHeatJkgK,
  type Composition,
  changTaoEnthalpyJkg,
  chenEnthalpyJkg,
  conductivityWmK,
  constantMaterial,
  densityKgM3,
  enthalpyOf,
  enthalpyTable,
  foodMaterial,
  iceFraction,
  iceFractionTchigeov,
  initialFreezingC,
  normalised,
  specificHeatJkgK,
  temperatureOf,
} from '@larderwright/calc/heat';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const none: Composition = { water: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
const farce = { ...none, water: 0.575, protein: 0.16, fat: 0.245, carbohydrate: 0.005, ash: 0.015 };
const leanPork = { ...none, water: 0.72, protein: 0.2, fat: 0.07, ash: 0.01 };
const parfait = { ...none, water: 0.5, protein: 0.12, fat: 0.35, carbohydrate: 0.015, ash: 0.015 };
const backFat = { ...none, water: 0.077, protein: 0.029, fat: 0.887, ash: 0.007 };

/**
 * derived: computed apart from this code with the constants of the ASHRAE handbook tables (water 4128.9).
 * Columns: °C, ρ, cp, k parallel, k series, k Maxwell–Eucken, k Levy, α × 10⁷.
 */
const MIXTURES: readonly [string, Composition, readonly (readonly number[])[]][] = [
  [
    'a pork farce with a quarter fat',
    farce,
    [
      [4, 1029.18, 3207.9, 0.4176, 0.3071, 0.4011, 0.3928, 1.265],
      [20, 1025.47, 3217.2, 0.4335, 0.3131, 0.4146, 0.4044, 1.314],
      [60, 1011.03, 3244.1, 0.464, 0.3193, 0.4401, 0.4247, 1.4148],
      [80, 1001.07, 3259.6, 0.4745, 0.3186, 0.4486, 0.4306, 1.4542],
    ],
  ],
  [
    'lean pork',
    leanPork,
    [
      [4, 1049.78, 3525.5, 0.4829, 0.3804, 0.4764, 0.473, 1.3048],
      [20, 1047.01, 3531.6, 0.5045, 0.3985, 0.4971, 0.4928, 1.3645],
      [60, 1033.38, 3554.1, 0.5468, 0.4308, 0.5373, 0.5308, 1.4888],
      [80, 1022.98, 3569.3, 0.5616, 0.4409, 0.5513, 0.5438, 1.5382],
    ],
  ],
  [
    'a liver parfait',
    parfait,
    [
      [4, 1013.98, 3042.2, 0.3838, 0.2791, 0.3642, 0.3547, 1.2441],
      [20, 1009.81, 3053.3, 0.3965, 0.2813, 0.3743, 0.3625, 1.2859],
      [60, 995.04, 3082.6, 0.4205, 0.2799, 0.3925, 0.375, 1.3708],
      [80, 985.34, 3098.2, 0.4284, 0.2766, 0.3981, 0.3778, 1.4035],
    ],
  ],
  [
    'back fat',
    backFat,
    [
      [4, 941.63, 2149.1, 0.2091, 0.1894, 0.2034, 0.201, 1.0332],
      [20, 935.25, 2169.2, 0.2071, 0.1854, 0.2007, 0.1978, 1.0211],
      [60, 918.72, 2210.6, 0.2009, 0.1743, 0.1928, 0.1885, 0.9892],
      [80, 910.15, 2226.7, 0.1971, 0.1684, 0.1882, 0.1832, 0.9724],
    ],
  ],
];

describe('properties of a mixture', () => {
  it.each(MIXTURES)('are those of %s, digit for digit', (_, composition, rows) => {
    for (const [
      tempC = 0,
      rho = 0,
      cp = 0,
      parallel = 0,
      series = 0,
      maxwell = 0,
      levy = 0,
      alpha7 = 0,
    ] of rows) {
      const k = (model: 'parallel' | 'series' | 'maxwell' | 'levy') =>
        conductivityWmK(composition, tempC, { model });
      expect(densityKgM3(composition, tempC)).toBeCloseTo(rho, 2);
      expect(specificHeatJkgK(composition, tempC, 'handbook')).toBeCloseTo(cp, 1);
      expect(k('parallel')).toBeCloseTo(parallel, 4);
      expect(k('series')).toBeCloseTo(series, 4);
      expect(k('maxwell')).toBeCloseTo(maxwell, 4);
      expect(k('levy')).toBeCloseTo(levy, 4);
      const alpha =
        k('parallel') / (densityKgM3(composition, tempC) * specificHeatJkgK(composition, tempC, 'handbook'));
      expect(alpha * 1e7).toBeCloseTo(alpha7, 3);
    }
  });

  it('take water as 47.3 J/(kg·K) heavier by the original paper than by the handbook', () => {
    // Choi & Okos (1986): 4176.2; ASHRAE Refrigeration (2006) ch. 9: 4128.9. Water share of the farce 0.575.
    const gap = specificHeatJkgK(farce, 20) - specificHeatJkgK(farce, 20, 'handbook');
    expect(gap).toBeCloseTo(47.3 * 0.575, 6);
  });

  it('let Levy and Maxwell lie between the series and the parallel bound', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    const mixes = fc.record({
      water: share,
      protein: share,
      fat: share,
      carbohydrate: share,
      fibre: share,
      ash: share,
    });
    fc.assert(
      fc.property(mixes, fc.double({ min: 0, max: 100, noNaN: true }), (raw, tempC) => {
        const mix = normalised(raw) ?? none;
        const k = (model: 'parallel' | 'series' | 'maxwell' | 'levy') =>
          conductivityWmK(mix, tempC, { model });
        for (const model of ['levy', 'maxwell'] as const) {
          expect(k(model)).toBeLessThanOrEqual(k('parallel') + 1e-12);
          expect(k(model)).toBeGreaterThanOrEqual(k('series') - 1e-12);
        }
      }),
    );
  });

  it('fall with entrapped air: a tenth of air weighs a tenth less and conducts less', () => {
    expect(densityKgM3(farce, 4, { airFraction: 0.1 })).toBeCloseTo(0.9 * 1029.18, 1); // derived
    expect(conductivityWmK(farce, 4, { airFraction: 0.1 })).toBeLessThan(0.95 * conductivityWmK(farce, 4));
  });

  it('refuse fractions that are negative, not finite or all zero', () => {
    for (const bad of [
      none,
      { ...farce, fat: -0.1 },
      { ...farce, ash: Number.NaN },
      { ...farce, water: Infinity },
    ]) {
      expect(normalised(bad)).toBeNull();
      expect(foodMaterial(bad)).toBeNull();
    }
  });
});

describe('freezing', () => {
  it('starts where the composition says: lean meat −1.94 °C, with 1.6 % salt −2.97 °C', () => {
    // Pham (1996): t_f = −4.66 x_o/x_w − 46.4 x_a/x_w
    expect(initialFreezingC(leanPork)).toBeCloseTo(-1.94, 2);
    expect(initialFreezingC({ ...leanPork, ash: 0.026 })).toBeCloseTo(-2.97, 2);
    expect(initialFreezingC({ ...none, fat: 1 })).toBeNull();
  });

  it('makes the ice of the handbook equations', () => {
    // derived from the bound-water and Tchigeov forms, ASHRAE Refrigeration (2006) ch. 9
    const shoulder = { ...leanPork, water: 0.7263, protein: 0.1955 };
    const rows = [
      [-5, 0.4277, 0.5389],
      [-10, 0.5379, 0.608],
      [-20, 0.593, 0.6466],
      [-40, 0.6206, 0.6719],
    ] as const;
    for (const [tempC, bound, empirical] of rows) {
      expect(iceFraction(shoulder, -1.7, tempC)).toBeCloseTo(bound, 3);
      expect(iceFractionTchigeov(0.7263, -1.7, tempC)).toBeCloseTo(empirical, 3);
    }
    expect(iceFraction(leanPork, -1.7, -5)).toBeCloseTo(0.4224, 4);
    expect(iceFraction(leanPork, -1.7, -1.7)).toBe(0);
    expect(iceFractionTchigeov(0.58, -1.7, -20)).toBeCloseTo(0.516, 3);
  });

  it('leaves a shoulder at −40 °C conducting between the bounds of its parts', () => {
    // derived: lean pork shoulder of the ASHRAE handbook (its fractions sum to 1.0034, as printed), ice by Tchigeov
    const shoulder = { ...none, water: 0.7263, protein: 0.1955, fat: 0.0714, ash: 0.0102 };
    const ice = iceFractionTchigeov(shoulder.water, -2.2, -40);
    expect(densityKgM3(shoulder, -40, { iceFraction: ice })).toBeCloseTo(991.9, 0);
    expect(conductivityWmK(shoulder, -40, { model: 'parallel', iceFraction: ice })).toBeCloseTo(1.962, 2);
    expect(conductivityWmK(shoulder, -40, { model: 'series', iceFraction: ice })).toBeCloseTo(0.519, 2);
  });

  it('follows the enthalpy of Chen, kJ/kg', () => {
    // derived from Chen (1985) as printed in ASHRAE Refrigeration (2006) ch. 9, lean meat x_w .72 x_p .20
    const temps = [-30, -20, -18, -10, -5, -3, -2, -1, 0, 4, 10];
    const rows = [
      [-1.0, 20.81, 43.39, 48.39, 73.1, 103.96, 136.23, 173.72, 282.38, 285.91, 300.04, 321.23],
      [-1.7, 22.05, 47.13, 52.95, 84.31, 130.12, 182.32, 244.71, 279.78, 283.31, 297.44, 318.63],
      [-2.2, 22.94, 49.8, 56.21, 92.31, 148.8, 215.23, 274.39, 277.93, 281.46, 295.59, 316.78],
    ] as const;
    for (const [freezingC, ...wanted] of rows) {
      for (const [index, tempC] of temps.entries()) {
        expect(chenEnthalpyJkg(leanPork, freezingC, tempC) / 1000).toBeCloseTo(
          wanted[index] ?? Number.NaN,
          2,
        );
      }
    }
  });

  it('takes up the melting of fat between 0 and 50 °C: 2.07 kJ/(kg·K) of the fat, derived from measured lard', () => {
    // James & James (2002), table 13.6: lard 4.80 to 3.34 kJ/(kg·K) from 0 to 21 °C; Choi & Okos (1986): 2.0 without melting
    const [melting, solid] = [foodMaterial(farce), foodMaterial(farce, { fatMelting: false })];
    const more = (tempC: number) => (melting?.enthalpyJkg(tempC) ?? 0) - (solid?.enthalpyJkg(tempC) ?? 0);
    const perFat = (more(21) - more(0)) / farce.fat / 21;
    expect(perFat / 1000).toBeCloseTo((4.8 + 3.34) / 2 - 2, 2);
    expect(more(-5)).toBe(0);
    expect(more(70)).toBeCloseTo(farce.fat * 40 * 2070, 3);
  });

  it('of lean beef agrees between Chen, Chang–Tao and the parts within a tenth over −30 to 0 °C', () => {
    // Two independent published equations (ASHRAE Refrigeration 2006 ch. 9) bound the third.
    const beef = { ...none, water: 0.73, protein: 0.21, fat: 0.05, ash: 0.01 };
    const parts = foodMaterial(beef, { freezingC: -1.1 });
    const fall = (from: number, to: number, enthalpy: (tempC: number) => number) =>
      enthalpy(from) - enthalpy(to);
    const chen = fall(-1.1, -30, (tempC) => chenEnthalpyJkg(beef, -1.1, tempC));
    const changTao = fall(-1.1, -30, (tempC) => changTaoEnthalpyJkg(0.73, tempC));
    const own = fall(-1.1, -30, parts?.enthalpyJkg ?? (() => Number.NaN));
    expect(Math.abs(own / chen - 1)).toBeLessThan(0.1);
    expect(Math.abs(own / changTao - 1)).toBeLessThan(0.1);
  });

  it('takes up the latent heat as an apparent specific heat that jumps at the freezing point', () => {
    expect(apparentHeatJkgK(leanPork, -1.7, -1.69)).toBeLessThan(4000);
    expect(apparentHeatJkgK(leanPork, -1.7, -1.71)).toBeGreaterThan(100_000);
  });
});

describe('the enthalpy table', () => {
  it('reads back the temperature it was asked for, through freezing and to the boil', () => {
    const table = enthalpyTable(foodMaterial(leanPork, { freezingC: -1.7 }) ?? constantMaterial(1, 1, 1));
    fc.assert(
      fc.property(fc.double({ min: -40, max: 150, noNaN: true }), (tempC) => {
        expect(temperatureOf(table, enthalpyOf(table, tempC))).toBeCloseTo(tempC, 9);
      }),
    );
  });

  it('gives the enthalpy of the material within a thousandth of a degree above freezing', () => {
    const food = foodMaterial(farce) ?? constantMaterial(1, 1, 1);
    const table = enthalpyTable(food);
    for (const tempC of [0.5, 4, 21.3, 55, 71.9, 98]) {
      const enthalpy = food.enthalpyJkg(tempC) * food.densityKgM3;
      const zero = food.enthalpyJkg(-42) * food.densityKgM3;
      expect(temperatureOf(table, enthalpy - zero + table.first)).toBeCloseTo(tempC, 3);
    }
  });

  it('is a straight line for a material that does not change', () => {
    const table = enthalpyTable(constantMaterial(0.45, 1050, 3500));
    expect(enthalpyOf(table, 60) - enthalpyOf(table, 10)).toBeCloseTo(50 * 1050 * 3500, 0);
    const last = table.kirchhoff.length - 1;
    const reach = (table.tempC[last] ?? 0) - (table.tempC[0] ?? 0);
    expect((table.kirchhoff[last] ?? 0) / reach).toBeCloseTo(0.45, 9);
  });
});
