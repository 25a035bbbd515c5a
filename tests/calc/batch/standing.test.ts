import { assess, type Batch } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { beforeAll, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

let composition: Awaited<ReturnType<typeof loadIngredients>>;
beforeAll(async () => {
  composition = await loadIngredients();
});

const batch = structuredClone(demos['country-terrine']) as Batch;
const judge = (withdrawn?: Parameters<typeof assess>[1]['withdrawn']) =>
  assess(batch, { composition, today: '2026-11-25', ...(withdrawn ? { withdrawn } : {}) });
const withdrawal = (ruleSetId: string, from = '2026-11-01') => ({
  stage: 'cook' as const,
  ruleSetId,
  from,
  reason: 'The table was replaced.',
});

// House rule.
it('a withdrawn rule set is a stop beside its verdict, and its pass releases nothing', () => {
  const used = batch.process.cookRuleSetId ?? '';
  expect(used).not.toBe('');
  const before = judge();
  const after = judge([withdrawal(used)]);
  expect(after.findings.filter(({ id }) => id === 'limits.withdrawn')).toMatchObject([
    { severity: 'stop', stage: 'cook', field: 'process.cookRuleSetId' },
  ]);
  const added = after.verdicts.filter(({ id }) => !before.verdicts.some((verdict) => verdict.id === id));
  expect(added).toMatchObject([{ stage: 'cook', state: 'cannot-tell', reason: 'limits.withdrawn' }]);
  // What the rule set judged is told as before.
  expect(after.cook.verdicts).toEqual(before.cook.verdicts);
});

it('a rule set of another batch, and an empty list, change nothing', () => {
  expect(judge([withdrawal('another-set')])).toEqual(judge());
  expect(judge([])).toEqual(judge());
});

it('counts whatever day it is here: a clock that runs behind hides no withdrawal', () => {
  const after = judge([withdrawal(batch.process.cookRuleSetId ?? '', '2099-01-01')]);
  expect(after.findings.map(({ id }) => id)).toContain('limits.withdrawn');
});
