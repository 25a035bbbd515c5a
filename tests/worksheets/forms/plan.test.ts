import { assess, type Batch } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { buildSheet } from '../../../worksheets/batch-sheet/build/index.ts';
// It brings the words of every subject.
import '../../../worksheets/batch-sheet/compute.ts';
import { buildPlan } from '../../../worksheets/forms/build-plan.ts';
import { BLANK_PLAN } from '../../../worksheets/forms/plan-model.ts';

const composition = await loadIngredients();
const NOW = '2026-11-27T10:00:00+00:00';

function planOf(batch: Batch) {
  const assessment = assess(batch, { composition, today: NOW });
  const plan = buildPlan(batch, assessment, buildSheet(batch, assessment, NOW));
  const limit = (id: string) => plan.steps.find((step) => step.id === id)?.limit;
  return { plan, limit };
}

const demo = (id: string): Batch => {
  const batch = demos[id];
  if (!batch) throw new Error(id);
  return batch;
};

describe('the plan of a batch', () => {
  it('takes its limits from the rule sets of the batch, and leaves open what nobody knows here', () => {
    const { plan, limit } = planOf(demo('country-terrine'));
    // 156 mg/kg ingoing nitrite in comminuted products: 9 CFR 424.21(c).
    expect(limit('cure')?.join()).toMatch(/156 mg\/kg as sodium nitrite on raw meat/);
    // FDA Food Code 2022, 3-501.14: 135 to 70 °F in 2 h, to 41 °F in 6 h.
    expect(limit('cool')).toEqual([
      expect.stringMatching(/135.*70.*in 2 h/),
      expect.stringMatching(/135.*41.*in 6 h/),
    ]);
    for (const open of ['receive', 'handle', 'store', 'pack']) expect(limit(open)).toBeNull();
    expect(plan.packing).toBeNull();
  });

  it('has no row of the curing salt where a formula has none', () => {
    const cured = demo('country-terrine');
    const lines = cured.formula.lines.filter(({ part }) => part !== 'curing-salt');
    const { plan } = planOf({ ...cured, formula: { ...cured.formula, lines } });
    expect(plan.steps.map(({ id }) => id)).not.toContain('cure');
  });

  it('of a whole muscle states neither nitrite nor its limit: they are of another table', () => {
    const { plan, limit } = planOf(demo('mutton-ham'));
    expect(plan.nitrite).toBeNull();
    expect(plan.saltOnWater).toBeNull();
    expect(limit('cure')).toBeNull();
  });

  it('of nobody has every step and no limit', () => {
    expect(BLANK_PLAN.steps).toHaveLength(10);
    expect(BLANK_PLAN.steps.every(({ limit }) => limit === null)).toBe(true);
  });
});
