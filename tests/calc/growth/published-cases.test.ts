import {
  cardinalRatePerH,
  daysToHundredfold,
  type GrowthPoint,
  grow,
  LACTIC_2013,
  LISTERIA_2009,
  LISTERIA_GROUPS,
  lagH,
  listeriaGrowth,
  logOfRelativeGrowth,
  logsPerDayAt5C,
  PERFRINGENS_LAG_WORK,
  PERFRINGENS_SETS,
  type ProductFactors,
  physiologicalState,
  productRate,
  rateIntegral,
  readyFraction,
  refrigeratorLogsPerDay,
  squareRootRatePerH,
  workOfGenerations,
} from '@larderwright/calc/growth';
import { convert } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { listsItsChecks, published } from '../../tools/published.ts';

function setOf(id: string) {
  const set = PERFRINGENS_SETS.find((one) => one.id === id);
  if (!set) throw new Error(id);
  return set;
}
const CHICKEN = setOf('roasted-chicken');
const BEEF = setOf('braised-beef');

const near = (value: number, wanted: number, share: number) =>
  expect(Math.abs(value - wanted), `${value} against ${wanted}`).toBeLessThanOrEqual(
    Math.abs(wanted) * share + 1e-12,
  );

const hoursC = (points: readonly (readonly [number, number])[]): GrowthPoint[] =>
  points.map(([hours, tempC]) => ({ timeMin: hours * 60, tempC }));
const hoursF = (points: readonly (readonly [number, number])[]): GrowthPoint[] =>
  points.map(([hours, tempF]) => ({ timeMin: hours * 60, tempC: convert(tempF, 'F', 'C') }));
/** T = 2 + (72 − 2) e^(−0.35 t), every minute for 14 h. */
const exponential: GrowthPoint[] = Array.from({ length: 14 * 60 + 1 }, (_, minute) => ({
  timeMin: minute,
  tempC: 2 + 70 * Math.exp((-0.35 * minute) / 60),
}));

describe('growth rate by the cardinal temperature model', () => {
  // derived: Rosso et al. 1993 with the four figures of the Food Control abstract (roasted chicken)
  it.each([
    [8.8, 0],
    [10, 0.0081],
    [20, 0.6959],
    [30, 2.429],
    [40, 4.915],
    [46.4, 6.06],
    [50, 4.407],
    [51.5, 0],
  ])('is at %f °C %f 1/h for roasted chicken (derived)', (tempC, wanted) => {
    // 0.0081 is printed to two figures
    near(cardinalRatePerH(tempC, CHICKEN), wanted, tempC === 10 ? 0.006 : 0.001);
  });
});

describe('growth of Clostridium perfringens over a whole cooling', () => {
  // derived: closed form with adaptive quadrature, an 8th-order adaptive and a fixed-step Runge–Kutta agreed
  it.each([
    [
      '35 °C for 3 h, chicken',
      CHICKEN,
      hoursC([
        [0, 35],
        [3, 35],
      ]),
      2,
      10.86,
      4.716,
      2.291,
    ],
    [
      '35 °C for 3 h, beef',
      BEEF,
      hoursC([
        [0, 35],
        [3, 35],
      ]),
      2,
      12.93,
      5.596,
      3.185,
    ],
    [
      'FSIS option 1 to the minute, chicken',
      CHICKEN,
      hoursF([
        [0, 130],
        [1.5, 80],
        [6.5, 40],
      ]),
      2,
      7.95,
      3.452,
      1.063,
    ],
    [
      'FSIS option 1 to the minute, beef',
      BEEF,
      hoursF([
        [0, 130],
        [1.5, 80],
        [6.5, 40],
      ]),
      2,
      8.817,
      3.829,
      1.417,
    ],
    [
      'Food Code to the minute, chicken',
      CHICKEN,
      hoursF([
        [0, 135],
        [2, 70],
        [6, 41],
      ]),
      2,
      6.98,
      3.032,
      0.6993,
    ],
    [
      'Food Code to the minute, beef',
      BEEF,
      hoursF([
        [0, 135],
        [2, 70],
        [6, 41],
      ]),
      2,
      7.57,
      3.288,
      0.9151,
    ],
    ['72 °C toward 2 °C, chicken', CHICKEN, exponential, 2, 9.392, 4.078, 1.66],
    ['72 °C toward 2 °C, beef', BEEF, exponential, 2, 10.35, 4.494, 2.071],
    [
      'cured schedule, uncured chicken',
      CHICKEN,
      hoursC([
        [0, 54.4],
        [5, 26.7],
        [15, 7.2],
      ]),
      3,
      24.08,
      6,
      5.996,
    ],
    [
      'cured schedule, uncured beef',
      BEEF,
      hoursC([
        [0, 54.4],
        [5, 26.7],
        [15, 7.2],
      ]),
      3,
      26.5,
      6,
      6,
    ],
  ] as const)('%s (derived)', (_, set, points, start, integral, withoutLag, withLag) => {
    const found = rateIntegral(points, (tempC) => cardinalRatePerH(tempC, set), [set.minC, set.maxC]);
    near(found, integral, 0.002);
    const grown = (work: number) => grow({ log10Count: start, work }, found, 9).log10Count - start;
    near(grown(0), withoutLag, 0.002);
    near(grown(PERFRINGENS_LAG_WORK), withLag, 0.002);
  });

  it('stays above what was measured on the cured schedule in uncured turkey (published trials)', () => {
    // IAFP 2013 and 2014 abstracts, King et al. 2015: 5.3, 4.5 and 4.6 log
    const points = hoursC([
      [0, 54.4],
      [5, 26.7],
      [15, 7.2],
    ]);
    for (const set of PERFRINGENS_SETS) {
      const integral = rateIntegral(points, (tempC) => cardinalRatePerH(tempC, set), [set.minC, set.maxC]);
      const grown = grow({ log10Count: 3, work: PERFRINGENS_LAG_WORK }, integral, 9).log10Count - 3;
      for (const measured of [5.3, 4.5, 4.6]) expect(grown).toBeGreaterThan(measured);
    }
  });
});

describe('conversions of growth', () => {
  it.each([
    // Juneja et al. 2001 and Juneja & Marks 2002, abstracts: relative growth; tenfolds derived
    [3.17, 0.5011, true],
    [8.5, 0.9294, true],
    [9.4, 0.9731, true],
    [21.3, 1.328, false],
  ])('reads a relative growth of %f as %f tenfolds (published)', (relative, logs, meets) => {
    expect(Math.abs(logOfRelativeGrowth(relative) - logs)).toBeLessThan(0.001);
    // 9 CFR 318.17(a)(2): no more than one tenfold
    expect(logOfRelativeGrowth(relative) <= 1).toBe(meets);
  });

  it('carries a lag in generations to h0, hours, Q0 and α0 (derived)', () => {
    // 8.068 generations, Juneja et al. 2001 (from memory), at 4 per hour
    const work = workOfGenerations(8.068);
    near(work, 5.592, 0.001);
    near(lagH(work, 4), 1.398, 0.001);
    near(physiologicalState(work), 0.00374, 0.001);
    near(readyFraction(work), 0.003726, 0.001);
  });
});

describe('Listeria in the refrigerator by the risk assessment of 2003', () => {
  it.each([
    // FDA/FSIS 2003, appendix 8, table 1: printed to three decimals
    [4, 2.1, 28, 0.107],
    [8, 5.4, 21, 0.116],
    [10, 3.5, 9, 0.119],
    [4, 1, 10, 0.142],
    [5, 4, 27.0833, 0.148],
    [10, 3.25, 10, 0.099],
  ])('brings %f °C, %f log in %f days to %f a day at 5 °C (published)', (tempC, logs, days, printed) => {
    published({
      what: `Listeria: ${logs} log in ${Math.round(days)} days at ${tempC} °C, brought to a day at 5 °C`,
      sourceId: 'fda-fsis-listeria-2003',
      cited: 'FDA/FSIS 2003, appendix 8, table 1',
      kind: 'printed',
      theirs: printed,
      ours: logsPerDayAt5C(tempC, logs, days) ?? Number.NaN,
      unit: 'log a day',
      within: 0.0006,
    });
  });

  it.each([
    // derived from 0.252 a day at 5 °C for pâté and meat spreads, FDA/FSIS 2003 (from memory)
    [2, 0.06672, 29.97],
    [4, 0.177, 11.3],
    [5, 0.252, 7.937],
    [7, 0.4415, 4.53],
    [8, 0.556, 3.597],
  ])('grows pâté at %f °C by %f a day, a hundredfold in %f days (derived)', (tempC, perDay, days) => {
    const pate = LISTERIA_GROUPS.find(({ id }) => id === 'pate')?.at5CLogsPerDay ?? Number.NaN;
    near(refrigeratorLogsPerDay(tempC, pate) ?? Number.NaN, perDay, 0.001);
    near(daysToHundredfold(tempC, pate) ?? Number.NaN, days, 0.001);
    const week = listeriaGrowth('pate', [{ tempC, timeMin: 7 * 1440 }]);
    near(week.log10 ?? Number.NaN, 7 * perDay, 0.001);
  });
});

describe('product factors of Mejlholm and Dalgaard', () => {
  const at = (factors: ProductFactors, tempC: number, over: Record<string, number> = {}) => {
    const product = { waterActivity: 0.975, ph: 6.3, nitritePpm: 60, lacticMM: 0, ...over };
    const rate = productRate(factors, { tempC, ...product });
    if (rate === null) throw new Error(`${tempC} °C is outside the range`);
    return rate;
  };

  it.each([
    // derived from the parameters of 2009 (from memory)
    [5, { nitritePpm: 0 }, 0.02135, 0.3003, 8.987],
    [5, {}, 0.01769, 0.3114, 10.85],
    [4, { waterActivity: 0.97, ph: 6, lacticMM: 0.5 }, 0.01005, 0.3784, 19.1],
  ])('grows Listeria at %f °C in %o (derived)', (tempC, over, wanted, psi, days) => {
    const rate = at(LISTERIA_2009, tempC, over);
    near(rate.withoutInteractionPerH, wanted, 0.001);
    near(rate.psi, psi, 0.001);
    near(rate.perH, wanted, 0.001);
    near((2 * Math.LN10) / rate.perH / 24, days, 0.001);
  });

  it('comes within half a log of what was measured in cooked ham at 7 °C (published)', () => {
    // Uyttendaele 2004, tabulated in Ital. J. Food Saf. 2014;3:4518: +2.0 log in 5 days; the model's 1.731 is derived
    const { perH } = at(LISTERIA_2009, 7, { ph: 6.2, nitritePpm: 0 });
    near(perH, 0.03322, 0.001);
    const grown = grow({ log10Count: 0, work: 0 }, perH * 5 * 24, 8).log10Count;
    near(grown, 1.731, 0.001);
    published({
      what: 'Listeria in cooked ham, five days at 7 °C',
      cited: 'Uyttendaele 2004, tabulated in Ital. J. Food Saf. 2014;3:4518',
      kind: 'measured',
      theirs: 2.0,
      ours: grown,
      unit: 'log',
      within: 0.5,
      note: 'Below what was measured: the page says so beside the figure.',
    });
  });

  it('counts ten days of 20 h at 4 °C and 4 h at 10 °C stay by stay, not by their mean (derived)', () => {
    const perDay = 20 * at(LISTERIA_2009, 4).perH + 4 * at(LISTERIA_2009, 10).perH;
    near(10 * perDay, 4.592, 0.002);
    const grown = (integral: number, work: number) => grow({ log10Count: 0, work }, integral, 8).log10Count;
    near(grown(10 * perDay, 0), 1.994, 0.002);
    near(grown(10 * perDay, workOfGenerations(4.5)), 0.7257, 0.002);
    near(grown(240 * at(LISTERIA_2009, 5).perH, 0), 1.844, 0.002);
  });

  it.each([
    // derived from the parameters of 2013 (from memory); the end point of 10^7 is published
    [4, 0.03444, 11.14],
    [8, 0.07066, 5.431],
  ])('brings lactic bacteria at %f °C from 10^3 to 10^7 in %f 1/h (derived)', (tempC, perH, days) => {
    const rate = at(LACTIC_2013, tempC, { ph: 6.2 }).perH;
    near(rate, perH, 0.001);
    near((4 * Math.LN10) / rate / 24, days, 0.001);
  });

  it('tells nothing outside the temperatures it was made for', () => {
    const product = { waterActivity: 0.975, ph: 6.3, nitritePpm: 0, lacticMM: 0 };
    for (const tempC of [1.9, 25.1, Number.NaN])
      expect(productRate(LISTERIA_2009, { tempC, ...product })).toBeNull();
  });
});

describe('square-root line with a warm end', () => {
  it.each([
    // Lactobacillus plantarum, Zwietering et al. 1994, rates printed in the same secondary text
    [5, 0.0043],
    [10, 0.0667],
    [15, 0.203],
    [20, 0.4121],
    [25, 0.6882],
    [30, 1.0035],
    [35, 1.2373],
    [40, 0.9633],
  ])('is at %f °C %f 1/h (published, secondary)', (tempC, printed) => {
    const line = { slope: 0.0385, bend: 0.247, minC: 3.29, maxC: 44.8 };
    published({
      what: `Growth rate of Lactobacillus plantarum at ${tempC} °C, square-root line with a warm end`,
      cited: 'Zwietering et al. 1994, rates as printed in a secondary text',
      kind: 'printed',
      theirs: printed,
      ours: squareRootRatePerH(tempC, line),
      unit: '1/h',
      within: 0.0001,
    });
  });
});

listsItsChecks('growth');
