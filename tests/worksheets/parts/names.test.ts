import { CURE_RULE_SETS } from '@larderwright/calc/cure';
import { FAMILIES } from '@larderwright/calc/formula';
import { expect, test } from 'vitest';
import { CURE_RULE_SET_NAMES } from '../../../worksheets/words/cure-rule-set-names.ts';
import { FAMILY_NAMES } from '../../../worksheets/words/family-names.ts';

// The lists are kept apart from calc so that a blank page need not fetch the figures behind them.
test('the families offered are those that calc knows, in its order', () => {
  expect(FAMILY_NAMES).toEqual(FAMILIES.map(({ id, name }) => ({ value: id, label: name })));
  expect(FAMILY_NAMES).toHaveLength(28);
});

test('the rule sets offered are those that calc knows, in its order', () => {
  expect(CURE_RULE_SET_NAMES).toEqual(
    CURE_RULE_SETS.map(({ id, jurisdiction }) => ({ value: id, label: jurisdiction })),
  );
});
