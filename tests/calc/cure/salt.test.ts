import { nitriteCeilingOfSalt, saltAndCureForTarget, saltToRaise } from '@larderwright/calc/cure';
import { saltOnWaterFraction } from '@larderwright/calc/formula';
import { describe, expect, test } from 'vitest';

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
  test.each([
    [1.7, 60, 2.76],
    [1.7, 45, 3.64],
  ])('%f %% salt with %f %% water is %f %% on the water phase (derived)', (salt, water, expected) => {
    expect((saltOnWaterFraction(salt, water) ?? Number.NaN) * 100).toBeCloseTo(expected, 2);
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
