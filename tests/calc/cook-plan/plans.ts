import {
  type CookPlanContext,
  type CookPlanSlice,
  newCookPlanSlice,
  type PlanChange,
  type PlanOutcome,
  type PlanProblem,
  planGround,
  solvePlan,
} from '@larderwright/calc/cook-plan';
import type { MouldItem, MouldSize, MouldSlice } from '@larderwright/calc/mould';
import { blankEntry, defaultEntry, enteredEntry } from '@larderwright/calc/quantities';

export const mm = (value: number) => enteredEntry(String(value), 'mm');
export const degrees = (value: number) => enteredEntry(String(value), 'C');

/** A mould of a usual size, bare. */
export function mouldOf(
  { shape, measures, headspaceMm }: MouldSize,
  more: Partial<MouldItem> = {},
): MouldItem {
  const side = (name: keyof typeof measures) => {
    const value = measures[name];
    return value === undefined ? blankEntry('mm') : mm(value);
  };
  return {
    id: 'mould',
    name: '',
    shape,
    dimensions: {
      length: side('length'),
      width: side('width'),
      depth: side('depth'),
      baseLength: side('baseLength'),
      baseWidth: side('baseWidth'),
      diameter: side('diameter'),
    },
    waterFill: blankEntry('mL'),
    headspace: headspaceMm === null ? defaultEntry('10', 'mm') : mm(headspaceMm),
    liningKind: 'none',
    liningThickness: blankEntry('mm'),
    count: defaultEntry('1', 'count'),
    actualFills: [],
    ...more,
  };
}

/** The loaf tin of the trade's own figure. */
export const LOAF: MouldSize = {
  id: 'loaf',
  name: '',
  shape: 'rectangular',
  measures: { length: 240, width: 100, depth: 75 },
  headspaceMm: 0,
};

export const mouldsOf = (mould: MouldItem, density = '1.04'): MouldSlice => ({
  moulds: [mould],
  density: enteredEntry(density, 'g/mL'),
});

export function contextOf(mould: MouldItem, more: Partial<CookPlanContext> = {}): CookPlanContext {
  return {
    moulds: mouldsOf(mould),
    crust: null,
    mix: null,
    cookRuleSetId: null,
    cookLimitId: null,
    coolRuleSetId: null,
    ...more,
  };
}

/** A plan to 68 °C, its bath covered. */
export const planTo68 = (more: Partial<CookPlanSlice> = {}): CookPlanSlice => ({
  ...newCookPlanSlice(),
  target: degrees(68),
  cover: 'covered',
  ...more,
});

/** The problem of a plan that lacks nothing. */
export function problemOf(
  slice: CookPlanSlice,
  context: CookPlanContext,
  change: PlanChange = {},
): PlanProblem {
  const { problem, reading } = planGround(slice, context, change);
  if (problem === null) throw new Error(`no problem: ${JSON.stringify(reading.missing)}`);
  return problem;
}

export function solved(problem: PlanProblem, tier: 'exact' | 'preview' = 'preview'): PlanOutcome {
  const outcome = solvePlan(problem, { tier });
  if (outcome === null) throw new Error('the engine refused a sound problem');
  return outcome;
}

/** Even numbers in 0–1 from a seed: the minimal standard generator of Park and Miller. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
