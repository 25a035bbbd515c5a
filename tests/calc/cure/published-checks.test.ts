import {
  nitrateIonFromPotassiumNitrate,
  nitriteIonFromSodiumNitrite,
  nitritePpm,
  potassiumNitriteFromSodiumNitrite,
  sodiumNitriteFromNitriteIon,
} from '@larderwright/calc/cure';
import { saltOnWaterFraction } from '@larderwright/calc/formula';
import { describe, expect, test } from 'vitest';
import checks from '../../fixtures/cure-checks.json' with { type: 'json' };
import { listsItsChecks, publishedCase } from '../../tools/published.ts';

const compute: Record<string, (a: number, b: number) => number | null> = {
  nitritePpm,
  potassiumNitriteFromSodiumNitrite,
  nitriteIonFromSodiumNitrite,
  sodiumNitriteFromNitriteIon,
  nitrateIonFromPotassiumNitrate,
  // Grams of curing salt to the kilogram for a target in mg of sodium nitrite to the kilogram.
  curingSaltPerKg: (targetPpm, strength) => {
    const perKg = targetPpm / 1e3 / strength;
    expect(nitritePpm(perKg * strength, 1000)).toBeCloseTo(targetPpm, 9);
    return perKg;
  },
  waterPhaseSaltPercent: (salt, water) => (saltOnWaterFraction(salt, water) ?? Number.NaN) * 100,
};

describe('check cases, each with its source', () => {
  for (const check of checks) {
    test(`${check.id} ${check.task}: ${check.expected} ${check.unit} (${check.kind}; ${check.source})`, () => {
      const run = compute[check.compute];
      expect(run, check.compute).toBeDefined();
      const [a = Number.NaN, b = Number.NaN] = check.args;
      const got = run?.(a, b) ?? Number.NaN;
      expect(Math.abs(got - check.expected)).toBeLessThanOrEqual(check.tolerance);
      publishedCase(check, got);
    });
  }
});

listsItsChecks('cure');
