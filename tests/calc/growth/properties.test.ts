import {
  cardinalRatePerH,
  type GrowthPoint,
  grow,
  LISTERIA_GROUPS,
  listeriaGrowth,
  PERFRINGENS_LAG_WORK,
  PERFRINGENS_SETS,
  rateIntegral,
  refrigeratorLogsPerDay,
} from '@larderwright/calc/growth';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const tempC = fc.double({ min: -20, max: 95, noNaN: true });
const points = fc
  .array(fc.tuple(fc.double({ min: 0.5, max: 90, noNaN: true }), tempC), { minLength: 2, maxLength: 12 })
  .map((steps) => {
    let timeMin = 0;
    return steps.map(([minutes, temp]): GrowthPoint => {
      timeMin += minutes;
      return { timeMin, tempC: temp };
    });
  });
const set = fc.constantFrom(...PERFRINGENS_SETS);

const integralOf = (curve: readonly GrowthPoint[], of: (typeof PERFRINGENS_SETS)[number]) =>
  rateIntegral(curve, (temp) => cardinalRatePerH(temp, of), [of.minC, of.maxC]);
const grown = (integral: number, work: number) => grow({ log10Count: 2, work }, integral, 9).log10Count - 2;

describe('growth, whatever the curve', () => {
  it('is a number and never below zero', () => {
    fc.assert(
      fc.property(points, set, (curve, of) => {
        const integral = integralOf(curve, of);
        expect(integral).toBeGreaterThanOrEqual(0);
        for (const work of [0, PERFRINGENS_LAG_WORK]) {
          expect(grown(integral, work)).toBeGreaterThanOrEqual(0);
          expect(grown(integral, work)).toBeLessThanOrEqual(7 + 1e-9);
        }
      }),
    );
  });

  it('is never less without lag than with it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 5.6, noNaN: true }),
        (integral, work) => {
          expect(grown(integral, 0)).toBeGreaterThanOrEqual(grown(integral, work) - 1e-9);
        },
      ),
    );
  });

  it('takes s times the integral when the clock runs s times as slow', () => {
    fc.assert(
      fc.property(points, set, fc.double({ min: 1, max: 5, noNaN: true }), (curve, of, slower) => {
        const stretched = curve.map(({ timeMin, tempC: temp }) => ({
          timeMin: timeMin * slower,
          tempC: temp,
        }));
        expect(integralOf(stretched, of)).toBeCloseTo(integralOf(curve, of) * slower, 6);
      }),
    );
  });

  it('adds nothing at or beyond the two ends of the set', () => {
    fc.assert(
      fc.property(set, fc.double({ min: 0, max: 40, noNaN: true }), fc.boolean(), (of, beyond, warm) => {
        const at = warm ? of.maxC + beyond : of.minC - beyond;
        const curve = [
          { timeMin: 0, tempC: at },
          { timeMin: 600, tempC: at },
        ];
        expect(integralOf(curve, of)).toBe(0);
      }),
    );
  });

  it('comes out the same when a record is cut in two and carried on', () => {
    const integral = fc.double({ min: 0, max: 30, noNaN: true });
    const work = fc.double({ min: 0, max: 5.6, noNaN: true });
    fc.assert(
      fc.property(integral, integral, work, (first, second, lag) => {
        const start = { log10Count: 2, work: lag };
        const whole = grow(start, first + second, 9);
        const cut = grow(grow(start, first, 9), second, 9);
        expect(cut.log10Count).toBeCloseTo(whole.log10Count, 6);
        expect(cut.work).toBeCloseTo(whole.work, 6);
      }),
    );
  });

  it('never slows as it warms below the optimum', () => {
    fc.assert(
      fc.property(
        set,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (of, a, b) => {
          const at = (share: number) => of.minC + share * (of.optC - of.minC);
          const [low, high] = [Math.min(a, b), Math.max(a, b)];
          expect(cardinalRatePerH(at(high), of)).toBeGreaterThanOrEqual(cardinalRatePerH(at(low), of) - 1e-9);
        },
      ),
    );
  });
});

describe('Listeria in storage, whatever the stays', () => {
  const group = fc.constantFrom(...LISTERIA_GROUPS.map(({ id }) => id));

  it('never grows less in a warmer refrigerator', () => {
    const cold = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(group, cold, cold, (id, a, b) => {
        const grownAt = (at: number) =>
          listeriaGrowth(id, [{ tempC: at, timeMin: 5000 }]).log10 ?? Number.NaN;
        expect(grownAt(Math.max(a, b))).toBeGreaterThanOrEqual(grownAt(Math.min(a, b)));
      }),
    );
  });

  it('tells nothing as soon as one stay is outside 0 to 12 °C or blank', () => {
    const outside = fc.oneof(
      fc.double({ min: -40, max: -0.001, noNaN: true }),
      fc.double({ min: 12.001, max: 60, noNaN: true }),
    );
    fc.assert(
      fc.property(group, outside, (id, at) => {
        const good = { tempC: 4, timeMin: 1440 };
        expect(refrigeratorLogsPerDay(at, 1)).toBeNull();
        expect(listeriaGrowth(id, [good, { tempC: at, timeMin: 60 }])).toMatchObject({
          doubt: 'outside-range',
          log10: null,
        });
        expect(listeriaGrowth(id, [good, { tempC: null, timeMin: 60 }]).log10).toBeNull();
      }),
    );
  });
});
