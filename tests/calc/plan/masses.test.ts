import { remainingFraction } from '@larderwright/calc/formula';
import {
  comeUpForThickness,
  flowFromFill,
  flowFromFinished,
  flowFromServed,
  type Losses,
  loadOf,
  type MassFlow,
  mouldsForFill,
  usualCookLoss,
} from '@larderwright/calc/plan';
import { cutSlices } from '@larderwright/calc/slicing';
import { purchaseG, trimYield } from '@larderwright/calc/yield';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const USUAL: Losses = { testG: 50, residueFraction: 0.02, cookLossFraction: 0.08, endLossFraction: 0.03 };

function flow(of: MassFlow | null): MassFlow {
  if (!of) throw new Error('no flow');
  return of;
}

describe('masses from the plate back to the bowl', () => {
  it('of 40 portions of 70 g take 3,251.6 g of mix', () => {
    // 2,800 ÷ 0.97 = 2,886.60; ÷ 0.92 = 3,137.606; ÷ 0.98 = 3,201.64; + 50 = 3,251.64 g. Common practice; derived.
    const { finishedG, fillG, mixG, servableG } = flow(flowFromServed(2800, USUAL));
    expect(finishedG).toBeCloseTo(2886.598, 3);
    expect(fillG).toBeCloseTo(3137.606, 3);
    expect(mixG).toBeCloseTo(3251.639, 3);
    expect(servableG).toBeCloseTo(2800, 9);
  });

  it('Losses multiply, they are never added: 0.92 × 0.97 × 0.98 leaves 87.5 %, not 87 %', () => {
    // Common practice; derived: 0.874552.
    const { mixG, servableG } = flow(flowFromServed(1000, { ...USUAL, testG: 0 }));
    expect(servableG / mixG).toBeCloseTo(0.874552, 9);
    expect(servableG / mixG).toBeCloseTo(remainingFraction([0.08, 0.03, 0.02]) ?? Number.NaN, 12);
    expect(mixG).not.toBeCloseTo(1000 / 0.87, 0);
  });

  it('Every share is of what was there before its step, so its place counts', () => {
    // The same 8 % is 80 g of 1,000 g of fill and 78.4 g of the 980 g left of 1,000 g of mix. Derived.
    expect(flow(flowFromFill(1000, USUAL)).cookLossG).toBeCloseTo(80, 9);
    expect(flow(flowFromFill(980, USUAL)).cookLossG).toBeCloseTo(78.4, 9);
    expect(flow(flowFromFill(1000, { ...USUAL, testG: 500 })).residueG).toBeCloseTo(20.408, 3);
  });

  it('of two terrines of 1,860 g: 94 % of 3,720 g is 3,497 g', () => {
    // Invented batch of the country terrine of venison; 3,496.8 derived.
    expect(flow(flowFromFill(3720, { ...USUAL, cookLossFraction: 0.06 })).finishedG).toBeCloseTo(3496.8, 6);
  });

  it.each<Partial<Losses>>([
    { cookLossFraction: 1 },
    { cookLossFraction: -0.1 },
    { endLossFraction: Number.NaN },
    { residueFraction: Number.POSITIVE_INFINITY },
    { testG: -1 },
    { testG: Number.NaN },
  ])('are unknown for losses that are none: %o', (change) => {
    expect(flowFromServed(1000, { ...USUAL, ...change })).toBe(null);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('are unknown for %d g', (massG) => {
    expect([
      flowFromServed(massG, USUAL),
      flowFromFinished(massG, USUAL),
      flowFromFill(massG, USUAL),
    ]).toEqual([null, null, null]);
  });

  it('mass is conserved to 1 mg through trim, scale, cook and slice', () => {
    const share = (max: number) => fc.integer({ min: 0, max }).map((n) => n / 1000);
    fc.assert(
      fc.property(
        fc.record({
          servedG: fc.integer({ min: 100, max: 500_000 }),
          yieldFraction: fc.integer({ min: 300, max: 1000 }).map((n) => n / 1000),
          shares: fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 1, maxLength: 20 }),
          cut: fc.record({
            lengthMm: fc.integer({ min: 100, max: 400 }),
            thicknessMm: fc.integer({ min: 1, max: 30 }),
          }),
          losses: fc.record({
            testG: fc.integer({ min: 0, max: 200 }),
            residueFraction: share(50),
            cookLossFraction: share(450),
            endLossFraction: share(100),
          }),
        }),
        ({ servedG, yieldFraction, shares, cut, losses }) => {
          const f = flow(flowFromServed(servedG, losses));
          const within = (parts: readonly number[], whole: number) =>
            expect(Math.abs(parts.reduce((sum, part) => sum + part, 0) - whole)).toBeLessThan(1e-3);
          // Every leg is closed, and all that leaves is what went in.
          within([f.testG, f.residueG, f.fillG], f.mixG);
          within([f.cookLossG, f.finishedG], f.fillG);
          within([f.endLossG, f.servableG], f.finishedG);
          within([f.testG, f.residueG, f.cookLossG, f.endLossG, servedG], f.mixG);
          // The formula scaled to the mix is the mix.
          const total = shares.reduce((sum, one) => sum + one, 0);
          const scaled = shares.map((one) => one * (f.mixG / total));
          within(scaled, f.mixG);
          // What is bought is what goes in and what is trimmed away.
          const bought = purchaseG(f.mixG, yieldFraction) ?? Number.NaN;
          const trimmed = trimYield(bought, null, [{ role: 'usable', massG: f.mixG, valuePerKg: null }]);
          within([f.mixG, trimmed.unaccountedG ?? Number.NaN], bought);
          expect(trimmed.usableFraction).toBeCloseTo(yieldFraction, 9);
          // The finished piece cut up is the finished piece.
          const c = cutSlices({ ...cut, massG: f.finishedG, endTrimMm: 10, kerfMm: 0.5 });
          if (c) within([c.slicesG, c.endsG, c.kerfG, c.restG], f.finishedG);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('moulds for a fill', () => {
  it('are rounded up, with the last one told', () => {
    expect(mouldsForFill(4000, 1862)).toEqual({
      count: 3,
      emptyG: expect.closeTo(1586, 9),
      lastFraction: expect.closeTo(0.1482, 4),
    });
    expect(mouldsForFill(3724, 1862)).toMatchObject({ count: 2, lastFraction: 1 });
    // 0.3 ÷ 0.1 is a hair over 3 in binary.
    expect(mouldsForFill(0.3, 0.1)?.count).toBe(3);
  });

  it.each([
    [0, 100],
    [100, 0],
    [Number.NaN, 100],
    [100, Number.NaN],
    [Number.POSITIVE_INFINITY, 100],
  ])('of %d g by %d g are unknown', (fill, per) => expect(mouldsForFill(fill, per)).toBe(null));
});

describe('a load', () => {
  it('is over its capacity, exactly full, or unknown', () => {
    expect(loadOf(12_000, 10_000)).toEqual({ load: 12_000, capacity: 10_000, over: true, runs: 2 });
    expect(loadOf(10_000, 10_000)).toMatchObject({ over: false, runs: 1 });
    expect(loadOf(10_000, null)).toMatchObject({ over: false, runs: null });
    expect(loadOf(10, 0)).toMatchObject({ over: true, runs: null });
    expect(loadOf(null, 10)).toBe(null);
  });
});

describe('time to heat another mould', () => {
  it('Follows the smaller side nearly squared, not the weight: 60 to 80 mm takes 1.54 to 1.78 times as long', () => {
    // Heat conduction: (80 ÷ 60)² = 1.78; experience with terrines: 1.6 to 1.8 (common practice, no source).
    expect(comeUpForThickness(100, 60, 80)).toEqual({
      leastMin: expect.closeTo(153.96, 2),
      mostMin: expect.closeTo(177.78, 2),
    });
  });

  it('holds an invented parfait: a card of 90 min for 60 mm, about 138 min found at 80 mm', () => {
    // Invented batch. 90 × (80 ÷ 60)² = 160 derived.
    const band = comeUpForThickness(90, 60, 80);
    expect(band?.leastMin).toBeLessThan(139);
    expect(band?.mostMin).toBeCloseTo(160, 9);
  });

  it('turns round for a thinner mould and is unknown for nonsense', () => {
    const band = comeUpForThickness(100, 80, 60);
    expect(band?.leastMin).toBeCloseTo(56.25, 9);
    expect(band?.mostMin).toBeCloseTo(64.95, 2);
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(comeUpForThickness(bad, 60, 80)).toBe(null);
      expect(comeUpForThickness(90, bad, 80)).toBe(null);
      expect(comeUpForThickness(90, 60, bad)).toBe(null);
    }
  });
});

it('usual losses are those of the family, or none', () => {
  // Common practice, no source.
  expect(usualCookLoss('country-terrine')).toEqual({ min: 0.06, max: 0.12 });
  expect(usualCookLoss('rillettes')).toEqual({ min: 0.3, max: 0.45 });
  expect(usualCookLoss('toString')).toBe(null);
  expect(usualCookLoss(null)).toBe(null);
});
