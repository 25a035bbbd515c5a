import { dryCureStage, newDryCureSlice } from '@larderwright/calc/dry-cure';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cureSlice, grams, pack, percent, piece, ppm, run } from './pieces.ts';

describe('a belly in a bag at equilibrium', () => {
  // Derived: 120 mg/kg on 5 kg of 6.25 % is 9.6 g; 125 g of salt less 9.0 in the cure; 50 g of sugar.
  test('cure 9.6, salt 116, sugar 50 g; 120 mg/kg on the meat', () => {
    const { first, verdict } = run();
    expect(first?.inUse).toEqual({ plainSaltG: 116, curingSaltG: 9.6, sugarG: 50, isCureWeighed: false });
    expect(first?.nitritePpmMeat).toBeCloseTo(120, 9);
    expect(first?.saltFraction).toBeCloseTo(0.025, 9);
    // Less on meat with its cure: derived, 0.6 g on 5,175.6 g.
    expect(first?.nitritePpmTotal).toBeCloseTo(115.93, 2);
    expect(verdict('nitrite')).toMatchObject({ state: 'pass', subjectId: 'one', basis: 'us-9-cfr-424-22-b' });
    expect(verdict('nitrate')).toMatchObject({ state: 'pass' });
  });

  // FSIS Directive 7620.3; 9 CFR 424.22(b)(3): skin-free green weight of bellies.
  test('with its skin it is counted on nine tenths', () => {
    const skin = run({ pieces: [piece({ skinOff: blankEntry('g'), skinOn: grams('5000') })] });
    expect(skin.first?.greenG).toBe(4500);
    expect(skin.first?.inUse.curingSaltG).toBe(8.6);
    expect(skin.ids).toContain('dry-cure.skin-estimated');
  });

  test('each piece has its own dose and its own verdict', () => {
    const two = run({ pieces: [piece(), piece({ id: 'two', skinOff: grams('2500') })] });
    expect(two.values.pieces.map(({ inUse }) => inUse.curingSaltG)).toEqual([9.6, null]);
    // 4.8 g is under 50 steps of 0.1 g (common practice, no source).
    expect(two.ids).toContain('dry-cure.too-small-to-weigh');
    expect(two.verdicts.filter(({ id }) => id === 'dry-cure.nitrite').map(({ state }) => state)).toEqual([
      'pass',
      'cannot-tell',
    ]);
  });

  // Derived: 200 × 5.025 ÷ 62.5 = 16.08 g; the nearest step, 16.1 g, is 200.2 mg/kg.
  test('cure near its ceiling rounds down', () => {
    const near = run({ nitriteTarget: ppm('200'), pieces: [piece({ skinOff: grams('5025') })] });
    expect(near.first?.inUse.curingSaltG).toBe(16);
    expect(near.verdict('nitrite')?.state).toBe('pass');
    expect(run({ nitriteTarget: ppm('201') }).ids).toContain('dry-cure.target-over-ceiling');
  });

  // 9 CFR 424.21(c), dry cure: 1 oz to 100 lb, 625 mg/kg, for what is not bacon.
  test('a ham may be dosed where bacon may not', () => {
    const ham = run({ product: 'ham', finish: 'cooked', nitriteTarget: ppm('300') });
    expect(ham.first?.plan?.dose).toMatchObject({ ok: true });
    expect(ham.verdict('nitrite')?.state).toBe('pass');
    expect(run({ nitriteTarget: ppm('300') }).first?.plan?.dose).toMatchObject({ ok: false });
  });

  test('what was weighed is judged, not what was planned', () => {
    const over = run({ pieces: [piece({ curingSaltActual: grams('20') })] });
    expect(over.first?.nitritePpmMeat).toBeCloseTo(250, 9);
    expect(over.verdict('nitrite')?.state).toBe('fail');
    expect(over.ids).toContain('dry-cure.over-limit');
  });

  // Derived: 20 g of a 6.25 % pack to the kilogram is 1,250 mg/kg.
  test('curing salt in the place of salt is a gross error, under any rule set or none', () => {
    for (const ruleSetId of ['us-federal', 'australia-new-zealand', null]) {
      const swapped = run({ pieces: [piece({ curingSaltActual: grams('100') })] }, { ruleSetId });
      expect(swapped.ids).toContain('dry-cure.gross-error');
    }
  });

  // Derived: 24 g of a 0.5 % pack to the kilogram for 120 mg/kg; 2 % salt cannot hold it.
  test('with a weak pack salt and nitrite are one lever', () => {
    const weak = run({ pack: pack('0.5'), saltTarget: percent('2') });
    expect(weak.first?.inUse.curingSaltG).toBe(120);
    expect(weak.first?.plan?.saltOverG).toBeCloseTo(19.4, 1);
    expect(weak.ids).toContain('dry-cure.cure-brings-too-much-salt');
    expect(run({ pack: pack('0.5') }).first?.inUse.plainSaltG).toBeCloseTo(5.6, 9);
  });

  // Trap: 120 as sodium nitrite is 80 as ion. Limit from memory.
  test('salt or ion: 120 mg/kg on the meat is within 80 as ion on the product', () => {
    const eu = run({}, { ruleSetId: 'european-union-2025' });
    expect(eu.first?.inUse.curingSaltG).toBe(9.6);
    expect(eu.verdict('nitrite')).toMatchObject({ state: 'pass', mark: 'memory' });
    expect(eu.first?.nitriteIonPpmTotal).toBeCloseTo(77.3, 1);
    // What is left through shelf life can only be measured.
    expect(eu.verdict('nitrite-residual')?.state).toBe('cannot-tell');
  });

  test('a traditional cure of the European Union has limits that are not carried: no dose, no verdict', () => {
    const eu = run({ isTraditional: true }, { ruleSetId: 'european-union-2025' });
    expect(eu.verdict('nitrite')).toMatchObject({
      state: 'cannot-tell',
      reason: 'dry-cure.limit-not-carried',
    });
    expect(eu.first?.inUse.curingSaltG).toBeNull();
  });

  test('a residue is bounded by the lighter finished weight once it dried', () => {
    const dried = run(
      {
        product: 'ham',
        finish: 'dried-raw',
        nitriteTarget: ppm('100'),
        pieces: [piece({ now: grams('3500') })],
      },
      { ruleSetId: 'australia-new-zealand' },
    );
    // Derived: 100 ÷ 0.7 is 143 mg/kg if none were used up, over 125 (from memory).
    expect(dried.verdict('nitrite-residual')).toMatchObject({ state: 'cannot-tell' });
    expect(dried.verdict('nitrite-residual')?.params.highestPpm).toBeCloseTo(142.9, 1);
  });
});

describe('salt box and rub', () => {
  test.each(['salt-box', 'rub'] as const)('%s: no dose and no concentration is ever given', (method) => {
    for (const curingSaltActual of [blankEntry('g'), grams('9.6'), grams('60')]) {
      const { first, verdict, ids } = run({ method, pieces: [piece({ curingSaltActual })] });
      expect(first).toMatchObject({
        plan: null,
        saltFraction: null,
        nitritePpmMeat: null,
        nitritePpmTotal: null,
        nitriteIonPpmTotal: null,
        ceilings: [],
      });
      expect(verdict('nitrite')).toMatchObject({
        state: 'cannot-tell',
        reason: 'dry-cure.uptake-unknown',
        params: {},
      });
      expect(ids).toContain('dry-cure.uptake-unknown');
    }
  });

  test('nitrate in the pack is a stop all the same', () => {
    expect(run({ method: 'salt-box', pack: pack('6.25', '4') }).ids).toContain('dry-cure.nitrate-present');
  });
});

describe('nitrate', () => {
  // 9 CFR 424.21(c): none in bacon. Common practice, no source: none in what is cooked or fresh.
  test.each([
    ['bacon', 'dried-raw', 'fail'],
    ['bacon', null, 'fail'],
    ['ham', 'cooked', 'fail'],
    ['other', 'cook-before-eating', 'fail'],
    ['ham', 'dried-raw', 'cannot-tell'],
    ['ham', null, 'cannot-tell'],
  ] as const)('in %s, %s: %s', (product, finish, state) => {
    expect(run({ product, finish, pack: pack('6.25', '4') }).verdict('nitrate')?.state).toBe(state);
  });

  test('blank is unknown, and 0 is none', () => {
    expect(run({ pack: pack('6.25', '') }).verdict('nitrate')?.state).toBe('cannot-tell');
    expect(run({ pack: pack('6.25', '') }).ids).toContain('dry-cure.nitrate-blank');
  });

  test('where a law adds it to nitrite it is counted', () => {
    // Derived: 8 g of 6.25 % nitrite and 4 % nitrate on 5 kg: 100 and 64 mg/kg on the meat; Canada adds the salts.
    const of = (nitrate: string) =>
      run(
        { product: 'ham', finish: 'dried-raw', pack: pack('6.25', nitrate), nitriteTarget: ppm('100') },
        { ruleSetId: 'canada-federal' },
      ).verdict('nitrite')?.params.ppm;
    expect(Number(of('4')) / Number(of('0'))).toBeCloseTo(1.64, 2);
  });
});

describe('cold, thickness and drying', () => {
  test('above 5 °C is a stop, blank is missing', () => {
    expect(
      run({ chillTemp: enteredEntry('5.5', 'C') }).findings.find(({ id }) => id === 'dry-cure.too-warm'),
    ).toMatchObject({
      severity: 'stop',
      caution: 'curing-room-cold',
    });
    expect(run().ids).not.toContain('dry-cure.too-warm');
    expect(run({ chillTemp: blankEntry('C') }).missing.map(({ field }) => field)).toContain(
      'dryCure.chillTemp',
    );
  });

  test('over 60 mm asks for the needle or the knife', () => {
    expect(run({ pieces: [piece({ thickness: enteredEntry('61', 'mm') })] }).ids).toContain('dry-cure.thick');
    expect(run({ pieces: [piece({ thickness: enteredEntry('60', 'mm') })] }).ids).not.toContain(
      'dry-cure.thick',
    );
  });

  test('dried and eaten raw is a stop that no figure lifts', () => {
    const dried = run({
      product: 'other',
      finish: 'dried-raw',
      lossTarget: percent('35'),
      saltTarget: percent('3'),
    });
    expect(dried.findings.find(({ id }) => id === 'dry-cure.dried-specialist')?.severity).toBe('stop');
    expect(dried.first?.targetMassG).toBe(3250);
    expect(dried.first?.saltAtTargetFraction).toBeCloseTo(0.0462, 3);
    expect(run({ lossTarget: percent('10') }).ids).toContain('dry-cure.dried-specialist');
  });

  test('dates run from the start to both ends of the guidance', () => {
    const { first } = run();
    expect(first?.time.guidanceDays).toEqual({ low: 12, high: 24 });
    expect(first?.turnOn).toHaveLength(12);
    expect(first?.readyFrom).toBe('2026-11-14');
    expect(first?.readyBy).toBe('2026-11-26');
  });
});

describe('what is missing', () => {
  test('an empty dry cure says nothing', () => {
    const result = dryCureStage({ cure: cureSlice(), dryCure: newDryCureSlice() });
    expect(result.findings).toEqual([]);
    expect(result.verdicts).toEqual([]);
  });

  test('a blank target is unknown and not none; 0 is none', () => {
    const blank = run({ nitriteTarget: blankEntry('ppm') });
    expect(blank.verdict('nitrite')?.state).toBe('cannot-tell');
    expect(blank.first?.inUse.plainSaltG).toBeNull();
    const none = run({ nitriteTarget: ppm('0'), pack: pack('', '') });
    expect(none.verdict('nitrite')).toMatchObject({ state: 'pass', reason: 'dry-cure.nothing-added' });
    expect(none.first?.inUse.plainSaltG).toBe(125);
    expect(none.ids).not.toContain('dry-cure.strength-missing');
  });

  test.each([
    [{ pack: pack('') }, {}, 'dry-cure.strength-unknown'],
    [{ product: null }, {}, 'dry-cure.product-unknown'],
    [{}, { ruleSetId: null }, 'dry-cure.no-rule-set'],
    [{}, { ruleSetId: 'moon' }, 'dry-cure.rule-set-unknown'],
    [{}, { scaleReadability: blankEntry('g') }, 'dry-cure.cure-amount-unknown'],
  ] as const)('%o %o: cannot tell, and no dose', (dryCure, cure, reason) => {
    const of = run(dryCure, cure);
    expect(of.verdict('nitrite')).toMatchObject({ state: 'cannot-tell', reason });
    expect(of.first?.inUse.curingSaltG).toBeNull();
  });

  test('a piece without a weight passes nothing', () => {
    const of = run({ pieces: [piece({ skinOff: blankEntry('g') })] });
    expect(of.verdict('nitrite')?.state).toBe('cannot-tell');
    expect(of.missing.map(({ field }) => field)).toContain('dryCure.pieces.one.skinOff');
  });

  test('a weight that cannot be read is unknown; the plan does not stand in for it', () => {
    const of = run({ pieces: [piece({ curingSaltActual: enteredEntry('1 tsp', 'g') })] });
    expect(of.first?.nitritePpmMeat).toBeNull();
    expect(of.ids).toContain('dry-cure.grams-only');
    expect(of.verdict('nitrite')?.state).toBe('cannot-tell');
  });

  test('one person for both is told', () => {
    expect(run({}, { checkedBy: 'a ' }).ids).toContain('dry-cure.same-person');
    expect(run({}, { checkedBy: '' }).ids).toContain('dry-cure.second-person-missing');
  });
});

describe('what always holds of a dry cure', () => {
  const target = fc.integer({ min: 40, max: 200 });

  test('nitrite is the same at any size before rounding to the scale', () => {
    fc.assert(
      fc.property(
        target,
        fc.integer({ min: 1000, max: 20_000 }),
        fc.integer({ min: 2, max: 10 }),
        (wanted, mass, k) => {
          const exact = (grammes: number) => {
            const dose = run({
              nitriteTarget: ppm(String(wanted)),
              pieces: [piece({ skinOff: grams(String(grammes)) })],
            }).first?.plan?.dose;
            return dose?.exactG ?? Number.NaN;
          };
          expect(exact(mass * k) / (mass * k)).toBeCloseTo(exact(mass) / mass, 12);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('a dose is whole steps of the scale and never over the ceiling, at any target up to it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1500, max: 3000 }).map((n) => n / 15),
        fc.integer({ min: 3000, max: 30_000 }),
        (wanted, mass) => {
          const { first, verdict } = run({
            nitriteTarget: ppm(wanted.toFixed(3)),
            pieces: [piece({ skinOff: grams(String(mass)) })],
          });
          const doseG = first?.inUse.curingSaltG;
          if (doseG === null || doseG === undefined) return;
          expect(Math.abs(doseG * 10 - Math.round(doseG * 10))).toBeLessThan(1e-6);
          expect(first?.nitritePpmMeat).toBeLessThanOrEqual(200 * (1 + 1e-9));
          expect(verdict('nitrite')?.state).toBe('pass');
        },
      ),
      { numRuns: 60 },
    );
  });

  test('salt is what the printed weights add up to, within one step of the scale', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1500, max: 20_000 }),
        fc.integer({ min: 220, max: 350 }),
        (mass, salt) => {
          const fraction = salt / 10_000;
          const { first } = run({
            saltTarget: percent((fraction * 100).toFixed(2)),
            pieces: [piece({ skinOff: grams(String(mass)) })],
          });
          if (first?.inUse.plainSaltG === null || first?.inUse.curingSaltG === null || first === undefined)
            return;
          const totalG = first.inUse.plainSaltG + first.inUse.curingSaltG * 0.9375;
          expect(first.saltFraction).toBeCloseTo(totalG / mass, 12);
          expect(Math.abs(totalG - fraction * mass)).toBeLessThanOrEqual(0.0501);
        },
      ),
      { numRuns: 40 },
    );
  });
});
