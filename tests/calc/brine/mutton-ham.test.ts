import { newBrineSlice } from '@larderwright/calc/brine';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { pack, run } from './brines.ts';

// An invented demo; every figure beside it is arithmetic on its weights (derived).
describe('a mutton ham, injected and covered', () => {
  const { values, verdict, ids } = run();

  test('is weighed as its sheet says: cure 6.9, salt 79.9, sugar 36, erythorbate 1.3 g', () => {
    expect(values.inUse).toMatchObject({
      curingSaltG: 6.9,
      plainSaltG: 79.9,
      sugarG: 36,
      acceleratorG: 1.3,
      phosphateG: 0,
      waterG: 1200,
    });
    const dose = values.recipe?.dose;
    expect(dose?.ok && dose.exactG).toBeCloseTo(6.912, 9);
  });

  test('holds 86.4 g of salt, 2.40 % of meat and water, in a brine of 1,323 to 1,324 g at 6.5 %', () => {
    expect(values.saltG).toBeCloseTo(86.37, 2);
    expect((values.saltG ?? 0) / 3600).toBeCloseTo(0.024, 4);
    expect(values.pickleG).toBeCloseTo(1324.1, 6);
    expect(values.brineSaltFraction).toBeCloseTo(0.065, 3);
    expect(values.strength?.salometer).toBeCloseTo(24.7, 1);
  });

  test('comes to 2.87 % salt on the water, 51 g of it in the meat, 2.1 %', () => {
    expect(values.salt?.waterPhaseFraction).toBeCloseTo(0.0287, 4);
    expect(values.salt?.saltInMeat).toBeCloseTo(51, 0);
    expect(values.salt?.saltOnMeatFraction).toBeCloseTo(0.021, 3);
  });

  test('has 116 mg/kg on everything in the bucket, 120 on meat and water, 180 if all of it went in', () => {
    expect(values.nitritePpmAll).toBeCloseTo(116, 0);
    expect(values.nitritePpmMeatAndWater).toBeCloseTo(119.8, 1);
    expect(values.immersion?.worstPpm).toBeCloseTo(179.7, 1);
    expect(values.immersion?.equilibriumPpm).toBeCloseTo(values.nitritePpmAll ?? 0, 9);
  });

  test('is within the federal 200 even at its worst, so no counting need be chosen', () => {
    expect(verdict('nitrite')).toMatchObject({
      state: 'pass',
      basis: 'us-9-cfr-424-21-c',
      mark: 'confirmed',
    });
    expect(verdict('nitrite')?.params.highestPpm).toBeCloseTo(179.7, 1);
    // 1.3 g on 2.4 kg is 541.7 mg/kg at worst, under ⅞ oz to 100 lb (9 CFR 424.21(c)).
    expect(verdict('accelerator')).toMatchObject({ state: 'pass' });
    expect(verdict('nitrate')).toMatchObject({ state: 'pass' });
  });

  test('takes 192 g of the brine by needle, and ten days of turning', () => {
    expect(values.injectG).toBeCloseTo(192, 9);
    expect(values.turnOn).toHaveLength(10);
    expect(values.readyFrom).toBe('2026-11-12');
    expect(values.reachesCore).toBe(true);
    expect(ids).not.toContain('brine.core-uncured');
  });

  test('without the needle its core is uncured, and nothing says that it is reached', () => {
    const soaked = run({ method: 'equilibrium' });
    expect(soaked.ids).toContain('brine.core-uncured');
    expect(soaked.ids).toContain('brine.days-short');
    expect(soaked.values.reachesCore).toBeNull();
    // Derived: diffusion to the middle of 110 mm takes many weeks.
    expect(soaked.values.time.diffusionDays?.fast).toBeGreaterThan(60);
  });

  // Derived: 116 and 180 mg/kg of sodium nitrite are 77 and 120 as ion; the limit of 80 is from memory.
  test('under the European Union the same weights cannot be told: 77 as ion if even, 120 if all went in', () => {
    const grams = (text: string) => enteredEntry(text, 'g');
    const actual = { ...newBrineSlice().actual, curingSalt: grams('6.9'), salt: grams('79.9') };
    const eu = run({ actual }, { ruleSetId: 'european-union-2025' });
    expect(eu.verdict('nitrite')).toMatchObject({
      state: 'cannot-tell',
      reason: 'brine.carried-unknown',
      mark: 'memory',
    });
    expect(eu.verdict('nitrite')?.params.ppm).toBeCloseTo(77.2, 1);
    expect(eu.verdict('nitrite')?.params.highestPpm).toBeCloseTo(119.8, 1);
    // And 120 as sodium nitrite is no dose there: the ceiling is 119.98.
    const dosed = run({}, { ruleSetId: 'european-union-2025' });
    expect(dosed.values.recipe?.dose).toMatchObject({ ok: false, reason: 'target-over-ceiling' });
    expect(dosed.values.inUse.curingSaltG).toBeNull();
  });

  test('a pack with nitrate is a stop in a cooked ham', () => {
    const nitrate = run({ pack: pack('6.25', '4') });
    expect(nitrate.ids).toContain('brine.nitrate-present');
    expect(nitrate.verdict('nitrate')).toMatchObject({ state: 'fail' });
  });
});
