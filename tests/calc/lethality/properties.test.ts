import { type CurvePoint, judgeHold, lethalRate, pasteurisationValue } from '@larderwright/calc/lethality';
import { convert } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const line = fc.record({
  refC: fc.double({ min: 55, max: 95, noNaN: true }),
  zC: fc.double({ min: 4, max: 12, noNaN: true }),
});
const point = fc.record({
  gapMin: fc.integer({ min: 1, max: 30 }),
  tempC: fc.double({ min: 0, max: 100, noNaN: true }),
});
const curve = fc.array(point, { minLength: 2, maxLength: 30 }).map((points) => {
  let timeMin = 0;
  return points.map(({ gapMin, tempC }): CurvePoint => {
    timeMin += gapMin;
    return { timeMin, tempC };
  });
});
const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));

describe('pasteurisationValue, whatever the curve', () => {
  it('is 1 at Tref and a tenth one z below', () => {
    fc.assert(
      fc.property(line, (given) => {
        expect(lethalRate(given.refC, given)).toBe(1);
        expect(near(lethalRate(given.refC - given.zC, given), 0.1)).toBe(true);
      }),
    );
  });

  it('does not change when a step is split', () => {
    fc.assert(
      fc.property(curve, line, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (points, given, share) => {
        const split = points.flatMap((here, index) => {
          const before = points[index - 1];
          if (!before) return [here];
          const timeMin = before.timeMin + share * (here.timeMin - before.timeMin);
          return [{ timeMin, tempC: before.tempC + share * (here.tempC - before.tempC) }, here];
        });
        expect(near(pasteurisationValue(points, given), pasteurisationValue(split, given))).toBe(true);
      }),
    );
  });

  it('never falls with more heat, and orders its three methods', () => {
    fc.assert(
      fc.property(
        curve,
        line,
        fc.array(fc.double({ min: 0, max: 5, noNaN: true }), { minLength: 30, maxLength: 30 }),
        (points, given, more) => {
          const hotter = points.map((here, index) => ({ ...here, tempC: here.tempC + (more[index] ?? 0) }));
          const exact = pasteurisationValue(points, given);
          expect(pasteurisationValue(hotter, given)).toBeGreaterThanOrEqual(exact * (1 - 1e-9));
          expect(exact).toBeLessThanOrEqual(
            pasteurisationValue(points, given, { method: 'trapezoid' }) * (1 + 1e-9),
          );
          expect(exact).toBeGreaterThanOrEqual(
            pasteurisationValue(points, given, { method: 'fail-safe' }) * (1 - 1e-9),
          );
          expect(exact).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});

const readings = fc.array(
  fc.record({ gapS: fc.integer({ min: 1, max: 1200 }), tenths: fc.integer({ min: 600, max: 760 }) }),
  {
    minLength: 1,
    maxLength: 40,
  },
);

function log(given: readonly { gapS: number; tenths: number }[], unit: 'C' | 'F' = 'C') {
  let atMs = 0;
  return given.map(({ gapS, tenths }) => {
    atMs += gapS * 1000;
    return { atMs, tempC: tenths / 10, unit, counts: true };
  });
}

const request = {
  stated: { value: 70, unit: 'C' as const },
  holdS: 120,
  errorC: 0.5,
  offsetKnown: true,
  unitSuspect: false,
  heatOver: true,
};

describe('judgeHold, whatever the log', () => {
  it('never passes because of a reading below the action temperature', () => {
    fc.assert(
      fc.property(readings, fc.nat(40), fc.integer({ min: 600, max: 704 }), (given, where, tenths) => {
        const whole = log(given);
        const index = where % whole.length;
        const here = whole[index];
        const next = whole[index + 1];
        const atMs = here ? here.atMs + (next ? Math.floor((next.atMs - here.atMs) / 2) : 1000) : 0;
        const more = [
          ...whole.slice(0, index + 1),
          { atMs, tempC: tenths / 10, unit: 'C' as const, counts: true },
          ...whole.slice(index + 1),
        ];
        if (judgeHold(more, request).state === 'pass') expect(judgeHold(whole, request).state).toBe('pass');
      }),
    );
  });

  it('never passes a hotter limit, a longer hold, a wider error or a cooler log where the easier one does not', () => {
    fc.assert(
      fc.property(
        readings,
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 600 }),
        (given, tenths, seconds) => {
          const whole = log(given);
          const easy = judgeHold(whole, request);
          const hard = [
            judgeHold(whole, { ...request, stated: { value: 70 + tenths / 10, unit: 'C' } }),
            judgeHold(whole, { ...request, holdS: 120 + seconds }),
            judgeHold(whole, { ...request, errorC: 0.5 + tenths / 10 }),
            judgeHold(
              whole.map((reading) => ({ ...reading, tempC: reading.tempC - tenths / 10 })),
              request,
            ),
          ];
          if (hard.some(({ state }) => state === 'pass')) expect(easy.state).toBe('pass');
          if (easy.state === 'fail') expect(hard.map(({ state }) => state)).toEqual(hard.map(() => 'fail'));
        },
      ),
    );
  });

  it('counts no more than the straight lines between the readings would', () => {
    fc.assert(
      fc.property(readings, (given) => {
        const judged = judgeHold(log(given), request);
        expect(judged.countedS).toBeLessThanOrEqual(judged.interpolatedS + 1e-6);
      }),
    );
  });

  it('never passes without an error or an offset', () => {
    fc.assert(
      fc.property(readings, (given) => {
        expect(judgeHold(log(given), { ...request, errorC: null }).state).not.toBe('pass');
        expect(judgeHold(log(given), { ...request, offsetKnown: false }).state).not.toBe('pass');
      }),
    );
  });

  it('says the same of a Fahrenheit log and its Celsius twin, for a rule stated on one scale', () => {
    fc.assert(
      fc.property(readings, fc.constantFrom(130, 140, 145, 155), (given, tempF) => {
        const celsius = log(given);
        const fahrenheit = celsius.map((reading) => ({
          ...reading,
          unit: 'F' as const,
          tempC: convert(convert(reading.tempC, 'C', 'F'), 'F', 'C'),
        }));
        for (const stated of [request.stated, { value: tempF, unit: 'F' as const }])
          expect(judgeHold(fahrenheit, { ...request, stated }).state).toBe(
            judgeHold(celsius, { ...request, stated }).state,
          );
      }),
    );
  });

  it('answers an empty log, a log of doubts and a log of a hundred thousand readings', () => {
    expect(judgeHold([], request)).toMatchObject({
      state: 'cannot-tell',
      reason: 'cook.no-readings',
      peakC: null,
    });
    const doubts = log([{ gapS: 60, tenths: 760 }]).map((reading) => ({ ...reading, counts: false }));
    expect(judgeHold(doubts, request).reason).toBe('cook.no-readings');
    const many = log(
      Array.from({ length: 120_000 }, (_, index) => ({ gapS: 1, tenths: index < 60_000 ? 600 : 710 })),
    );
    expect(judgeHold(many, request)).toMatchObject({ state: 'pass', countedS: 59_999 });
  });
});
