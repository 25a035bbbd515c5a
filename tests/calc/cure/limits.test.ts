import {
  CURE_RULE_SETS,
  cureRuleSet,
  doseCeilingPpm,
  GROSS_ERROR_PPM,
  HIGHEST_CEILING_PPM,
  limitsFor,
} from '@larderwright/calc/cure';
import { SOURCES } from '@larderwright/calc/sources';
import { describe, expect, test } from 'vitest';
import { limit } from './run-stage.ts';

describe('limits as published', () => {
  // 9 CFR 424.21(c), table, annual edition of 2015: ¼ oz to 100 lb of meat, by-product or poultry.
  // FSIS Directive 7620.3 (rev. 1995), chapter 3: counted on green weight.
  test('United States: 156.25 computed, 156 printed, as sodium nitrite on the meat block', () => {
    expect(limit('us-nitrite-comminuted')).toMatchObject({
      valuePpm: 156.25,
      printed: '156',
      expressedAs: 'sodium-nitrite',
      basis: 'meat-block',
      kind: 'ingoing',
      mark: 'confirmed',
    });
  });

  // 9 CFR 424.21(c), the same table: 200 ppm nitrite, nitrate or both in the finished product.
  test('United States: 200 in the finished product, nitrate counted in', () => {
    expect(limit('us-nitrite-finished')).toMatchObject({
      valuePpm: 200,
      kind: 'residual',
      basis: 'finished',
    });
  });

  // 9 CFR 424.21(c), the same table: ⅞ oz of the sodium salt to 100 lb.
  test('United States: 546.875 of sodium ascorbate or erythorbate, printed 547', () => {
    expect(limit('us-accelerator')).toMatchObject({ valuePpm: 546.875, printed: '547' });
  });

  // FSIS Directive 7620.3 (rev. 1995), p. 12, as quoted by others.
  test('United States: 120 is a policy for "keep refrigerated" goods, not a ceiling', () => {
    expect(limit('us-nitrite-keep-refrigerated')).toMatchObject({ valuePpm: 120, role: 'policy-floor' });
  });

  // CFIA Meat Hygiene Manual, chapter 4, glossary, in a copy; Health Canada: 0.32 oz to 100 lb.
  test('Canada: 200 of nitrite and nitrate together on the whole raw batch, 100 to be called cured', () => {
    expect(limit('canada-nitrite-ingoing')).toMatchObject({
      valuePpm: 200,
      expressedAs: 'nitrite-and-nitrate-salts',
      basis: 'total',
      role: 'ceiling',
    });
    expect(limit('canada-called-cured')).toMatchObject({
      valuePpm: 100,
      role: 'naming-floor',
      basis: 'total',
    });
  });

  // Regulation (EC) No 1333/2008, Annex II, 08.3.1 and 08.3.2, text before 2023.
  test('Great Britain: 150 added as sodium nitrite on the product, 100 where sterilised', () => {
    expect(limit('gb-nitrite-added')).toMatchObject({
      valuePpm: 150,
      expressedAs: 'sodium-nitrite',
      basis: 'total',
    });
    expect(limit('gb-nitrite-added-sterilised')).toMatchObject({ valuePpm: 100, heating: 'sterilised' });
  });

  // Regulation (EU) 2023/2108: from memory; date and ion basis confirmed in summaries.
  test('European Union: 80 added and 45 left, as ion, sterilised 55 and 25, all marked from memory', () => {
    expect(limit('eu-nitrite-added')).toMatchObject({
      valuePpm: 80,
      expressedAs: 'nitrite-ion',
      mark: 'memory',
    });
    expect(limit('eu-nitrite-residual')).toMatchObject({ valuePpm: 45, kind: 'residual', mark: 'memory' });
    expect(limit('eu-nitrite-added-sterilised')).toMatchObject({ valuePpm: 55, mark: 'memory' });
    expect(limit('eu-nitrite-residual-sterilised')).toMatchObject({ valuePpm: 25, mark: 'memory' });
    expect(cureRuleSet('european-union-2025')?.appliesFrom).toBe('2025-10-09');
  });

  // Food Standards Code, Schedule 15: from memory.
  test('Australia and New Zealand: 125 left as sodium nitrite, nitrate counted in, marked from memory', () => {
    expect(limit('anz-nitrite-in-food')).toMatchObject({
      valuePpm: 125,
      kind: 'residual',
      expressedAs: 'nitrite-and-nitrate-as-sodium-nitrite',
      mark: 'memory',
    });
  });

  // CODEX STAN 192-1995, 08.3.2: from memory.
  test('Codex: 80 left as ion, marked from memory', () => {
    expect(limit('codex-nitrite-residual')).toMatchObject({
      valuePpm: 80,
      expressedAs: 'nitrite-ion',
      mark: 'memory',
    });
  });

  // French action plan of 2023, in a summary: pâtés and rillettes 120, 100, 90.
  test('France’s undertakings are shown beside the limits and judged nowhere', () => {
    expect(cureRuleSet('european-union-2025')?.references?.map(({ valuePpm }) => valuePpm)).toEqual([
      120, 100, 90,
    ]);
  });

  test('every limit names a source of the register and is never better known than it', () => {
    for (const ruleSet of CURE_RULE_SETS) {
      expect(ruleSet.reviewed, ruleSet.id).toMatch(/^\d{4}-\d{2}-\d{2}$/);
      for (const one of ruleSet.limits) {
        expect(SOURCES[one.source].mark === 'memory' ? one.mark : 'memory', one.id).toBe('memory');
        expect(ruleSet.sources).toContain(one.source);
      }
    }
  });

  test('ids are unique, and an unknown or unchosen rule set is null', () => {
    const ids = CURE_RULE_SETS.flatMap(({ id, limits }) => [id, ...limits.map((one) => one.id)]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(cureRuleSet(null)).toBeNull();
    expect(cureRuleSet('moon')).toBeNull();
  });

  test('a sterilised product has its own limits and not the others', () => {
    const gb = cureRuleSet('great-britain');
    expect(gb && limitsFor(gb, 'sterilised').map(({ id }) => id)).toEqual(['gb-nitrite-added-sterilised']);
    expect(gb && limitsFor(gb, 'heat-treated').map(({ id }) => id)).toEqual(['gb-nitrite-added']);
  });

  test('no dose aims above the ceiling: 80 as ion is 119.98 as sodium nitrite (derived)', () => {
    const ceilings = CURE_RULE_SETS.map((ruleSet) => [ruleSet.id, doseCeilingPpm(ruleSet, 'heat-treated')]);
    expect(Object.fromEntries(ceilings)).toEqual({
      'us-federal': 156.25,
      'canada-federal': 200,
      'great-britain': 150,
      'european-union-2025': expect.closeTo(119.98, 2),
      'australia-new-zealand': 125,
      codex: expect.closeTo(119.98, 2),
    });
  });

  test('above 200 no rule set carried here lets a mixed product go, and 500 is no recipe', () => {
    expect(HIGHEST_CEILING_PPM).toBe(200);
    expect(GROSS_ERROR_PPM).toBe(500);
  });
});
