import {
  type CoolingCurve,
  type CoolRuleSet,
  coolRuleSet,
  dwellMin,
  fallsThroughout,
  judgeCurve,
} from '@larderwright/calc/cooling';
import { convert } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import published from '../../fixtures/cooling-curves.json' with { type: 'json' };

/** The rules of the cases, by the names the cases use. */
const RULES: Readonly<Record<string, string>> = {
  FSIS_OPT1: 'us-fsis-1',
  FSIS_OPT2: 'us-fsis-2',
  FSIS_OPT3_CURED: 'us-fsis-3-cured',
  FSIS_SLOW20_CURED: 'us-slow-20-cured',
  FDA_FOOD_CODE: 'us-food-code',
  FSANZ_322: 'au-nz-3.2.2',
  FR_63_10: 'fr-catering',
  UK_LARGE_MAX_UNCURED: 'uk-large-uncured',
  UK_LARGE_MAX_CURED: 'uk-large-cured',
};

interface Input {
  type: string;
  points_h_C?: number[][];
  points_h_F?: number[][];
  T0_C?: number;
  Ta_C?: number;
  k_per_h?: number;
  end_h?: number;
}

function curveOf(input: Input): CoolingCurve {
  if (input.type === 'exponential')
    return {
      kind: 'newton',
      startC: input.T0_C ?? Number.NaN,
      airC: input.Ta_C ?? Number.NaN,
      ratePerMin: (input.k_per_h ?? Number.NaN) / 60,
      endMin: (input.end_h ?? Number.NaN) * 60,
    };
  const unit = input.points_h_F ? 'F' : 'C';
  const points = (input.points_h_F ?? input.points_h_C ?? []).map(([hours = 0, temp = 0]) => ({
    timeMin: hours * 60,
    tempC: convert(temp, unit, 'C'),
  }));
  return { kind: 'lines', points };
}

function ruleSet(name: string): CoolRuleSet {
  const set = coolRuleSet(RULES[name] ?? '');
  if (!set) throw new Error(name);
  return set;
}

/** "54.4 °C" of a leg id, as the cases write it: 130F-80F is 130F_80F, end-50C is start_50C. */
const caseLabel = (legId: string) => legId.replace('-', '_').replace('end', 'start');

interface Expected {
  verdict: string;
  elapsed_h: Record<string, number | null>;
}

function isExpected(value: unknown): value is Expected {
  return typeof value === 'object' && value !== null && 'verdict' in value;
}

const cases = published.cases.flatMap(({ id, title, input, expected }) =>
  Object.entries(expected).flatMap(([rule, wanted]) =>
    isExpected(wanted) ? [[`${id} ${title}, ${rule}`, input as Input, rule, wanted] as const] : [],
  ),
);

// Derived from the windows of each rule: analytic crossing times, checked by root finding.
describe('judgeCurve on the reference curves', () => {
  it('has every reference case to judge', () => {
    expect(published.cases.map(({ id }) => id)).toEqual([
      'CC01',
      'CC02',
      'CC04',
      'CC06',
      'CC07',
      'CC09',
      'CC10',
      'CC12',
      'CC13',
    ]);
    expect(cases.length).toBe(34);
  });

  it.each(cases)('%s', (_, input, rule, wanted) => {
    const judged = judgeCurve(curveOf(input), ruleSet(rule).legs);
    expect(judged.state).toBe(wanted.verdict);
    for (const leg of judged.legs) {
      // The first labels of the United Kingdom cases are printed in °C without a letter on the start.
      const hours = wanted.elapsed_h[caseLabel(leg.legId)];
      if (hours === null) expect(leg.elapsedMin).toBeNull();
      else
        expect(Math.abs((leg.elapsedMin ?? Number.NaN) / 60 / (hours ?? Number.NaN) - 1)).toBeLessThan(0.001);
    }
  });
});

describe('a rewarmed curve', () => {
  const rewarmed = published.cases.find(({ id }) => id === 'CC09');
  const curve = curveOf((rewarmed?.input ?? { type: '' }) as Input);
  it('counts the time between two temperatures in all its pieces', () => {
    // CC09: 80 °F < T <= 130 °F 2.918 h, 70 °F < T <= 135 °F 3.89 h; derived
    const dwellH = (low: number, high: number) =>
      dwellMin(curve, convert(low, 'F', 'C'), convert(high, 'F', 'C')) / 60;
    expect(Math.abs(dwellH(80, 130) / 2.918 - 1)).toBeLessThan(0.001);
    expect(Math.abs(dwellH(70, 135) / 3.89 - 1)).toBeLessThan(0.001);
  });

  it('is told from one that falls throughout', () => {
    expect(fallsThroughout(curve)).toBe(false);
    expect(
      fallsThroughout({
        kind: 'lines',
        points: [
          { timeMin: 0, tempC: 60 },
          { timeMin: 60, tempC: 20 },
        ],
      }),
    ).toBe(true);
    expect(fallsThroughout({ kind: 'newton', startC: 75, airC: 3, ratePerMin: 0.01, endMin: 60 })).toBe(true);
  });

  it('agrees on the dwell of a Newton fall with its closed form', () => {
    const newton: CoolingCurve = { kind: 'newton', startC: 75, airC: 3, ratePerMin: 0.015, endMin: 360 };
    expect(dwellMin(newton, 21, 57)).toBeCloseTo(Math.log(54 / 18) / 0.015, 9);
  });
});

describe('judgeCurve, whatever the curve', () => {
  const falling = fc
    .array(
      fc.record({
        gapMin: fc.integer({ min: 1, max: 90 }),
        dropC: fc.double({ min: 0.1, max: 20, noNaN: true }),
      }),
      { minLength: 2, maxLength: 30 },
    )
    .map((steps) => {
      const points = [{ timeMin: 0, tempC: 75 }];
      for (const { gapMin, dropC } of steps) {
        const last = points.at(-1) ?? { timeMin: 0, tempC: 75 };
        points.push({ timeMin: last.timeMin + gapMin, tempC: last.tempC - dropC });
      }
      return points;
    });

  it('does not mind a curve drawn with more points', () => {
    fc.assert(
      fc.property(falling, fc.constantFrom(...Object.values(RULES)), (points, id) => {
        const dense = points.flatMap((here, index) => {
          const before = points[index - 1];
          if (!before) return [here];
          return [
            { timeMin: (before.timeMin + here.timeMin) / 2, tempC: (before.tempC + here.tempC) / 2 },
            here,
          ];
        });
        const legs = coolRuleSet(id)?.legs ?? [];
        const [plain, fine] = [
          judgeCurve({ kind: 'lines', points }, legs),
          judgeCurve({ kind: 'lines', points: dense }, legs),
        ];
        expect(fine.legs.map(({ elapsedMin }) => elapsedMin?.toFixed(6))).toEqual(
          plain.legs.map(({ elapsedMin }) => elapsedMin?.toFixed(6)),
        );
      }),
    );
  });

  it('never passes a slower curve where the faster one does not', () => {
    fc.assert(
      fc.property(
        falling,
        fc.double({ min: 1, max: 3, noNaN: true }),
        fc.constantFrom(...Object.values(RULES)),
        (points, stretch, id) => {
          const legs = coolRuleSet(id)?.legs ?? [];
          const slow = points.map(({ timeMin, tempC }) => ({ timeMin: timeMin * stretch, tempC }));
          if (judgeCurve({ kind: 'lines', points: slow }, legs).state === 'pass')
            expect(judgeCurve({ kind: 'lines', points }, legs).state).toBe('pass');
        },
      ),
    );
  });

  it('cannot tell from an empty curve', () => {
    const legs = coolRuleSet('us-food-code')?.legs ?? [];
    expect(judgeCurve({ kind: 'lines', points: [] }, legs).state).toBe('cannot-tell');
    expect(judgeCurve({ kind: 'lines', points: [{ timeMin: 0, tempC: 70 }] }, legs).state).toBe(
      'cannot-tell',
    );
  });

  it('fails a curve that ends warm after its time is over', () => {
    const legs = coolRuleSet('us-food-code')?.legs ?? [];
    const points = [
      { timeMin: 0, tempC: 60 },
      { timeMin: 300, tempC: 30 },
    ];
    expect(judgeCurve({ kind: 'lines', points }, legs).legs.map(({ state }) => state)).toEqual([
      'fail',
      'cannot-tell',
    ]);
  });
});
