import {
  COOL_RULE_SETS,
  type CoolReading,
  coolRuleSet,
  exactC,
  firstAtOrBelow,
  judgeCooling,
  lastAbove,
} from '@larderwright/calc/cooling';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const MIN = 60_000;
const ids = COOL_RULE_SETS.map(({ id }) => id);

/** A core that only falls, from the end of cooking on, and when it was looked at. */
const history = fc.record({
  drops: fc.array(
    fc.record({
      gapMin: fc.integer({ min: 5, max: 120 }),
      dropC: fc.double({ min: 0.1, max: 18, noNaN: true }),
    }),
    { minLength: 4, maxLength: 24 },
  ),
  stepMin: fc.integer({ min: 2, max: 25 }),
  keepEvery: fc.integer({ min: 1, max: 4 }),
  errorC: fc.constantFrom(0, 0.2, 0.5, 1),
  noise: fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })),
  setId: fc.constantFrom(...ids),
});

function curveOf(drops: readonly { gapMin: number; dropC: number }[]) {
  const points = [{ timeMin: 0, tempC: 76 }];
  for (const { gapMin, dropC } of drops) {
    const last = points.at(-1) ?? { timeMin: 0, tempC: 76 };
    points.push({ timeMin: last.timeMin + gapMin, tempC: Math.max(1, last.tempC - dropC) });
  }
  return points;
}

function tempAt(points: readonly { timeMin: number; tempC: number }[], timeMin: number): number {
  const index = points.findIndex((point) => point.timeMin >= timeMin);
  const [a, b] = [points[index - 1], points[index]];
  if (!a || !b) return (index === 0 ? points.at(0) : points.at(-1))?.tempC ?? Number.NaN;
  return a.tempC + ((timeMin - a.timeMin) / (b.timeMin - a.timeMin)) * (b.tempC - a.tempC);
}

const request = (errorC: number | null) => ({ errorC, offsetKnown: true, unitSuspect: false, heatEndMs: 0 });

describe('judgeCooling, whatever the core did between readings', () => {
  it('passes only what the core kept, fails only what it missed, and a denser log never turns a fail into a pass', () => {
    fc.assert(
      fc.property(history, ({ drops, stepMin, keepEvery, errorC, noise, setId }) => {
        const points = curveOf(drops);
        const legs = coolRuleSet(setId)?.legs ?? [];
        const dense: CoolReading[] = [];
        for (let minute = 0; minute <= (points.at(-1)?.timeMin ?? 0); minute += stepMin)
          dense.push({
            atMs: minute * MIN,
            tempC: tempAt(points, minute) + errorC * (noise.next().value ?? 0),
            counts: true,
          });
        const sparse = dense.filter((_, index) => index % keepEvery === 0);
        const [fine, coarse] = [
          judgeCooling(dense, legs, request(errorC)),
          judgeCooling(sparse, legs, request(errorC)),
        ];
        for (const [index, leg] of legs.entries()) {
          const states = [fine[index]?.state, coarse[index]?.state];
          if (states[1] === 'fail') expect(states[0]).not.toBe('pass');
          const curve = { kind: 'lines' as const, points };
          const startMin = leg.from === null ? 0 : firstAtOrBelow(curve, exactC(leg.from));
          const endMin = lastAbove(curve, exactC(leg.to));
          if (states.includes('pass')) {
            expect(startMin).not.toBeNull();
            expect((endMin ?? Number.POSITIVE_INFINITY) - (startMin ?? 0)).toBeLessThanOrEqual(
              leg.maxMin + 1e-6,
            );
          }
          if (states.includes('fail'))
            expect((endMin ?? Number.POSITIVE_INFINITY) - (startMin ?? 0)).toBeGreaterThanOrEqual(
              leg.maxMin - 1e-6,
            );
        }
      }),
      { numRuns: 500 },
    );
  });

  it('never passes without an error or an offset, and never fails for a wider error alone', () => {
    fc.assert(
      fc.property(history, ({ drops, stepMin, errorC, setId }) => {
        const points = curveOf(drops);
        const legs = coolRuleSet(setId)?.legs ?? [];
        const readings: CoolReading[] = [];
        for (let minute = 0; minute <= (points.at(-1)?.timeMin ?? 0); minute += stepMin)
          readings.push({ atMs: minute * MIN, tempC: tempAt(points, minute), counts: true });
        const plain = judgeCooling(readings, legs, request(errorC));
        const wide = judgeCooling(readings, legs, request(errorC + 0.5));
        const blank = judgeCooling(readings, legs, request(null));
        const unchecked = judgeCooling(readings, legs, { ...request(errorC), offsetKnown: false });
        for (const [index, { state }] of plain.entries()) {
          if (wide[index]?.state === 'pass') expect(state).toBe('pass');
          if (wide[index]?.state === 'fail') expect(state).toBe('fail');
          expect([blank[index]?.state, unchecked[index]?.state]).not.toContain('pass');
        }
      }),
    );
  });

  it('lets a doubtful reading fail a leg and never pass one', () => {
    fc.assert(
      fc.property(
        history,
        fc.nat(1000),
        fc.double({ min: -40, max: 160, noNaN: true }),
        ({ drops, stepMin, errorC, setId }, where, tempC) => {
          const points = curveOf(drops);
          const legs = coolRuleSet(setId)?.legs ?? [];
          const readings: CoolReading[] = [];
          for (let minute = 0; minute <= (points.at(-1)?.timeMin ?? 0); minute += stepMin)
            readings.push({ atMs: minute * MIN, tempC: tempAt(points, minute), counts: true });
          const index = where % readings.length;
          const atMs = (readings[index]?.atMs ?? 0) + MIN;
          const doubted = [
            ...readings.slice(0, index + 1),
            { atMs, tempC, counts: false },
            ...readings.slice(index + 1),
          ];
          const [without, withIt] = [
            judgeCooling(readings, legs, request(errorC)),
            judgeCooling(doubted, legs, request(errorC)),
          ];
          for (const [leg, { state }] of without.entries()) {
            if (state !== 'pass') expect(withIt[leg]?.state).not.toBe('pass');
            if (state === 'fail') expect(withIt[leg]?.state).toBe('fail');
          }
        },
      ),
    );
  });

  it('answers an empty log and one of a hundred thousand readings', () => {
    const legs = coolRuleSet('us-food-code')?.legs ?? [];
    expect(judgeCooling([], legs, request(0.5)).map(({ reason }) => reason)).toEqual([
      'cool.no-readings',
      'cool.no-readings',
    ]);
    const many = Array.from({ length: 120_000 }, (_, second) => ({
      atMs: second * 100,
      tempC: 75 - (second * 73) / 120_000,
      counts: true,
    }));
    expect(judgeCooling(many, legs, request(0.5)).map(({ state }) => state)).toEqual(['pass', 'pass']);
  });
});

describe('cooling rule sets', () => {
  it('names each set once and each leg once, every leg falling', () => {
    expect(new Set(ids).size).toBe(ids.length);
    for (const set of COOL_RULE_SETS) {
      expect(new Set(set.legs.map(({ id }) => id)).size).toBe(set.legs.length);
      for (const leg of set.legs) {
        expect(leg.maxMin).toBeGreaterThan(0);
        if (leg.from) expect(exactC(leg.from)).toBeGreaterThan(exactC(leg.to));
        if (leg.goodMin !== undefined) expect(leg.goodMin).toBeLessThanOrEqual(leg.maxMin);
      }
    }
  });
});
