import {
  nitriteCeilingOfSalt,
  plainSaltToAdd,
  saltAndCureForTarget,
  saltToRaise,
  waterPhaseSaltFraction,
} from '@larderwright/calc/cure';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

describe('plain salt left to add', () => {
  test('makes the target a fraction of the final total, the added salt included (derived)', () => {
    const salt = plainSaltToAdd({ massWithoutPlainSaltG: 983, carriedSaltG: 0, targetFraction: 0.017 });
    expect(salt).toEqual({ ok: true, plainSaltG: expect.closeTo(17, 9) });
  });

  test('takes off what the curing salt brings: 6.25 % strength is 93.75 % salt (derived)', () => {
    const carriedSaltG = 5.4 * 0.9375 + 10.5;
    const salt = plainSaltToAdd({ massWithoutPlainSaltG: 3802.6, carriedSaltG, targetFraction: 0.0164 });
    // 3802.6 g and what is added hold 1.64 % salt.
    expect(salt.ok && (salt.plainSaltG + carriedSaltG) / (3802.6 + salt.plainSaltG)).toBeCloseTo(0.0164, 12);
  });

  test('is refused when the ingredients already bring more, and says how much too much', () => {
    const salt = plainSaltToAdd({ massWithoutPlainSaltG: 1000, carriedSaltG: 20, targetFraction: 0.017 });
    expect(salt).toEqual({
      ok: false,
      reason: 'carried-exceeds-target',
      excessG: expect.closeTo(3, 9),
      carriedFraction: 0.02,
    });
  });

  test('is nothing when the ingredients bring exactly the target', () => {
    expect(plainSaltToAdd({ massWithoutPlainSaltG: 1000, carriedSaltG: 17, targetFraction: 0.017 })).toEqual({
      ok: true,
      plainSaltG: 0,
    });
  });

  test('refuses unusable numbers', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(plainSaltToAdd({ massWithoutPlainSaltG: bad, carriedSaltG: 1, targetFraction: 0.017 }).ok).toBe(
        false,
      );
      expect(
        plainSaltToAdd({ massWithoutPlainSaltG: 1000, carriedSaltG: bad, targetFraction: 0.017 }).ok,
      ).toBe(false);
      expect(plainSaltToAdd({ massWithoutPlainSaltG: 1000, carriedSaltG: 1, targetFraction: bad }).ok).toBe(
        false,
      );
    }
    expect(plainSaltToAdd({ massWithoutPlainSaltG: 1000, carriedSaltG: 1, targetFraction: 1 }).ok).toBe(
      false,
    );
  });

  test('whenever given, the mix ends at the target', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        fc.double({ min: 0.005, max: 0.05, noNaN: true }),
        (massG, carriedFraction, targetFraction) => {
          const carriedSaltG = carriedFraction * massG;
          const salt = plainSaltToAdd({ massWithoutPlainSaltG: massG, carriedSaltG, targetFraction });
          if (!salt.ok) {
            expect(carriedFraction).toBeGreaterThan(targetFraction);
            return;
          }
          expect((carriedSaltG + salt.plainSaltG) / (massG + salt.plainSaltG)).toBeCloseTo(targetFraction, 9);
        },
      ),
    );
  });
});

describe('lifting a finished mix', () => {
  test('3,600 g from 1.50 % to 1.65 % takes 5.49 g on the new total and 5.40 g on the old (derived)', () => {
    expect(saltToRaise(3600, 0.015, 0.0165, 'new-total')).toBeCloseTo(5.49, 2);
    expect(saltToRaise(3600, 0.015, 0.0165, 'old-total')).toBeCloseTo(5.4, 9);
  });

  test('no salt lowers a salt content, and unusable numbers give null', () => {
    expect(saltToRaise(3600, 0.018, 0.0165, 'new-total')).toBeNull();
    expect(saltToRaise(Number.NaN, 0.015, 0.0165, 'new-total')).toBeNull();
    expect(saltToRaise(0, 0.015, 0.0165, 'new-total')).toBeNull();
    expect(saltToRaise(3600, 0.015, 1, 'new-total')).toBeNull();
  });
});

describe('salt on the water phase', () => {
  test('1.7 % salt is 2.76 % at 60 % water and 3.64 % at 45 % (derived)', () => {
    expect((waterPhaseSaltFraction(1.7, 60) ?? Number.NaN) * 100).toBeCloseTo(2.76, 2);
    expect((waterPhaseSaltFraction(1.7, 45) ?? Number.NaN) * 100).toBeCloseTo(3.64, 2);
  });

  test('is unknown without salt and water, and for unusable numbers', () => {
    expect(waterPhaseSaltFraction(0, 0)).toBeNull();
    expect(waterPhaseSaltFraction(Number.NaN, 60)).toBeNull();
    expect(waterPhaseSaltFraction(1, Number.POSITIVE_INFINITY)).toBeNull();
    expect(waterPhaseSaltFraction(-1, 60)).toBeNull();
  });
});

describe('a weak curing salt', () => {
  test('caps the nitrite at the salt level: 0.6 % strength and 1.7 % salt give 102.6 mg/kg (derived)', () => {
    expect(nitriteCeilingOfSalt(0.017, 0.006, 0.994)).toBeCloseTo((0.017 / 0.994) * 0.006 * 1e6, 9);
    expect(nitriteCeilingOfSalt(0.017, 0.006, 0.994)).toBeCloseTo(102.6, 1);
    expect(nitriteCeilingOfSalt(0.017, 0.006, 0)).toBeNull();
    expect(nitriteCeilingOfSalt(-0.017, 0.006, 0.994)).toBeNull();
  });

  test('shares one total with the plain salt: both targets are met at once', () => {
    const open = {
      otherMassG: 982,
      carriedSaltG: 1.5,
      saltTargetFraction: 0.018,
      nitriteTargetPpm: 90,
      nitriteFraction: 0.006,
      saltFraction: 0.994,
    };
    const both = saltAndCureForTarget(open);
    const cureG = both?.curingSaltG ?? Number.NaN;
    const plainG = both?.plainSaltG ?? Number.NaN;
    const totalG = open.otherMassG + cureG + plainG;
    expect((cureG * 0.006 * 1e6) / totalG).toBeCloseTo(90, 6);
    expect((1.5 + cureG * 0.994 + plainG) / totalG).toBeCloseTo(0.018, 9);
  });

  test('cannot give a nitrite that needs more salt than the target', () => {
    expect(
      saltAndCureForTarget({
        otherMassG: 982,
        carriedSaltG: 0,
        saltTargetFraction: 0.017,
        nitriteTargetPpm: 120,
        nitriteFraction: 0.006,
        saltFraction: 0.994,
      }),
    ).toBeNull();
  });
});
