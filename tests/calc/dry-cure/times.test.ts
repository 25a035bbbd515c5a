import {
  COUNTRY_HAM_DAYS,
  CURING_TIME_RULES,
  cureTime,
  curingDays,
  dateAfter,
  diffusionDays,
  massAfterLoss,
  nitriteHalfLifeHours,
  OTHER_CURING_HABITS,
  saltAfterLoss,
  skinFreeMass,
  slabCentreFraction,
  slabFourierAtCentre,
  slabMeanFraction,
  turnDates,
} from '@larderwright/calc/dry-cure';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

describe('salt in a slab', () => {
  // Derived from Crank's series (from memory): 2 in, 14 days, 3e-10 m²/s is Dt/L² = 0.56, middle near 68 %.
  test('after seven days an inch the middle of two inches stands at 68 %', () => {
    const fourier = (3e-10 * 14 * 86_400) / 0.0254 ** 2;
    expect(fourier).toBeCloseTo(0.56, 2);
    expect(slabCentreFraction(fourier)).toBeCloseTo(0.68, 2);
  });

  // Derived: what the trade writes as 0.85·(t/2)²/D is 90 % of the uptake, not of the middle.
  test('0.85 brings the mean to 90 % and the middle to 84 %; the middle needs 1.031', () => {
    expect(slabMeanFraction(0.85)).toBeCloseTo(0.9, 2);
    expect(slabCentreFraction(0.85)).toBeCloseTo(0.844, 3);
    expect(slabFourierAtCentre(0.9)).toBeCloseTo(1.031, 3);
    expect(slabCentreFraction(slabFourierAtCentre(0.9) ?? 0)).toBeCloseTo(0.9, 4);
  });

  test('the middle lags the mean, both rise, and neither leaves 0 to 1', () => {
    const time = fc.double({ min: 0.001, max: 5, noNaN: true });
    fc.assert(
      fc.property(time, (fourier) => {
        const centre = slabCentreFraction(fourier) ?? Number.NaN;
        const mean = slabMeanFraction(fourier) ?? Number.NaN;
        expect(centre).toBeLessThanOrEqual(mean + 1e-9);
        expect(centre).toBeGreaterThanOrEqual(0);
        expect(mean).toBeLessThanOrEqual(1);
        expect(slabCentreFraction(fourier * 1.1)).toBeGreaterThanOrEqual(centre - 1e-9);
        expect(slabMeanFraction(fourier * 1.1)).toBeGreaterThanOrEqual(mean);
      }),
    );
    expect(slabCentreFraction(0)).toBe(0);
    expect(slabCentreFraction(-1)).toBeNull();
    expect(slabMeanFraction(Number.NaN)).toBeNull();
    expect(slabFourierAtCentre(0.1)).toBeNull();
  });

  test('twice the thickness takes four times as long', () => {
    expect(diffusionDays(100, 2e-10)).toBeCloseTo(4 * (diffusionDays(50, 2e-10) ?? 0), 9);
    expect(diffusionDays(50, 2e-10)).toBeCloseTo(37.3, 1);
    expect(diffusionDays(0, 2e-10)).toBeNull();
    expect(diffusionDays(50, Number.NaN)).toBeNull();
  });
});

describe('rules of curing time', () => {
  test('seven rules, each with a source and a mark', () => {
    expect(CURING_TIME_RULES).toHaveLength(7);
    expect(new Set(CURING_TIME_RULES.map(({ id }) => id)).size).toBe(7);
  });

  // Common practice, no source: a day to 6 mm and two more. From memory: seven days an inch.
  test('a day to 6 mm and two more; seven days an inch', () => {
    expect(curingDays('six-mm-a-day', 48)).toBeCloseTo(10, 9);
    expect(curingDays('seven-days-an-inch', 50.8)).toBeCloseTo(14, 9);
  });

  // 9 CFR 318.10(c)(3)(iv), 2015 ed.: 28 and 40 days at least. USDA farm pork text: 3.5 to 4 days a pound.
  test('small hams have least times; a pickle counts 3.5 to 4 days a pound', () => {
    expect(curingDays('ham-contact', 5000)).toBe(28);
    expect(curingDays('ham-contact-and-equalise', 5000)).toBe(40);
    expect(curingDays('sweet-pickle-short', 10 * 453.59237)).toBeCloseTo(35, 9);
  });

  // 9 CFR 319.106; Purdue 1919; USDA farm pork text.
  test('country ham 45 and 70 days, shoulder 25 and 50; thin sides 12 to 14; soak 2 minutes a day', () => {
    expect(COUNTRY_HAM_DAYS.ham).toEqual({ cureAndEqualise: 45, total: 70 });
    expect(COUNTRY_HAM_DAYS.shoulder).toEqual({ cureAndEqualise: 25, total: 50 });
    expect(OTHER_CURING_HABITS).toMatchObject({ thinSidesDays: [12, 14], soakMinutesPerDay: 2 });
  });

  test('the longer one is the guidance, in whole days upward, both rules and diffusion shown', () => {
    const time = cureTime({ thicknessMm: 50, massG: null, route: 'dry', isHam: false });
    expect(time.rules.map(({ ruleId }) => ruleId)).toEqual(['six-mm-a-day', 'seven-days-an-inch']);
    expect(time.guidanceDays).toEqual({ low: 15, high: 38 });
    const thin = cureTime({ thicknessMm: 15, massG: null, route: 'dry', isHam: false });
    // Diffusion alone would say two days; the rules are longer.
    expect(thin.guidanceDays?.low).toBe(5);
    expect(thin.rules[0]?.inRange).toBe(false);
  });

  test('guidance never falls as a piece grows thicker', () => {
    const of = (thicknessMm: number) =>
      cureTime({ thicknessMm, massG: null, route: 'dry', isHam: false }).guidanceDays;
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 200 }), fc.integer({ min: 1, max: 50 }), (mm, more) => {
        expect(of(mm + more)?.low).toBeGreaterThanOrEqual(of(mm)?.low ?? 0);
        expect(of(mm + more)?.high).toBeGreaterThanOrEqual(of(mm)?.high ?? 0);
      }),
    );
  });

  test('without a thickness there is no guidance', () => {
    const blank = cureTime({ thicknessMm: null, massG: null, route: 'dry', isHam: false });
    expect(blank).toEqual({ rules: [], diffusionDays: null, guidanceDays: null });
    expect(curingDays('six-mm-a-day', Number.NaN)).toBeNull();
  });
});

describe('dates, skin and loss', () => {
  test('bags are turned every day, over the end of a month and a leap day', () => {
    expect(turnDates('2026-02-27', 3)).toEqual(['2026-02-28', '2026-03-01', '2026-03-02']);
    expect(dateAfter('2028-02-28', 1)).toBe('2028-02-29');
    for (const bad of ['', '2026-02-30', '27.2.2026', '2026-2-7']) expect(turnDates(bad, 3)).toEqual([]);
    for (const bad of [0, -1, 2.5, Number.NaN, 1000]) expect(turnDates('2026-02-27', bad)).toEqual([]);
  });

  // FSIS Directive 7620.3: skin-free weight of a belly is 90 % of its weight with skin.
  test('skin is a tenth, and a weight without it outranks the estimate', () => {
    expect(skinFreeMass(null, 5000)).toEqual({ massG: 4500, isEstimated: true });
    expect(skinFreeMass(4600, 5000)).toEqual({ massG: 4600, isEstimated: false });
    expect(skinFreeMass(null, null)).toBeNull();
    expect(skinFreeMass(0, -5)).toBeNull();
  });

  // Derived: 3.0 % after 35 % loss is 4.62 %; 1.7 % after 10 % is 1.89 %.
  test('evaporation concentrates salt', () => {
    expect(saltAfterLoss(0.03, 0.35)).toBeCloseTo(0.0462, 4);
    expect(saltAfterLoss(0.017, 0.1)).toBeCloseTo(0.0189, 4);
    expect(massAfterLoss(2000, 0.35)).toBe(1300);
    for (const bad of [1, -0.1, Number.NaN]) {
      expect(saltAfterLoss(0.03, bad)).toBeNull();
      expect(massAfterLoss(2000, bad)).toBeNull();
    }
  });

  // Nordin 1969, from memory: doubles per +0.86 pH and halves per +12 °C.
  test('nitrite lasts longer in the cold and at a higher pH', () => {
    const at = (tempC: number, ph: number) => nitriteHalfLifeHours(tempC, ph) ?? Number.NaN;
    expect(at(4, 6.66) / at(4, 5.8)).toBeCloseTo(2, 1);
    expect(at(4, 5.8) / at(16, 5.8)).toBeCloseTo(2, 1);
    expect(nitriteHalfLifeHours(Number.NaN, 6)).toBeNull();
  });
});
