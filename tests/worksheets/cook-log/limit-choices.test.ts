import { newBatch } from '@larderwright/calc/batch';
import { COOK_RULE_SETS, type CookFacts, cookStage, UNKNOWN_FACTS } from '@larderwright/calc/lethality';
import { describe, expect, it } from 'vitest';
import { limitChoices } from '../../../worksheets/cook-log/limit-choices.ts';
import { holdWords, refusalWords } from '../../../worksheets/words/cook-limits.ts';
import { COOK_RULE_SET_NAMES } from '../../../worksheets/words/cook-rule-set-names.ts';

const blank = newBatch({ id: 'b', at: '2026-03-10T09:00:00Z', zone: 'UTC' });
const choices = (ruleSetId: string | null, facts: CookFacts = UNKNOWN_FACTS) =>
  limitChoices(cookStage({ process: { ...blank.process, cookRuleSetId: ruleSetId } }, facts).values);
const facts = (change: Partial<CookFacts>): CookFacts => ({
  hasPoultry: false,
  poultryKind: null,
  fatFraction: 0.1,
  comminuted: true,
  hasPorkLiver: false,
  ...change,
});

describe('the rule sets offered', () => {
  it('are those calc has, in the same order', () => {
    expect(COOK_RULE_SET_NAMES.map(({ value }) => value)).toEqual(COOK_RULE_SETS.map(({ id }) => id));
  });
});

describe('the limits offered', () => {
  it('are every limit of the set, each once', () => {
    for (const set of COOK_RULE_SETS) {
      for (const each of [UNKNOWN_FACTS, facts({}), facts({ hasPoultry: true, poultryKind: 'other' })]) {
        const { fits, refused } = choices(set.id, each);
        const ids = [...fits, ...refused.flatMap(({ limits }) => limits)].map(({ id }) => id);
        expect(ids.toSorted()).toEqual(set.limits.map(({ id }) => id).toSorted());
      }
    }
  });

  it('are none before a rule set is chosen', () => {
    expect(choices(null)).toEqual({ fits: [], refused: [] });
  });

  it('leave out what is written for food without poultry as soon as there is a bird', () => {
    // FDA Food Code 2022, 3-401.11(A)(3): poultry and food stuffed with it, 165 °F (74 °C).
    const { fits, refused } = choices('us-food-code', facts({ hasPoultry: true }));
    expect(fits).toHaveLength(1);
    expect(fits[0]?.label).toMatch(/^165\s°F \(74\s°C\), held less than 1 s$/);
    expect(refused.map(({ reason }) => reason)).toEqual(['cook.limit-not-for-poultry']);
    expect(refusalWords('cook.limit-not-for-poultry', ['duck', 'chicken'])).toMatch(/holds duck and chicken/);
  });

  it('say the hold that the fat of the batch asks for', () => {
    // FSIS poultry tables: chicken at 12 % fat, 158 °F, 26.9 s.
    const { fits } = choices(
      'us-fsis-poultry',
      facts({ hasPoultry: true, poultryKind: 'other', fatFraction: 0.118 }),
    );
    expect(fits.find(({ id }) => id === 'fsis-poultry-158F')?.label).toMatch(/158\s°F.*held 26\.9 s/);
  });

  it('round a minimum up on the other scale', () => {
    const { fits } = choices('us-fsis-meat-6.5', facts({}));
    // Derived: 145 °F is 62.78 °C.
    expect(fits.find(({ id }) => id === 'fsis-145F')?.label).toMatch(/145\s°F \(63\s°C\), held 4 min/);
  });
});

describe('a hold in words', () => {
  it.each([
    ['<1 s', 'held less than 1 s'],
    ['0 s', 'reached once'],
    ['2 min', 'held 2 min'],
  ])('%s is "%s"', (printed, words) => {
    expect(holdWords(printed)).toBe(words);
  });
});
