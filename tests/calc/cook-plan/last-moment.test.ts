import { lastMomentToChill, type PlanProblem, solvePlan } from '@larderwright/calc/cook-plan';
import { defaultEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { contextOf, LOAF, mouldOf, planTo68, problemOf } from './plans.ts';

/** A slim steel mould from the heat into blast air, by the Food Code. */
const SLIM = problemOf(
  planTo68({
    vessel: 'stainless-steel',
    chill: [
      {
        id: 'blast',
        kind: 'blast',
        temp: defaultEntry('-2', 'C'),
        minutes: defaultEntry('', 'min'),
        until: defaultEntry('5', 'C'),
        standing: 'apart',
        top: 'open',
      },
    ],
  }),
  contextOf(mouldOf({ ...LOAF, measures: { length: 200, width: 60, depth: 50 } }), {
    coolRuleSetId: 'us-food-code',
  }),
);

/** The same plan with another rest before the chill. */
function restedFor(problem: PlanProblem, minutes: number): PlanProblem {
  const stages = problem.stages.map((stage) =>
    stage.kind === 'rest'
      ? { ...stage, heat: { ...stage.heat, end: { when: 'time', minutes } as const } }
      : stage,
  );
  return { ...problem, stages };
}

describe('the last moment to move to the chill', () => {
  const last = lastMomentToChill(SLIM);
  const planned = solvePlan(SLIM)?.prediction;
  const waitMin = (last?.byMin ?? Number.NaN) - (planned?.heatEndMin ?? Number.NaN);

  it('is one from which the planned chill meets every leg with at least a fifth of it to spare (derived)', () => {
    expect(waitMin).toBeGreaterThan(0);
    const cooling = solvePlan(restedFor(SLIM, waitMin))?.prediction.cooling;
    expect(cooling?.state).toBe('within');
    for (const leg of SLIM.cool?.legs ?? []) {
      const took = cooling?.legs.find(({ legId }) => legId === leg.id)?.elapsedMin ?? Number.NaN;
      expect(took * 1.2).toBeLessThanOrEqual(leg.maxMin);
    }
  });

  it('comes before the moment from which even the plan itself would be late', () => {
    const late = solvePlan(restedFor(SLIM, 240))?.prediction.cooling;
    expect(late?.state).toBe('beyond');
    expect(waitMin).toBeLessThan(240);
  });

  it('is none where even at once is too late, and nothing is said without a usable rule, a rest or a chill', () => {
    const thick = problemOf(planTo68(), contextOf(mouldOf(LOAF), { coolRuleSetId: 'us-fsis-1' }));
    expect(lastMomentToChill(thick)).toEqual({ byMin: null, atLeast: false });
    expect(lastMomentToChill({ ...SLIM, cool: null })).toBeNull();
    expect(lastMomentToChill({ ...SLIM, cool: SLIM.cool && { ...SLIM.cool, usable: false } })).toBeNull();
    for (const left of ['rest', 'chill'])
      expect(
        lastMomentToChill({ ...SLIM, stages: SLIM.stages.filter(({ kind }) => kind !== left) }),
      ).toBeNull();
  });
});
