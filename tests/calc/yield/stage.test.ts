import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import {
  newTrimPart,
  newYieldSlice,
  newYieldTest,
  newYieldTrial,
  type YieldTest,
  yieldStage,
} from '@larderwright/calc/yield';
import { describe, expect, it } from 'vitest';
import { yieldWords } from '../../../worksheets/words/yield.ts';

const PARTS = [
  newTrimPart('lean', 'Lean', 'usable'),
  { ...newTrimPart('fat', 'Fat', 'by-product'), value: enteredEntry('1,50', 'money') },
  newTrimPart('waste', 'Waste', 'waste'),
];

/** Trials as [bought kg, lean g, fat g, waste g]. */
function test(trials: readonly (readonly string[])[], change: Partial<YieldTest> = {}): YieldTest {
  return {
    ...newYieldTest('t1', 'x'),
    name: 'Pork shoulder',
    price: enteredEntry('6', 'money'),
    parts: PARTS,
    trials: trials.map(([bought = '', ...masses], index) => ({
      ...newYieldTrial(`r${index}`, PARTS),
      purchased: enteredEntry(bought, 'kg'),
      parts: Object.fromEntries(PARTS.map(({ id }, part) => [id, enteredEntry(masses[part] ?? '', 'g')])),
    })),
    ...change,
  };
}
const run = (of: YieldTest) => yieldStage({ tests: [of] });
const ids = (of: YieldTest) => run(of).findings.map(({ id }) => id);
const THREE = [
  ['10', '7000', '2000', '950'],
  ['10', '7200', '1800', '950'],
  ['10', '7400', '1600', '950'],
] as const;

describe('the stage of trim tests', () => {
  it('gives mean, spread and purchase from several trials', () => {
    const [result] = run(test(THREE, { needed: enteredEntry('36', 'kg') })).values.tests;
    expect(result?.usable).toMatchObject({ count: 3, mean: expect.closeTo(0.72, 12), min: 0.7, max: 0.74 });
    expect(result?.usable?.sampleSd).toBeCloseTo(0.02, 12);
    // 36 ÷ 0.72 = 50 kg; at the lowest yield 36 ÷ 0.70 = 51.43 kg. Derived.
    expect(result?.purchaseG).toBeCloseTo(50_000, 6);
    expect(result?.purchaseAtLowestG).toBeCloseTo(51_428.57, 2);
    expect(result?.parts[1]?.spread?.mean).toBeCloseTo(0.18, 12);
    expect(result?.costPerUsableKg?.count).toBe(3);
    expect(run(test(THREE)).findings).toEqual([]);
    expect(run(test(THREE)).missing).toEqual([]);
  });

  it('prices by the pound stand for both price and values', () => {
    const perLb = run(test([THREE[0]], { priceBasis: 'lb', price: enteredEntry('6', 'money') })).values
      .tests[0];
    // 6.00 a pound is 13.2277 a kilogram; (132.277 − 2 × 3.30693) ÷ 7 = 17.952. Derived.
    expect(perLb?.perKg).toBeCloseTo(13.22774, 5);
    expect(perLb?.costPerUsableKg?.mean).toBeCloseTo(17.95193, 4);
  });

  it('tells of more than 2 % unaccounted, but not of 2 % exactly', () => {
    expect(ids(test([['10', '7000', '2000', '790'], ...THREE]))).toEqual(['yield.unaccounted']);
    expect(ids(test([['10', '7000', '2000', '800'], ...THREE]))).toEqual([]);
  });

  it('tells of piles heavier than the purchase', () => {
    expect(ids(test([['10', '7000', '2000', '1001'], ...THREE]))).toEqual(['yield.more-than-bought']);
  });

  it('calls one trial no norm', () => {
    expect(ids(test([THREE[0]]))).toEqual(['yield.one-trial']);
  });

  it('tells of a yield outside what the kitchen calls usual, and of a range upside down', () => {
    const usual = (low: string, high: string) =>
      ids(test(THREE, { usualLow: enteredEntry(low, '%'), usualHigh: enteredEntry(high, '%') }));
    expect(usual('65', '75')).toEqual([]);
    expect(usual('72', '')).toEqual([]);
    expect(usual('73', '')).toEqual(['yield.outside-usual']);
    expect(usual('', '71')).toEqual(['yield.outside-usual']);
    expect(usual('75', '65')).toEqual(['yield.usual-reversed']);
  });

  it('doubts by-products worth more than the piece', () => {
    const dear = PARTS.map((part) =>
      part.id === 'fat' ? { ...part, value: enteredEntry('40', 'money') } : part,
    );
    expect(ids(test(THREE, { parts: dear })).filter((id) => id === 'yield.credit-over-cost')).toHaveLength(3);
  });

  it('asks for what is blank in a begun trial and for nothing in an untouched one', () => {
    expect(yieldStage({ tests: [newYieldTest('t', 'r')] }).missing).toEqual([]);
    const half = test([['10', '7000', '', '']], { price: blankEntry('money') });
    expect(run(half).missing).toEqual([
      { field: 'yield.tests.t1.trials.r0.parts.fat', neededFor: 'yield.unaccounted' },
      { field: 'yield.tests.t1.trials.r0.parts.waste', neededFor: 'yield.unaccounted' },
      { field: 'yield.tests.t1.price', neededFor: 'yield.cost' },
    ]);
    const noValue = {
      parts: [newTrimPart('lean', 'Lean', 'usable'), newTrimPart('fat', 'Fat', 'by-product')],
    };
    expect(run(test([['1', '700', '300']], noValue)).missing).toEqual([
      { field: 'yield.tests.t1.parts.fat.value', neededFor: 'yield.cost' },
    ]);
  });

  it('takes what cannot be read for unknown', () => {
    const [result] = run(
      test([
        ['-10', '7000', 'NaN', 'Infinity'],
        ['0', '1', '1', '1'],
      ]),
    ).values.tests;
    expect(result?.usable).toBe(null);
    expect(result?.unaccounted).toBe(null);
    expect(yieldStage(newYieldSlice()).values.tests).toEqual([]);
  });

  it('says every finding in a whole sentence', () => {
    const params = {
      name: 'Pork',
      trial: 1,
      unaccountedFraction: 0.03,
      unaccountedG: 30,
      limitFraction: 0.02,
      yieldFraction: 0.6,
      lowFraction: 0.65,
      highFraction: 0.75,
      creditMoney: 12,
    };
    for (const [id, say] of Object.entries(yieldWords)) {
      const { title, body } = say(params);
      expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\s{2,}/);
      expect(title.endsWith('.'), id).toBe(true);
    }
  });
});
