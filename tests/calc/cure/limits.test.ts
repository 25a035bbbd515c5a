import {
  CURE_RULE_SETS,
  type CureAmounts,
  cureRuleSet,
  doseCeilingPpm,
  GROSS_ERROR_PPM,
  HIGHEST_CEILING_PPM,
  inLimitForm,
  judgeLimit,
  limitsFor,
} from '@larderwright/calc/cure';
import { SOURCES } from '@larderwright/calc/sources';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

function limit(id: string) {
  const found = CURE_RULE_SETS.flatMap(({ limits }) => limits).find((one) => one.id === id);
  if (!found) throw new Error(`no limit ${id}`);
  return found;
}

function amounts(change: Partial<CureAmounts> = {}): CureAmounts {
  return {
    isEmpty: false,
    meatBlockG: 1000,
    totalG: 1500,
    liningG: 0,
    finishedG: 1400,
    nitriteG: { low: 0.15, high: 0.15 },
    liningNitriteG: { low: 0, high: 0 },
    nitrateG: { low: 0, high: 0 },
    declaresNitrate: false,
    acceleratorG: { low: 0, high: 0 },
    unboundedBecause: null,
    ...change,
  };
}

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

describe('like compared with like', () => {
  test('100 as sodium nitrite is 66.7 as ion and within 80; 150 is not (derived)', () => {
    const eu = limit('eu-nitrite-added');
    const ok = judgeLimit(eu, amounts({ totalG: 1500 }));
    expect(ok).toMatchObject({ state: 'pass', ppm: expect.closeTo(66.68, 2) });
    expect(judgeLimit(eu, amounts({ totalG: 1000 })).state).toBe('fail');
  });

  test('one batch, two answers: over on the meat block, within on everything', () => {
    const batch = amounts({ nitriteG: { low: 0.16, high: 0.16 }, totalG: 2000 });
    expect(judgeLimit(limit('us-nitrite-comminuted'), batch).state).toBe('fail');
    expect(judgeLimit(limit('gb-nitrite-added'), batch).state).toBe('pass');
  });

  test('156.25 to the last digit is within, the next thousandth is over', () => {
    const at = (low: number) =>
      judgeLimit(limit('us-nitrite-comminuted'), amounts({ nitriteG: { low, high: low } }));
    expect(at(0.15625).state).toBe('pass');
    expect(at(0.156251).state).toBe('fail');
    expect(at(0.0625 * 2.5).state).toBe('pass');
    expect(at(0.1 * 1.5625).state).toBe('pass');
  });

  test('Canada adds nitrate to nitrite as it is weighed; Australia and the US turn it into sodium nitrite', () => {
    expect(inLimitForm('nitrite-and-nitrate-salts', 100, 50)).toBe(150);
    expect(inLimitForm('nitrite-and-nitrate-as-sodium-nitrite', 100, 50)).toBeCloseTo(140.6, 1);
    expect(inLimitForm('sodium-nitrite', 100, 50)).toBe(100);
  });
});

describe('what is not known', () => {
  const us = limit('us-nitrite-comminuted');

  test('an unbounded figure is cannot-tell, with the reason', () => {
    const open = { nitriteG: { low: 0, high: null } };
    expect(judgeLimit(us, amounts({ ...open, unboundedBecause: 'strength' }))).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.strength-unknown',
    });
    expect(judgeLimit(us, amounts({ ...open, unboundedBecause: 'curing-salt-amount' })).reason).toBe(
      'cure.cure-amount-unknown',
    );
  });

  test('what is certain can already be over', () => {
    const one = judgeLimit(us, amounts({ nitriteG: { low: 0.2, high: null }, unboundedBecause: 'strength' }));
    expect(one).toMatchObject({ state: 'fail', reason: 'cure.over' });
  });

  test('a bound that could break the limit is cannot-tell; one that could not is a pass', () => {
    expect(judgeLimit(us, amounts({ nitriteG: { low: 0.12, high: 0.16 } }))).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.carried-unknown',
    });
    expect(judgeLimit(us, amounts({ nitriteG: { low: 0.12, high: 0.156 } })).state).toBe('pass');
  });

  test('an unknown weight is cannot-tell, and so is nitrite without a meat block', () => {
    expect(judgeLimit(us, amounts({ meatBlockG: null })).reason).toBe('cure.mass-unknown');
    expect(judgeLimit(us, amounts({ meatBlockG: 0 })).reason).toBe('cure.no-meat-block');
    expect(judgeLimit(limit('gb-nitrite-added'), amounts({ totalG: null })).reason).toBe('cure.mass-unknown');
  });

  test('an empty formula passes nothing', () => {
    const empty = amounts({ isEmpty: true, nitriteG: { low: 0, high: 0 } });
    for (const ruleSet of CURE_RULE_SETS) {
      for (const one of ruleSet.limits) {
        expect(judgeLimit(one, empty), one.id).toMatchObject({ state: 'cannot-tell', reason: 'cure.empty' });
      }
    }
  });

  test('nitrate not declared leaves the laws that count it open', () => {
    const open = amounts({ nitrateG: { low: 0, high: null } });
    expect(judgeLimit(limit('canada-nitrite-ingoing'), open).reason).toBe('cure.nitrate-not-declared');
    expect(judgeLimit(limit('anz-nitrite-in-food'), open).reason).toBe('cure.nitrate-not-declared');
    expect(judgeLimit(limit('gb-nitrite-added'), open).state).toBe('pass');
  });

  test('a cured lining counts on the product and not on the meat block', () => {
    const lined = amounts({
      nitriteG: { low: 0.2, high: 0.2 },
      totalG: 1400,
      meatBlockG: 1400,
      liningG: 100,
      liningNitriteG: { low: 0.05, high: 0.05 },
    });
    expect(judgeLimit(limit('gb-nitrite-added'), lined)).toMatchObject({
      state: 'fail',
      ppm: expect.closeTo(166.67, 2),
    });
    expect(judgeLimit(us, lined)).toMatchObject({ state: 'pass', ppm: expect.closeTo(142.86, 2) });
  });

  test('a bare lining never dilutes', () => {
    const lined = amounts({ nitriteG: { low: 0.24, high: 0.24 }, liningG: 5000 });
    expect(judgeLimit(limit('gb-nitrite-added'), lined).state).toBe('fail');
  });
});

describe('for any batch', () => {
  const span = fc
    .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.option(fc.double({ min: 0, max: 1, noNaN: true })))
    .map(([low, more]) => ({ low, high: more === null ? null : low + more }));
  const mass = fc.option(fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 1e5, noNaN: true })));
  const anyAmounts = fc.record({
    isEmpty: fc.boolean(),
    meatBlockG: mass,
    totalG: mass,
    liningG: mass,
    finishedG: mass,
    nitriteG: span,
    liningNitriteG: span,
    nitrateG: span,
    declaresNitrate: fc.boolean(),
    acceleratorG: span,
    unboundedBecause: fc.constantFrom('strength', 'curing-salt-amount', 'carried-amount', null),
  });
  const anyLimit = fc.constantFrom(...CURE_RULE_SETS.flatMap(({ limits }) => limits));
  const rank = { pass: 0, 'cannot-tell': 1, fail: 2 } as const;

  test('no figure is NaN or endless, and a pass stays within its limit', () => {
    fc.assert(
      fc.property(anyAmounts, anyLimit, (batch, one) => {
        const judged = judgeLimit(one, batch);
        for (const ppm of [judged.ppm, judged.highestPpm]) {
          if (ppm !== null) expect(Number.isFinite(ppm)).toBe(true);
        }
        if (judged.state === 'pass')
          expect(judged.highestPpm ?? Number.NaN).toBeLessThanOrEqual(one.valuePpm * 1.000001);
      }),
    );
  });

  test('more nitrite never makes a verdict better', () => {
    fc.assert(
      fc.property(anyAmounts, anyLimit, fc.double({ min: 0, max: 1, noNaN: true }), (batch, one, more) => {
        const { low, high } = batch.nitriteG;
        const stronger = {
          ...batch,
          nitriteG: { low: low + more, high: high === null ? null : high + more },
        };
        expect(rank[judgeLimit(one, stronger).state]).toBeGreaterThanOrEqual(
          rank[judgeLimit(one, batch).state],
        );
      }),
    );
  });

  test('knowing less never turns a verdict into a pass', () => {
    fc.assert(
      fc.property(anyAmounts, anyLimit, (batch, one) => {
        const vaguer = { ...batch, nitriteG: { ...batch.nitriteG, high: null } };
        const before = judgeLimit(one, batch).state;
        if (before !== 'pass') expect(judgeLimit(one, vaguer).state).not.toBe('pass');
        if (one.substance === 'nitrite') expect(judgeLimit(one, vaguer).state).not.toBe('pass');
      }),
    );
  });
});
