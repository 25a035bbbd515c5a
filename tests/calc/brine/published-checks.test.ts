import {
  awFromOsmotic,
  baumeFromGravity,
  brineFreezesC,
  equilibriumPpm,
  equilibriumSalt,
  OTHER_ACCELERATORS,
  osmoticCoefficient,
  picklePpm,
  pumpedPpm,
  type SalometerScaleId,
  salometerDegrees,
  saltFromSalometer,
  saturatedSaltActivity,
  waterActivityQuadratic,
} from '@larderwright/calc/brine';
import { type CuringTimeRuleId, curingDays, nitriteHalfLifeHours } from '@larderwright/calc/dry-cure';
import {
  afterDrying,
  type DegreeHourRule,
  degreeHours,
  longestHours,
  lossForRatio,
  moistureProteinRatio,
  trichinaDrying,
  trichinaSalt,
  trichinaSaltPercent,
} from '@larderwright/calc/drying';
import { convert } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import checks from '../../fixtures/curing-checks.json' with { type: 'json' };
import { listsItsChecks, publishedCase } from '../../tools/published.ts';

type Args = readonly unknown[];
const n = (args: Args, index: number) => Number(args[index]);
const days = (id: CuringTimeRuleId, pounds: number) => curingDays(id, convert(pounds, 'lb', 'g'));
const mixSalt = (a: Args) => trichinaSalt(n(a, 0), n(a, 1), n(a, 2));

function fermentation(rule: DegreeHourRule, unit: 'F' | 'C', args: Args) {
  const stretches = args.map((pair) => {
    const [degrees, hours] = pair as [number, number];
    return { tempC: convert(degrees, unit, 'C'), hours };
  });
  return degreeHours(rule, stretches);
}

const compute: Record<string, (args: Args) => number | null | undefined> = {
  otherAcceleratorPercent: ([id]) =>
    (OTHER_ACCELERATORS.find((one) => one.id === id)?.limitFraction ?? 0) * 100,
  pumpedPpm: (a) => pumpedPpm(n(a, 0), n(a, 1), n(a, 2)),
  picklePpm: (a) => picklePpm(n(a, 0), n(a, 1)),
  packPercentOfPickle: (a) => ((picklePpm(n(a, 0), n(a, 1)) ?? Number.NaN) / 1e6 / n(a, 2)) * 100,
  // What the pump brings of anything in the pickle, a fraction in and a per cent out.
  phosphateOfGreenPercent: (a) => ((pumpedPpm(n(a, 0), 1, n(a, 1)) ?? Number.NaN) / 1e6) * 100,
  equilibriumPpm: (a) => equilibriumPpm(n(a, 0), n(a, 1), n(a, 2)),
  saltOfWater: (a) =>
    equilibriumSalt({ meat: n(a, 0), meatWaterFraction: n(a, 1), water: n(a, 2) }, n(a, 3), 'water'),
  percentFromSalometer: (a) => (saltFromSalometer(n(a, 0)) ?? Number.NaN) * 100,
  salometer: (a) => salometerDegrees(n(a, 0), a[1] as SalometerScaleId),
  baume: (a) => baumeFromGravity(n(a, 0)),
  freezes: (a) => brineFreezesC(n(a, 0)),
  awFromOsmotic: (a) => awFromOsmotic(n(a, 0), n(a, 1), n(a, 2)),
  awPitzerAtMolality: (a) => awFromOsmotic(n(a, 0), osmoticCoefficient(n(a, 0)) ?? Number.NaN),
  awQuadratic: (a) => waterActivityQuadratic(n(a, 0)),
  awSaturated: (a) => saturatedSaltActivity(n(a, 0)),
  longestHoursF: (a) => longestHours('us-fahrenheit', n(a, 0)),
  degreeHoursF: (a) => fermentation('us-fahrenheit', 'F', a)?.total,
  degreeHoursC: (a) => fermentation('canada-celsius', 'C', a)?.total,
  ratio: (a) => moistureProteinRatio(n(a, 0), n(a, 1)),
  lossForRatioPercent: (a) => (lossForRatio(n(a, 0), n(a, 1), n(a, 2)) ?? Number.NaN) * 100,
  wpsAfterDryingPercent: (a) =>
    (afterDrying(n(a, 0), n(a, 1), n(a, 2))?.waterPhaseFraction ?? Number.NaN) * 100,
  awAfterDrying: (a) => afterDrying(n(a, 0), n(a, 1), n(a, 2))?.waterActivity?.quadratic,
  trichinaSalt: (a) => mixSalt(a)?.percent,
  trichinaSaltPercent: (a) => trichinaSaltPercent(mixSalt(a) ?? { percent: 0, cutPercent: 0 }),
  trichinaDays: (a) =>
    trichinaDrying({ casingIn: n(a, 0), hold: { hours: n(a, 1), tempF: n(a, 2) }, salt: null })?.days,
  hamContact: (a) => days('ham-contact', n(a, 0)),
  hamTotal: (a) => days('ham-contact-and-equalise', n(a, 0)),
  sweetPickle: (a) => days('sweet-pickle', n(a, 0)),
  nitriteHalfLife: (a) => nitriteHalfLifeHours(n(a, 0), n(a, 1)),
};

describe('check cases of dry cure, brine and drying, each with its source', () => {
  for (const check of checks) {
    test(`${check.id} ${check.task}: ${check.expected} ${check.unit} (${check.kind}; ${check.source}; ${check.mark})`, () => {
      const run = compute[check.compute];
      expect(run, check.compute).toBeDefined();
      const got = run?.(check.args) ?? Number.NaN;
      expect(Math.abs(got - check.expected)).toBeLessThanOrEqual(check.tolerance);
      publishedCase(check, got);
      if (check.within === undefined) return;
      const rule = check.compute === 'degreeHoursF' ? 'us-fahrenheit' : 'canada-celsius';
      const unit = check.compute === 'degreeHoursF' ? 'F' : 'C';
      expect(fermentation(rule, unit, check.args)?.isWithin).toBe(check.within);
    });
  }

  test('thirty checks of the set belong here, and each is run', () => {
    const ids = new Set(checks.map(({ id }) => id.replace(/[a-e]$/, '')));
    expect(ids.size).toBe(30);
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  });
});

listsItsChecks('curing');
