import {
  acceleratorLimit,
  equilibriumSalt,
  gainFraction,
  immersionPpm,
  LAW_PICKLE_LB_PER_GALLON,
  MIXING_ORDER,
  newBrineSlice,
  PHOSPHATE_LIMIT,
  pickleSalt,
  pumpedPpm,
  saltAtEquilibrium,
  uptakeOf,
  WATER_LB_PER_GALLON,
} from '@larderwright/calc/brine';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pack, run } from './brines.ts';

const ppm = (text: string) => enteredEntry(text, 'ppm');
const percent = (text: string) => enteredEntry(text, '%');
const grams = (text: string) => enteredEntry(text, 'g');
const actuals = (changes: Partial<ReturnType<typeof newBrineSlice>['actual']>) => ({
  ...newBrineSlice().actual,
  ...changes,
});

describe('two federal countings of one vat', () => {
  // FSIS Directive 7620.3, immersion methods 1 and 2; inputs derived: 37.5 and 187.5 mg/kg.
  test('stand side by side with the worst case, five-fold apart', () => {
    const vat = immersionPpm({ nitriteG: 1.875, greenG: 5000, pickleG: 5000, pickUpFraction: 0.1 });
    expect(vat.pickUpPpm).toBeCloseTo(37.5, 9);
    expect(vat.equilibriumPpm).toBeCloseTo(187.5, 9);
    expect(vat.worstPpm).toBeCloseTo(375, 9);
  });

  const vat = {
    method: 'equilibrium',
    skinOff: grams('5000'),
    water: grams('4800'),
    saltTarget: percent('1.5'),
    pickUp: percent('10'),
    acceleratorForm: null,
    acceleratorTarget: blankEntry('ppm'),
    sugar: blankEntry('%'),
    actual: actuals({ curingSalt: grams('35') }),
  } as const;

  test('without a choice of method the verdict cannot be told while the worst case is over', () => {
    const open = run(vat);
    expect(open.verdict('nitrite')).toMatchObject({ state: 'cannot-tell', reason: 'brine.carried-unknown' });
    expect(open.ids).toContain('brine.methods-differ');
    expect(open.values.methodsDiffer).toBeGreaterThan(4.5);
  });

  test('each method gives its own verdict, and the worst case is named beside a pass', () => {
    const byPickUp = run({ ...vat, federalMethod: 'pick-up' });
    expect(byPickUp.verdict('nitrite')).toMatchObject({ state: 'pass' });
    expect(byPickUp.ids).toContain('brine.worst-case-over');
    // 35 g of 6.25 % on about 10 kg is 219 mg/kg: over 200 (9 CFR 424.21(c)).
    const even = run({ ...vat, federalMethod: 'equilibrium' });
    expect(even.verdict('nitrite')).toMatchObject({ state: 'fail' });
    expect(even.ids).toContain('brine.over-limit');
  });

  test('another country’s rule set takes neither method', () => {
    const gb = run({ ...vat, federalMethod: 'pick-up' }, { ruleSetId: 'great-britain' });
    expect(gb.verdict('nitrite')?.state).toBe('cannot-tell');
  });

  test('a pick-up chosen and not weighed is no figure', () => {
    const blank = run({ ...vat, federalMethod: 'pick-up', pickUp: blankEntry('%') });
    expect(blank.values.immersion?.pickUpPpm).toBeNull();
    expect(blank.verdict('nitrite')?.state).toBe('cannot-tell');
    expect(blank.missing.map(({ field }) => field)).toContain('brine.pickUp');
  });

  // 9 CFR 424.21(c): 2 lb to 100 gallons at a 10 % pump is 200 mg/kg at 10 lb to the gallon; derived: 239.9 at 8.337.
  test('the gallon of the law weighs 10 lb, water 8.337, and the brine its own', () => {
    expect(pumpedPpm(2, 100 * LAW_PICKLE_LB_PER_GALLON, 0.1)).toBeCloseTo(200, 9);
    expect(pumpedPpm(2, 100 * WATER_LB_PER_GALLON, 0.1)).toBeCloseTo(239.9, 1);
    const { values, ids } = run(vat);
    expect(ids).toContain('brine.gallon-assumption');
    expect(values.pickleLbPerGallon).toBeGreaterThan(8.337);
    expect(values.pickleLbPerGallon).toBeLessThan(10);
  });
});

describe('injection alone', () => {
  const inject = {
    method: 'inject',
    injection: percent('20'),
    retained: percent('100'),
    saltTarget: percent('2.2'),
  } as const;

  test('the pickle is as much stronger as the pump is smaller', () => {
    const { values, verdict } = run(inject);
    // Derived: 120 ÷ 0.20 = 600 mg/kg in the pickle, rounding to the scale aside.
    const inPickle = ((values.nitriteG ?? 0) / (values.pickleG ?? 1)) * 1e6;
    expect(Math.abs(inPickle - 600)).toBeLessThan(10);
    expect(Math.abs((values.pumpedPpm ?? 0) - 120)).toBeLessThan(2);
    expect(verdict('nitrite')).toMatchObject({ state: 'pass' });
    // Derived: 2.2 % of the pumped meat.
    const pumped = (values.salt?.saltInMeat ?? 0) / (2400 * 1.2);
    expect(pumped).toBeCloseTo(0.022, 3);
  });

  test('a weighed pump outranks the plan, in salt and in nitrite', () => {
    const weighed = run({ ...inject, afterInjection: grams('3000') });
    expect(weighed.values.pumpFraction).toBeCloseTo(0.25, 9);
    expect(weighed.values.isPumpWeighed).toBe(true);
    expect(weighed.values.pumpedPpm).toBeCloseTo(((run(inject).values.pumpedPpm ?? 0) * 0.25) / 0.2, 6);
    expect(weighed.ids).toContain('brine.pump-differs');
    expect(weighed.ids).toContain('brine.added-water');
  });

  test('what drains off takes its salt along and none of the counted nitrite', () => {
    const drained = run({ ...inject, retained: percent('80') }).values;
    expect(drained.salt?.saltInMeat).toBeGreaterThan(0);
    expect(drained.expectedMassG).toBeCloseTo(2400 * 1.16, 6);
    expect(Math.abs((drained.pumpedPpm ?? 0) - 120)).toBeLessThan(2);
  });

  // Derived: 2.2 % by a 10 % pump of which 90 % stays asks for 26.6 % salt, more than water dissolves.
  test('a pump too small for the salt is refused', () => {
    expect(pickleSalt(0.022, 0.1, 0.9)).toBeCloseTo(0.266, 3);
    const { values, ids } = run({ ...inject, injection: percent('10'), retained: percent('90') });
    expect(values.recipe?.refusal).toBe('cannot-dissolve');
    expect(ids).toContain('brine.cannot-dissolve');
  });

  test('percent pump is counted on the green weight, and a loss is no pump', () => {
    expect(gainFraction(1000, 1100)).toBeCloseTo(0.1, 12);
    expect(gainFraction(1000, 990)).toBeNull();
    expect(gainFraction(null, 990)).toBeNull();
    expect(gainFraction(0, 990)).toBeNull();
  });
});

describe('pumped bacon', () => {
  const bacon = {
    product: 'bacon',
    finish: 'cook-before-eating',
    method: 'inject',
    skinOff: grams('10000'),
    water: grams('5000'),
    injection: percent('12'),
    retained: percent('100'),
    saltTarget: percent('2'),
    acceleratorTarget: ppm('550'),
  } as const;

  // 9 CFR 424.22(b)(1): 120 mg/kg with 550 of the sodium salt, a level and not a ceiling.
  test('meets its level of nitrite and of erythorbate within the rounding of the scale', () => {
    const { verdict, values } = run(bacon);
    expect(values.pumpedPpm).toBeLessThanOrEqual(120);
    expect(verdict('bacon-level')).toMatchObject({ state: 'pass', basis: 'us-9-cfr-424-22-b' });
    expect(verdict('accelerator')).toMatchObject({ state: 'pass' });
    expect(verdict('nitrite')).toMatchObject({ state: 'pass' });
  });

  test.each([
    ['100', 'cannot-tell', 'brine.bacon-level-alternative'],
    ['60', 'cannot-tell', 'brine.bacon-level-alternative'],
    ['90', 'fail', 'brine.bacon-level-missed'],
    ['20', 'fail', 'brine.bacon-level-missed'],
  ])('%s mg/kg: %s', (target, state, reason) => {
    expect(run({ ...bacon, nitriteTarget: ppm(target) }).verdict('bacon-level')).toMatchObject({
      state,
      reason,
    });
  });

  test('without ascorbate or erythorbate, or with the acid, it fails', () => {
    const none = run({ ...bacon, acceleratorTarget: blankEntry('ppm') });
    expect(none.verdict('accelerator')).toMatchObject({
      state: 'fail',
      reason: 'brine.additive-not-at-level',
    });
    const acid = run({ ...bacon, acceleratorForm: 'acid' });
    expect(acid.verdict('accelerator')).toMatchObject({ state: 'fail', reason: 'brine.additive-wrong-form' });
  });

  test('never takes nitrate, whatever its finish', () => {
    const nitrate = run({ ...bacon, finish: 'dried-raw', pack: pack('6.25', '4') });
    expect(nitrate.verdict('nitrate')).toMatchObject({ state: 'fail', basis: 'us-9-cfr-424-21-c' });
    expect(nitrate.ids).toContain('brine.nitrate-present');
  });

  // 9 CFR 424.22(b)(2): immersion bacon 120 at most, on skin-free weight.
  test('in a soak is held to 120 on nine tenths of its weight with skin', () => {
    const skin = run({ ...bacon, method: 'equilibrium', skinOff: blankEntry('g'), skinOn: grams('10000') });
    expect(skin.values.greenG).toBeCloseTo(9000, 9);
    expect(skin.verdict('nitrite')?.params).toMatchObject({ limitPpm: 120, limitId: 'us-bacon-immersion' });
    expect(skin.ids).toContain('brine.skin-estimated');
  });
});

describe('accelerator and phosphate', () => {
  // 9 CFR 424.21(c): ¾ oz and ⅞ oz to 100 lb; phosphate 0.5 %. 424.22(b): 550 in pumped bacon.
  test('acid 468.75, sodium salt 546.875, pumped bacon 550 of the sodium salt only', () => {
    expect((acceleratorLimit('acid', 'ham', 'pumped')?.valueFraction ?? 0) * 1e6).toBeCloseTo(468.75, 9);
    expect((acceleratorLimit('sodium-salt', 'ham', 'immersion')?.valueFraction ?? 0) * 1e6).toBeCloseTo(
      546.875,
      9,
    );
    expect((acceleratorLimit('sodium-salt', 'bacon', 'pumped')?.valueFraction ?? 0) * 1e6).toBeCloseTo(
      550,
      9,
    );
    expect(acceleratorLimit('acid', 'bacon', 'pumped')).toBeNull();
    expect(PHOSPHATE_LIMIT.valueFraction).toBe(0.005);
  });

  test('the same grams may pass as a salt and not as an acid', () => {
    const actual = actuals({ accelerator: grams('1.2') });
    // Derived: 1.2 g on 2.4 kg is 500 mg/kg at worst.
    expect(run({ actual }).verdict('accelerator')).toMatchObject({ state: 'pass' });
    expect(run({ actual, acceleratorForm: 'acid' }).verdict('accelerator')).toMatchObject({
      state: 'cannot-tell',
      reason: 'brine.additive-uptake-unknown',
    });
    expect(run({ actual, acceleratorForm: null }).verdict('accelerator')).toMatchObject({
      state: 'cannot-tell',
    });
  });

  test('phosphate above 0.5 % of the meat is a stop', () => {
    const inject = { method: 'inject', injection: percent('20'), retained: percent('100') } as const;
    expect(run({ ...inject, phosphate: percent('0.3') }).verdict('phosphate')).toMatchObject({
      state: 'pass',
    });
    const over = run({ ...inject, phosphate: percent('0.7') });
    expect(over.verdict('phosphate')).toMatchObject({ state: 'fail' });
    expect(over.ids).toContain('brine.phosphate-over');
  });

  test('phosphate goes in first and the accelerator last', () => {
    expect(MIXING_ORDER.indexOf('phosphate')).toBeLessThan(MIXING_ORDER.indexOf('salt'));
    expect(MIXING_ORDER.at(-1)).toBe('accelerator');
    expect(MIXING_ORDER.indexOf('curing-salt')).toBe(MIXING_ORDER.length - 2);
  });
});

describe('strong, used, old and warm brines', () => {
  const timed = {
    method: 'timed',
    strength: percent('20'),
    pickUp: percent('4'),
    sugar: blankEntry('%'),
    acceleratorTarget: blankEntry('ppm'),
  } as const;

  test('a timed brine promises no final salt, and doses nitrite only by a weighed pick-up', () => {
    const { values, ids } = run(timed);
    expect(values.salt).toBeNull();
    expect(values.isTimed).toBe(true);
    expect(values.brineSaltFraction).toBeCloseTo(0.2, 2);
    expect(values.immersion?.pickUpPpm).toBeCloseTo(120, -1);
    expect(ids).not.toContain('brine.timed-needs-pick-up');
    const blind = run({ ...timed, pickUp: blankEntry('%') });
    expect(blind.values.inUse.curingSaltG).toBeNull();
    expect(blind.ids).toContain('brine.timed-needs-pick-up');
  });

  test('over 10 % salt a soak is timed, whatever it is called', () => {
    const strong = run({ method: 'equilibrium', saltTarget: percent('5') });
    expect(strong.values.brineSaltFraction).toBeGreaterThan(0.1);
    expect(strong.ids).toContain('brine.strong-is-timed');
    expect(strong.values.salt).toBeNull();
  });

  test('a used brine is a stop; one older than a week, or dated after the meat, is told', () => {
    expect(run({ use: 'used' }).findings.find(({ id }) => id === 'brine.reused')?.severity).toBe('stop');
    expect(run({ mixedOn: '2026-10-25' }).ids).toContain('brine.old');
    expect(run({ mixedOn: '2026-11-03' }).ids).toContain('brine.old');
    expect(run({ mixedOn: '2026-10-26' }).ids).not.toContain('brine.old');
    expect(run({ use: null }).ids).toContain('brine.use-unknown');
  });

  test('above 5 °C is a stop', () => {
    expect(run({ brineTemp: enteredEntry('6', 'C') }).ids).toContain('brine.too-warm');
    expect(run({ brineTemp: enteredEntry('41', 'F') }).ids).not.toContain('brine.too-warm');
  });

  test('much water for the meat is a note', () => {
    expect(run({ water: grams('4000') }).ids).toContain('brine.much-brine');
  });
});

describe('what is missing', () => {
  test('an empty brine says nothing and passes nothing', () => {
    const { verdicts, findings, values } = run({ ...newBrineSlice() });
    expect(findings).toEqual([]);
    expect(verdicts).toEqual([]);
    expect(values.nitriteG).toBeNull();
  });

  test('strength has no default: without it nothing is dosed and nothing passes', () => {
    const blank = run({ pack: pack('', '') });
    expect(blank.values.inUse.curingSaltG).toBeNull();
    expect(blank.verdict('nitrite')?.state).toBe('cannot-tell');
    expect(blank.verdict('nitrate')?.state).toBe('cannot-tell');
    expect(blank.ids).toContain('brine.strength-missing');
  });

  test.each(['0.0625', '62.5'])('a strength of %s %% is a slip and is not computed with', (strength) => {
    expect(run({ pack: pack(strength) }).values.nitriteG).toBeNull();
  });

  test('without a rule set, a product or a method nothing is dosed', () => {
    expect(run({}, { ruleSetId: null }).values.recipe?.dose).toBeNull();
    expect(run({ product: null }).values.recipe?.dose).toBeNull();
    expect(run({ product: null }).verdict('nitrite')).toMatchObject({ reason: 'brine.product-unknown' });
    expect(run({}, { ruleSetId: 'moon' }).verdict('nitrite')).toMatchObject({
      reason: 'brine.rule-set-unknown',
    });
  });

  test('curing salt typed in ounces is not counted and is a stop', () => {
    const ounces = run({ actual: actuals({ curingSalt: enteredEntry('1/4 cup', 'g') }) });
    expect(ounces.ids).toContain('brine.grams-only');
    expect(ounces.values.inUse.curingSaltG).toBeNull();
    expect(ounces.verdict('nitrite')?.state).toBe('cannot-tell');
  });

  // Scale resolution: 50 steps at least. Common practice, no source.
  test('a scale too coarse for the cure is refused', () => {
    const coarse = run({}, { scaleReadability: grams('1') });
    expect(coarse.ids).toContain('brine.too-small-to-weigh');
    expect(coarse.values.inUse.curingSaltG).toBeNull();
  });
});

describe('what always holds of a brine', () => {
  const mass = fc.double({ min: 200, max: 50_000, noNaN: true });

  test('the worst case of a soak is never under either method', () => {
    fc.assert(
      fc.property(
        mass,
        mass,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (greenG, pickleG, nitriteG, pickUpFraction) => {
          fc.pre(pickUpFraction * greenG <= pickleG);
          const of = immersionPpm({ nitriteG, greenG, pickleG, pickUpFraction });
          expect(of.worstPpm).toBeGreaterThanOrEqual((of.pickUpPpm ?? 0) * (1 - 1e-12));
          expect(of.worstPpm).toBeGreaterThanOrEqual((of.equilibriumPpm ?? 0) * (1 - 1e-12));
        },
      ),
    );
  });

  test('more brine of the same strength never lowers the worst case', () => {
    fc.assert(
      fc.property(mass, mass, fc.double({ min: 1, max: 3, noNaN: true }), (greenG, pickleG, times) => {
        const strength = 0.0004;
        const of = (pickle: number) =>
          immersionPpm({ nitriteG: strength * pickle, greenG, pickleG: pickle, pickUpFraction: null });
        expect(of(pickleG * times).worstPpm).toBeGreaterThanOrEqual(
          (of(pickleG).worstPpm ?? 0) * (1 - 1e-12),
        );
        expect(of(pickleG * times).equilibriumPpm).toBeGreaterThanOrEqual(
          (of(pickleG).equilibriumPpm ?? 0) * (1 - 1e-12),
        );
      }),
    );
  });

  test('meat and brine scaled together hold the same of everything', () => {
    fc.assert(
      fc.property(mass, mass, fc.double({ min: 0.1, max: 20, noNaN: true }), (meat, water, k) => {
        const of = (scale: number) => {
          const vat = { meat: meat * scale, meatWaterFraction: 0.72, water: water * scale };
          const salt = equilibriumSalt(vat, 0.022, 'water-phase') ?? 0;
          return saltAtEquilibrium(vat, salt);
        };
        expect(of(k)?.waterPhaseFraction).toBeCloseTo(of(1)?.waterPhaseFraction ?? 0, 12);
        expect(of(1)?.waterPhaseFraction).toBeCloseTo(0.022, 12);
        expect(of(k)?.saltOnMeatFraction).toBeCloseTo(of(1)?.saltOnMeatFraction ?? 0, 12);
      }),
    );
  });

  test('salt in meat and in brine add up to the salt that went in', () => {
    fc.assert(
      fc.property(mass, mass, fc.double({ min: 1, max: 500, noNaN: true }), (meat, water, salt) => {
        const inMeat = saltAtEquilibrium({ meat, meatWaterFraction: 0.72, water }, salt)?.saltInMeat ?? 0;
        const inBrine = saltAtEquilibrium(
          { meat: water, meatWaterFraction: 1, water: meat * 0.72 },
          salt,
        )?.saltInMeat;
        expect(inMeat + (inBrine ?? 0)).toBeCloseTo(salt, 9);
      }),
    );
  });

  test('an uptake lies between nothing and all', () => {
    fc.assert(
      fc.property(
        mass,
        mass,
        fc.option(fc.double({ min: 0, max: 5, noNaN: true })),
        fc.constantFrom('equilibrium', 'inject-cover', 'inject', 'timed'),
        fc.constantFrom('pick-up', 'equilibrium', null),
        (greenG, pickleG, share, method, federalMethod) => {
          const uptake = uptakeOf({
            method,
            greenG,
            pickleG,
            pumpFraction: share,
            pickUpFraction: share,
            federalMethod,
          });
          if (uptake === null) return;
          expect(uptake.low).toBeGreaterThanOrEqual(0);
          expect(uptake.high).toBeGreaterThanOrEqual(uptake.low);
          expect(uptake.high).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('weights as printed give the figures: cure rounds to the scale and never over its ceiling', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 60_000 }),
        fc.integer({ min: 40, max: 200 }),
        (meat, target) => {
          const { values } = run({
            skinOff: grams(String(meat)),
            water: grams(String(meat)),
            nitriteTarget: ppm(String(target)),
          });
          const dose = values.recipe?.dose;
          if (!dose?.ok) return;
          expect(Math.abs(dose.doseG * 10 - Math.round(dose.doseG * 10))).toBeLessThan(1e-6);
          expect(values.nitriteG).toBeCloseTo(dose.doseG * 0.0625, 12);
          expect(values.nitritePpmMeatAndWater).toBeLessThanOrEqual(200 * (1 + 1e-12));
        },
      ),
    );
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -1])('%s gives null and no throw', (bad) => {
    expect(pumpedPpm(bad, 100, 0.1)).toBeNull();
    expect(pumpedPpm(1, bad, 0.1)).toBeNull();
    expect(equilibriumSalt({ meat: bad, meatWaterFraction: 0.7, water: 1 }, 0.02, 'water')).toBeNull();
    expect(saltAtEquilibrium({ meat: 1, meatWaterFraction: 0.7, water: 1 }, bad)).toBeNull();
    expect(pickleSalt(bad, 0.1, 1)).toBeNull();
  });
});
