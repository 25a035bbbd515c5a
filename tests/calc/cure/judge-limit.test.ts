import { CURE_RULE_SETS, type CureAmounts, inLimitForm, judgeLimit } from '@larderwright/calc/cure';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limit } from './run-stage.ts';

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
