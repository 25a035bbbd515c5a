import { newChillLeg } from '@larderwright/calc/cook-plan';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { contextOf, degrees, LOAF, mm, mouldOf, planTo68, problemOf, solved } from './plans.ts';

const SHAPES = [
  { shape: 'rectangular', measures: { length: 240, width: 95, depth: 70 } },
  { shape: 'tapered', measures: { length: 250, width: 110, baseLength: 230, baseWidth: 95, depth: 70 } },
  { shape: 'half-cylinder', measures: { diameter: 90, length: 260 } },
  { shape: 'cylinder', measures: { diameter: 100, depth: 70 } },
  { shape: 'cylinder', measures: { diameter: 70, length: 300 } },
  { shape: 'roof', measures: { width: 80, depth: 75, length: 300 } },
  { shape: 'oval', measures: { length: 190, width: 120, depth: 70 } },
] as const;

const kitchen = fc.record({
  at: fc.integer({ min: 0, max: SHAPES.length - 1 }),
  vessel: fc.constantFrom('stoneware', 'cast-iron', 'tinplate', 'glass', 'silicone', 'none'),
  method: fc.constantFrom('bath', 'steam', 'oven', 'poach'),
  startC: fc.integer({ min: 1, max: 10 }),
});
type Kitchen = typeof kitchen extends fc.Arbitrary<infer T> ? T : never;

const slow = Number.POSITIVE_INFINITY;

function plan({ vessel, method, startC }: Kitchen) {
  return planTo68({
    vessel,
    method,
    start: degrees(startC),
    oven: degrees(170),
    level: mm(45),
    chill: [newChillLeg('chill', 'blast')],
  });
}

function mould({ at }: Kitchen) {
  const { shape, measures } = SHAPES[at] ?? SHAPES[0];
  return mouldOf({ ...LOAF, shape, measures, headspaceMm: 0 });
}

/** Steps of the preview may hide a change of this much, min. */
const NOISE_MIN = 0.3;

describe('whatever the kitchen', () => {
  it('a deeper mould cooks no sooner and cools no sooner', () => {
    fc.assert(
      fc.property(
        kitchen,
        fc.integer({ min: 45, max: 80 }),
        fc.integer({ min: 3, max: 25 }),
        (of, depthMm, more) => {
          // Water to the same share of the depth: more metal in the water would otherwise be a second change.
          const at = (depth: number) => {
            const slice = { ...plan(of), level: mm(0.6 * depth) };
            return solved(problemOf(slice, contextOf(mould(of)), { depthMm: depth })).prediction;
          };
          const [shallow, deep] = [at(depthMm), at(depthMm + more)];
          const sooner = (deep.targetMin ?? slow) < (shallow.targetMin ?? slow) - NOISE_MIN;
          const cooling = ({ endMin, heatEndMin }: typeof deep) => endMin - heatEndMin;
          return !sooner && (shallow.targetMin === null || cooling(deep) > cooling(shallow) - NOISE_MIN);
        },
      ),
      { numRuns: 14 },
    );
  });

  it('a hotter oven, bath or kettle cooks no later, and a colder start no sooner', () => {
    fc.assert(
      fc.property(kitchen, fc.integer({ min: 2, max: 30 }), (of, more) => {
        const context = contextOf(mould(of));
        const minutes = (change: Parameters<typeof problemOf>[2]) =>
          solved(problemOf({ ...plan(of), chill: [] }, context, change)).prediction.targetMin ?? slow;
        const own = { bath: 150, oven: 130, steam: 75, poach: 75 }[of.method];
        const usual = minutes({ mediumC: own });
        return (
          minutes({ mediumC: own + more }) <= usual + NOISE_MIN &&
          minutes({ mediumC: own, startC: of.startC - 2 }) >= usual - NOISE_MIN
        );
      }),
      { numRuns: 14 },
    );
  });

  it('a higher target is reached no sooner and brings no less lethality', () => {
    fc.assert(
      fc.property(
        kitchen,
        fc.integer({ min: 58, max: 66 }),
        fc.integer({ min: 1, max: 4 }),
        (of, targetC, more) => {
          const at = (target: number) =>
            solved(problemOf({ ...plan(of), chill: [] }, contextOf(mould(of)), { targetC: target }))
              .prediction;
          const [low, high] = [at(targetC), at(targetC + more)];
          return (
            (high.targetMin ?? slow) >= (low.targetMin ?? slow) &&
            high.value.z10.wholeMin >= low.value.z10.wholeMin - 1e-6
          );
        },
      ),
      { numRuns: 14 },
    );
  });

  it('a longer hold in the heat never takes lethality away', () => {
    fc.assert(
      fc.property(kitchen, fc.integer({ min: 1, max: 30 }), (of, minutes) => {
        const at = (hold: string) =>
          solved(problemOf({ ...plan(of), chill: [], hold: enteredEntry(hold, 'min') }, contextOf(mould(of))))
            .prediction.value.z10;
        const [none, some] = [at('0'), at(String(minutes))];
        return some.heatMin >= none.heatMin && some.wholeMin >= none.wholeMin;
      }),
      { numRuns: 10 },
    );
  });
});
