import { type CuringSaltTarget, curingSaltForTarget } from '@larderwright/calc/cure';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const onBlock: CuringSaltTarget = {
  targetPpm: 120,
  basisMassG: 2800,
  countsInBasis: false,
  nitriteFraction: 0.0625,
  readabilityG: 0.1,
  ceilingPpm: 156.25,
};

function given(target: CuringSaltTarget) {
  const dose = curingSaltForTarget(target);
  if (!dose.ok) throw new Error(`refused: ${dose.reason}`);
  return dose;
}

function reason(target: CuringSaltTarget) {
  const dose = curingSaltForTarget(target);
  return dose.ok ? 'given' : dose.reason;
}

describe('curing salt for a target', () => {
  test('120 mg/kg on 2.800 kg with 6.25 %: 5.376 g, weighed 5.4 g, and 120.5 mg/kg from the weighed amount (derived)', () => {
    const dose = given(onBlock);
    expect(dose.exactG).toBeCloseTo(5.376, 9);
    expect(dose.doseG).toBe(5.4);
    expect(dose.ppm).toBeCloseTo(120.536, 3);
  });

  test('156 mg/kg on 10 kg with 6.25 %: 24.96 g (derived)', () => {
    const dose = given({ ...onBlock, targetPpm: 156, basisMassG: 10_000 });
    expect(dose.exactG).toBeCloseTo(24.96, 9);
    expect(dose.doseG).toBe(25);
    expect(dose.ppm).toBe(156.25);
  });

  test.each([
    [0.006, 20],
    [0.005, 24],
  ])('120 mg/kg on a kilogram with a %f salt: %f g (derived)', (nitriteFraction, expected) => {
    expect(given({ ...onBlock, basisMassG: 1000, nitriteFraction }).exactG).toBeCloseTo(expected, 9);
  });

  test('on everything in the bowl the curing salt is part of what it is counted on', () => {
    const dose = given({ ...onBlock, basisMassG: 980, countsInBasis: true, nitriteFraction: 0.006 });
    expect((dose.exactG * 0.006 * 1e6) / (980 + dose.exactG)).toBeCloseTo(120, 9);
  });

  test('rounds down where the nearest step would break the ceiling', () => {
    const dose = given({ ...onBlock, targetPpm: 156.25, basisMassG: 2821 });
    expect(dose.exactG).toBeCloseTo(7.0525, 9);
    expect(dose.doseG).toBe(7);
    expect(given({ ...onBlock, targetPpm: 156, basisMassG: 2830 }).doseG).toBe(7);
  });

  test('rounds down always when the rule set names no ceiling', () => {
    expect(given({ ...onBlock, ceilingPpm: null }).doseG).toBe(5.3);
  });

  test('counts other nitrite against the ceiling, not toward the target', () => {
    const dose = given({ ...onBlock, otherNitriteG: 0.036 });
    expect(dose.doseG).toBe(5.4);
    expect(dose.allSourcesPpm).toBeCloseTo(133.4, 1);
    expect(reason({ ...onBlock, targetPpm: 150, otherNitriteG: 0.1 })).toBe('other-sources-over-ceiling');
  });

  test('5 g on a scale that shows whole grams is refused: fewer than 50 steps, ± 10 % (common practice, no source)', () => {
    const dose = curingSaltForTarget({ ...onBlock, basisMassG: 2604, readabilityG: 1 });
    expect(dose).toMatchObject({ ok: false, reason: 'too-small-to-weigh', leastG: 50 });
  });

  test('a target above the ceiling is refused', () => {
    expect(reason({ ...onBlock, targetPpm: 157 })).toBe('target-over-ceiling');
  });

  test('a curing salt weaker than the target is refused', () => {
    expect(reason({ ...onBlock, countsInBasis: true, nitriteFraction: 0.0001 })).toBe(
      'strength-below-target',
    );
  });

  test('an unusable number is refused, never computed with', () => {
    for (const bad of [Number.NaN, 0, -0, -1, Number.POSITIVE_INFINITY]) {
      for (const key of ['targetPpm', 'basisMassG', 'nitriteFraction', 'readabilityG'] as const) {
        expect(reason({ ...onBlock, [key]: bad }), `${key} ${bad}`).toBe('unusable-input');
      }
    }
    expect(reason({ ...onBlock, nitriteFraction: 6.25 })).toBe('unusable-input');
    expect(reason({ ...onBlock, ceilingPpm: Number.NaN })).toBe('unusable-input');
    expect(reason({ ...onBlock, otherNitriteG: Number.NaN })).toBe('unusable-input');
  });

  test('whatever is asked, a given dose is whole steps, at least 50 of them, and within the ceiling from all sources', () => {
    const anyTarget = fc.record({
      targetPpm: fc.double({ min: 1, max: 200, noNaN: true }),
      basisMassG: fc.double({ min: 100, max: 50_000, noNaN: true }),
      countsInBasis: fc.boolean(),
      nitriteFraction: fc.double({ min: 0.004, max: 0.1, noNaN: true }),
      readabilityG: fc.constantFrom(0.01, 0.1, 0.5, 1),
      ceilingPpm: fc.constantFrom(119.98, 150, 156.25, 200),
      otherNitriteG: fc.double({ min: 0, max: 0.2, noNaN: true }),
    });
    fc.assert(
      fc.property(anyTarget, (target) => {
        const dose = curingSaltForTarget(target);
        if (!dose.ok) return;
        const steps = dose.doseG / target.readabilityG;
        expect(steps).toBeCloseTo(Math.round(steps), 6);
        expect(steps).toBeGreaterThan(49.999);
        expect(dose.allSourcesPpm).toBeLessThanOrEqual(target.ceilingPpm);
        expect(dose.allSourcesPpm).toBeGreaterThanOrEqual(dose.ppm);
      }),
    );
  });
});
