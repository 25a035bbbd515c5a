import { CURE_RULE_SETS } from '@larderwright/calc/cure';
import {
  ceilingOnMeat,
  HIGHEST_WHOLE_MUSCLE_PPM,
  WHOLE_MUSCLE_RULE_SETS,
  type WholeMuscleKind,
  wholeMuscleLimits,
  wholeMuscleRuleSet,
} from '@larderwright/calc/dry-cure';
import { SOURCES, sourceOf } from '@larderwright/calc/sources';
import { describe, expect, test } from 'vitest';

const kind = (changes: Partial<WholeMuscleKind> = {}): WholeMuscleKind => ({
  product: 'other',
  finish: 'cooked',
  isTraditional: false,
  route: 'dry',
  ...changes,
});

function ceilings(ruleSetId: string, of: Partial<WholeMuscleKind>) {
  const ruleSet = wholeMuscleRuleSet(ruleSetId);
  if (ruleSet === null) throw new Error(ruleSetId);
  return wholeMuscleLimits(ruleSet, kind(of))
    .filter(({ role }) => role === 'ceiling')
    .map(
      ({ kind: at, valuePpm, expressedAs, basis, mark }) =>
        `${at} ${valuePpm} ${expressedAs} ${basis} ${mark}`,
    );
}

describe('limits of cured whole muscle', () => {
  // 9 CFR 424.21(c) and 424.22(b), annual edition of 2015.
  test.each([
    [{ route: 'dry' }, 625],
    [{ route: 'immersion' }, 200],
    [{ route: 'pumped' }, 200],
    [{ route: 'dry', product: 'bacon' }, 200],
    [{ route: 'immersion', product: 'bacon' }, 120],
    [{ route: 'pumped', product: 'bacon' }, 120],
  ] as const)('United States, %o: %s put in, on green weight', (of, value) => {
    expect(ceilings('us-federal', of)[0]).toBe(`ingoing ${value} sodium-nitrite meat-block confirmed`);
  });

  // 9 CFR 424.21(c): 200 in the finished product, bacon excepted.
  test('United States: 200 left in the finished product, but not for bacon', () => {
    expect(ceilings('us-federal', {})).toContain(
      'residual 200 nitrite-and-nitrate-as-sodium-nitrite finished confirmed',
    );
    expect(ceilings('us-federal', { product: 'bacon' })).toHaveLength(1);
  });

  // CFIA Meat Hygiene Manual, chapter 4, glossary: 200 in cured meat, 120 in side bacon, on the raw batch.
  test('Canada: 200, side bacon 120, nitrite and nitrate together on the raw batch', () => {
    expect(ceilings('canada-federal', {})).toEqual(['ingoing 200 nitrite-and-nitrate-salts total confirmed']);
    expect(ceilings('canada-federal', { product: 'bacon' })).toEqual([
      'ingoing 120 nitrite-and-nitrate-salts total confirmed',
    ]);
  });

  // Regulation (EC) No 1333/2008, older text: 150 added; SI 2007/1778: 175 and 100 left in traditional cures.
  test('Great Britain: 150 added; traditional bacon 175 and ham 100 are what is left', () => {
    expect(ceilings('great-britain', {})).toEqual(['ingoing 150 sodium-nitrite total confirmed']);
    expect(ceilings('great-britain', { product: 'bacon', isTraditional: true })).toEqual([
      'residual 175 sodium-nitrite finished confirmed',
    ]);
    expect(ceilings('great-britain', { product: 'ham', isTraditional: true, route: 'immersion' })).toEqual([
      'residual 100 sodium-nitrite finished confirmed',
    ]);
    expect(ceilings('great-britain', { product: 'other', isTraditional: true })).toEqual([]);
  });

  // Regulation (EU) 2023/2108, figures from memory.
  test('European Union: 80 added and 45 left, as ion; traditional cures are not carried', () => {
    expect(ceilings('european-union-2025', {})).toEqual([
      'ingoing 80 nitrite-ion total memory',
      'residual 45 nitrite-ion finished memory',
    ]);
    expect(ceilings('european-union-2025', { isTraditional: true })).toEqual([]);
  });

  // Food Standards Code, Schedule 15, from memory. CODEX STAN 192, 08.2.2: read, heat-treated whole pieces.
  test('Australia and New Zealand 125, Codex 80 as ion for heat-treated pieces: what is left', () => {
    expect(ceilings('australia-new-zealand', {})).toEqual([
      'residual 125 nitrite-and-nitrate-as-sodium-nitrite finished memory',
    ]);
    expect(ceilings('codex', {})).toEqual(['residual 80 nitrite-ion finished confirmed']);
    expect(ceilings('codex', { finish: 'dried-raw' })).toEqual([]);
  });

  test('rule sets go by the ids of mixed forcemeats, so that one choice rules both', () => {
    expect(WHOLE_MUSCLE_RULE_SETS.map(({ id }) => id)).toEqual(CURE_RULE_SETS.map(({ id }) => id));
    expect(wholeMuscleRuleSet('moon')).toBeNull();
    expect(wholeMuscleRuleSet(null)).toBeNull();
    expect(HIGHEST_WHOLE_MUSCLE_PPM).toBe(625);
  });

  test('every limit names a source of the register and is never better known than it', () => {
    const ids = new Set<string>();
    for (const ruleSet of WHOLE_MUSCLE_RULE_SETS) {
      expect(ruleSet.reviewed).toMatch(/^\d{4}-\d{2}-\d{2}$/);
      for (const limit of ruleSet.limits) {
        expect(ids.has(limit.id)).toBe(false);
        ids.add(limit.id);
        expect(Object.keys(SOURCES)).toContain(limit.source);
        expect(ruleSet.sources).toContain(limit.source);
        if (sourceOf(limit.source).mark === 'memory') expect(limit.mark).toBe('memory');
      }
    }
  });

  test('no limit on nitrate is carried as one to dose up to', () => {
    const limits = WHOLE_MUSCLE_RULE_SETS.flatMap((ruleSet) => ruleSet.limits);
    expect(limits.every(({ substance }) => substance === 'nitrite')).toBe(true);
  });

  // Derived: 80 as ion is 119.98 as sodium nitrite; on 1.025 kg of product to the kilogram of meat, 122.98.
  test('a ceiling on the product is worth a little more on the meat', () => {
    const eu = wholeMuscleRuleSet('european-union-2025');
    expect(ceilingOnMeat(eu ? wholeMuscleLimits(eu, kind()) : [], 0.025)).toBeCloseTo(122.98, 2);
    const us = wholeMuscleRuleSet('us-federal');
    expect(ceilingOnMeat(us ? wholeMuscleLimits(us, kind()) : [], 0.025)).toBe(625);
    expect(ceilingOnMeat([], 0)).toBeNull();
  });
});
