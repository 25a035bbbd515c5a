import { makeupOf, squareBlend } from '@larderwright/calc/blend';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const ask = (a: number, b: number, target: number, locked: { massG: number; fatFraction: number }[] = []) =>
  squareBlend({ totalG: 10_000, targetFatFraction: target, fatAFraction: a, fatBFraction: b, locked });

describe('the square', () => {
  it('of 3 % and 88 % to 25 % is 74.12 : 25.88', () => {
    // Common practice; figures derived: (88 − 25) ÷ (88 − 3).
    const square = ask(0.03, 0.88, 0.25);
    expect(square).toMatchObject({ ok: true, freeG: 10_000 });
    expect(square.ok && square.massAG).toBeCloseTo(7411.76, 2);
    expect(square.ok && square.massBG).toBeCloseTo(2588.24, 2);
  });

  it('of 20 % and 50 % to 15 % is refused, and says what the two reach', () => {
    // Derived: nothing between 20 and 50 is 15.
    expect(ask(0.2, 0.5, 0.15)).toEqual({
      ok: false,
      problem: 'out-of-reach',
      reach: { least: 0.2, most: 0.5 },
    });
  });

  it('takes the fat of fixed lines off first', () => {
    // 2 kg belly at 44 % brings 880 g; 28 % of 10 kg is 2,800 g; 1,920 g in 8 kg is 24 %; (88 − 24) ÷ 85 = 75.29 %. Derived.
    const square = ask(0.03, 0.88, 0.28, [{ massG: 2000, fatFraction: 0.44 }]);
    expect(square.ok && square.freeTargetFraction).toBeCloseTo(0.24, 12);
    expect(square.ok && square.massAG).toBeCloseTo(8000 * 0.752941, 1);
  });

  it('is refused beside fixed lines that alone pass the target', () => {
    const square = ask(0.03, 0.88, 0.05, [{ massG: 2000, fatFraction: 0.44 }]);
    expect(square).toMatchObject({ ok: false, problem: 'out-of-reach' });
    // (880 + 8,000 × 0.03) ÷ 10,000 = 11.2 %. Derived.
    expect(!square.ok && square.reach?.least).toBeCloseTo(0.112, 12);
  });

  it('is refused where fixed lines fill it, both are equally fat, or a number is none', () => {
    expect(ask(0.03, 0.88, 0.3, [{ massG: 10_000, fatFraction: 0.3 }])).toMatchObject({
      problem: 'locked-fill-it',
    });
    expect(ask(0.2, 0.2, 0.2)).toMatchObject({ problem: 'same-fat' });
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -0.1, 1.1]) {
      expect(ask(bad, 0.5, 0.3)).toMatchObject({ problem: 'unusable' });
      expect(ask(0.1, 0.5, bad)).toMatchObject({ problem: 'unusable' });
    }
    expect(ask(0.1, 0.5, 0.3, [{ massG: Number.NaN, fatFraction: 0.3 }])).toMatchObject({
      problem: 'unusable',
    });
    expect(
      squareBlend({ totalG: 0, targetFatFraction: 0.3, fatAFraction: 0.1, fatBFraction: 0.5, locked: [] }),
    ).toMatchObject({ problem: 'unusable' });
  });

  it('conserves mass to 1 mg and meets the target', () => {
    const fraction = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fraction,
        fraction,
        fraction,
        fraction,
        fc.integer({ min: 1, max: 9999 }),
        (a, b, t, f, lockedG) => {
          const locked = [{ massG: lockedG, fatFraction: f }];
          const square = ask(a, b, t, locked);
          if (!square.ok) return;
          expect(Math.abs(square.massAG + square.massBG + lockedG - 10_000)).toBeLessThan(1e-3);
          const fatG = square.massAG * a + square.massBG * b + lockedG * f;
          expect(Math.abs(fatG - t * 10_000)).toBeLessThan(1e-3);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('the make-up of a blend', () => {
  const lean = { water: 0.73, protein: 0.21, fat: 0.05, salt: 0.0015, liver: 0 };
  const fat = { water: 0.09, protein: 0.03, fat: 0.88, salt: 0.0005, liver: 0 };

  it('is Σ share × fraction, with its ratios', () => {
    const makeup = makeupOf([
      { fractions: lean, share: 0.75 },
      { fractions: fat, share: 0.25 },
    ]);
    // 0.75 × 5 + 0.25 × 88 = 25.75 %; protein 16.5 %, water 57 %. Derived.
    expect(makeup.fat).toBeCloseTo(0.2575, 12);
    expect(makeup.waterToProtein).toBeCloseTo(0.57 / 0.165, 12);
    expect(makeup.fatToProtein).toBeCloseTo(0.2575 / 0.165, 12);
  });

  it('is unknown where a used material is, known where it is not used', () => {
    const unknown = { ...lean, fat: null };
    expect(
      makeupOf([
        { fractions: unknown, share: 0.5 },
        { fractions: lean, share: 0.5 },
      ]).fat,
    ).toBe(null);
    expect(
      makeupOf([
        { fractions: unknown, share: 0 },
        { fractions: lean, share: 1 },
      ]).fat,
    ).toBe(0.05);
    expect(makeupOf([]).fat).toBe(null);
  });
});
