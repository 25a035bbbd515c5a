import { binderStage, newBinderSlice, withPanade } from '@larderwright/calc/binder';
import { blendStage, newBlendMaterial, newBlendSlice } from '@larderwright/calc/blend';
import { dryCureStage } from '@larderwright/calc/dry-cure';
import { type FormulaLine, formulaStage, remainingFraction } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { flowFromFill } from '@larderwright/calc/plan';
import { enteredEntry } from '@larderwright/calc/quantities';
import { strongAromaticG } from '@larderwright/calc/seasoning';
import { purchaseG } from '@larderwright/calc/yield';
import { describe, expect, test } from 'vitest';
import { COUNTRY_TERRINE, makeLine, makeSlice } from '../../fixtures/scenario-formulas.ts';
import { belly, cureSlice } from '../dry-cure/pieces.ts';

const composition = await loadIngredients();
const percent = (text: string) => enteredEntry(text, '%');
const made = (water: string, salt: string, fat = '0') => ({
  declared: { water: percent(water), salt: percent(salt), fat: percent(fat), protein: percent('0') },
});
const stage = (lines: FormulaLine[], target = '1.7', finishedMassG: number | null = null) =>
  formulaStage(makeSlice(lines, { saltTarget: percent(target) }), { composition, finishedMassG });

describe('salt', () => {
  test('salt carried in counts: bacon, ham, smoked fish, bread, olives and curing salt stand beside the plain salt', () => {
    const { mix, plainSalt } = formulaStage(COUNTRY_TERRINE.slice, { composition }).values;
    const grams = Object.fromEntries(mix.salt.contributions.map(({ lineId, grams: g }) => [lineId, g]));
    // 180 g of bacon at 3 % (common practice) and 5.4 g of a 6.25 % pack.
    expect(grams.bacon).toBeCloseTo(5.4, 9);
    expect(grams['curing-salt']).toBeCloseTo(5.4 * 0.9375, 9);
    expect(plainSalt.state === 'ok' && plainSalt.carriedSaltG).toBeGreaterThan(10);
    // Kitchen values, common practice, no source; the olives by USDA SR28, 1,556 mg of sodium × 2.5.
    for (const [id, saltPercent] of [
      ['kitchen-bacon-dry-cured', 3],
      ['kitchen-ham-cooked', 2.1],
      ['kitchen-trout-hot-smoked', 2.5],
      ['kitchen-bread-white', 1.1],
      ['olive-green', 3.89],
    ] as const)
      expect((composition.get(id)?.saltFraction ?? Number.NaN) * 100, id).toBeCloseTo(saltPercent, 2);
  });

  test('a salted lining seasons the slice and not the mix, and counts once', () => {
    const { mix, lined } = stage([
      makeLine('pork', 'lean', null, '985', made('70', '0')),
      makeLine('salt', 'salt', null, '15'),
      makeLine('bacon', 'lining', null, '100', made('45', '3', '36')),
    ]).values;
    expect(mix.salt.fraction).toBeCloseTo(0.015, 12);
    expect(lined?.salt.fraction).toBeCloseTo(18 / 1100, 12);
  });

  test('salt is told on the water too: 1.7 % is 2.76 on 60 % of water and 3.64 on 45 %, for bacteria meet the brine', () => {
    const onWater = (water: string) =>
      (stage([makeLine('mix', 'lean', null, '983', made(water, '0')), makeLine('salt', 'salt', null, '17')])
        .values.mix.saltOnWaterFraction ?? Number.NaN) * 100;
    // 60 and 45 g of water to 100 g of mix: 61.04 and 45.78 % of the pork.
    expect(onWater(String(60 / 0.983))).toBeCloseTo(2.76, 2);
    expect(onWater(String(45 / 0.983))).toBeCloseTo(3.64, 2);
  });

  test('losing water concentrates salt: 1.7 % with a tenth lost is 1.89 in the finished slice', () => {
    const { finished } = stage(
      [makeLine('mix', 'lean', null, '983', made('60', '0')), makeLine('salt', 'salt', null, '17')],
      '1.7',
      900,
    ).values;
    expect((finished?.saltFraction ?? Number.NaN) * 100).toBeCloseTo(1.89, 2);
  });

  test('a muscle salted at 3.0 % holds 4.6 % at a loss of 35 %', () => {
    const slice = belly({
      finish: 'dried-raw',
      product: 'other',
      saltTarget: percent('3'),
      lossTarget: percent('35'),
    });
    const [piece] = dryCureStage({
      cure: cureSlice(),
      dryCure: { ...slice, nitriteTarget: enteredEntry('0', 'ppm') },
    }).values.pieces;
    expect((piece?.saltAtTargetFraction ?? Number.NaN) * 100).toBeCloseTo(4.6, 1);
  });

  test('a salt target is a share of the total it belongs to: ÷ (1 − 0.017), not 1.7 % of what stood there before', () => {
    const { plainSalt } = stage([makeLine('pork', 'lean', null, '1000', made('70', '0'))]).values;
    expect(plainSalt.state === 'ok' && plainSalt.plainSaltG).toBeCloseTo((1000 * 0.017) / 0.983, 9);
    expect(plainSalt.state === 'ok' && plainSalt.totalG).toBeCloseTo(1000 / 0.983, 9);
  });

  test('vegetable garnish is salted with the total and is not in the meat block; liquid and garnish left out would make 5–10 % too little', () => {
    const { mix, plainSalt } = stage([
      makeLine('pork', 'lean', null, '1000', made('70', '0')),
      makeLine('carrot', 'garnish', null, '100', made('88', '0')),
    ]).values;
    expect(mix.meatBlockG).toBe(1000);
    expect(mix.totalG).toBe(1100);
    expect(plainSalt.state === 'ok' && plainSalt.plainSaltG).toBeCloseTo((1100 * 0.017) / 0.983, 9);
  });

  test('cured garnish brings salt to the total and no weight to the meat block', () => {
    const { mix } = stage([
      makeLine('pork', 'lean', null, '1000', made('70', '0')),
      makeLine('ham', 'garnish', null, '100', made('70', '2.1')),
    ]).values;
    expect(mix.meatBlockG).toBe(1000);
    expect(mix.salt.grams).toBeCloseTo(2.1, 9);
  });
});

describe('shares and yields', () => {
  test('every per cent names its base: milk on the meat, salt on the total, panade on the meat', () => {
    const { mix } = stage([
      makeLine('pork', 'lean', null, '900', made('70', '0')),
      makeLine('milk', 'liquid', null, '10', { basis: 'percent-of-meat', ...made('88', '0') }),
      makeLine('salt', 'salt', null, '1', { basis: 'percent-of-total' }),
    ]).values;
    expect(mix.lines.map(({ massG }) => massG)).toEqual([900, 90, expect.closeTo(10, 9)]);
    const panade = binderStage(withPanade(newBinderSlice(), 'bread', 250), {
      meatG: 2400,
      totalG: 4000,
      finishedG: null,
      mixDensityGPerMl: 1.04,
      mouldWidthMm: 95,
      mouldHeightMm: 65,
      composition,
    });
    // 10 % by default: of the meat 240 g, of the total it would be 400.
    expect(panade.values.panade.wantedCookedG).toBeCloseTo(240, 9);
  });

  test('lean is not without fat: its own fat is taken off the back fat, and a lean typed as none is doubted', () => {
    const material = (id: string, part: 'lean' | 'fat', fat: string) => {
      const blank = newBlendMaterial(id, part);
      return { ...blank, name: id, declared: { ...blank.declared, fat: percent(fat) } };
    };
    const blend = (leanFat: string) =>
      blendStage(
        {
          ...newBlendSlice(),
          materials: [material('lean', 'lean', leanFat), material('back fat', 'fat', '88')],
          total: enteredEntry('10', 'kg'),
          freeA: 'lean',
          freeB: 'back fat',
          fatTarget: percent('28'),
        },
        { composition, familyId: null },
      );
    // (88 − 28) ÷ (88 − 5) and ÷ 88 of 10 kg.
    expect(blend('5').values.squareMasses[0]?.massG).toBeCloseTo(7228.9, 1);
    expect(blend('0').values.squareMasses[0]?.massG).toBeCloseTo(6818.2, 1);
    expect(blend('0').findings.map(({ id }) => id)).toEqual(['blend.lean-has-fat']);
  });

  test('fat of a mix counts lean, egg, cream and liver, not the fat lines alone', () => {
    const { mix } = stage([
      makeLine('lean', 'lean', null, '600', made('70', '0', '5')),
      makeLine('fat', 'fat', null, '300', made('9', '0', '88')),
      makeLine('cream', 'liquid', null, '100', made('60', '0', '35')),
    ]).values;
    // 30 + 264 + 35 of 1,000.
    expect(mix.fat.fraction).toBeCloseTo(0.329, 12);
  });

  test('losses multiply and do not add: 8, 3 and 2 % leave 87.46 %, not 87', () => {
    expect(remainingFraction([0.08, 0.03, 0.02])).toBeCloseTo(0.874552, 12);
    const flow = flowFromFill(1000, {
      testG: 0,
      residueFraction: 0.02,
      cookLossFraction: 0.08,
      endLossFraction: 0.03,
    });
    expect((flow?.servableG ?? 0) / (flow?.mixG ?? 1)).toBeCloseTo(0.874552, 12);
    // To buy is needed ÷ yield: 10 kg for 7 kg at 70 %, not 7 × 1.3.
    expect(purchaseG(7000, 0.7)).toBeCloseTo(10_000, 9);
  });

  test('spice does not scale in a straight line: above fivefold a strong one begins at 85–95 %, salt and cure never do (common practice, no source)', () => {
    expect(strongAromaticG('clove', 10, 6)).toEqual({ leastG: 8.5, mostG: 9.5 });
    expect(strongAromaticG('clove', 10, 5)).toBeNull();
    expect(strongAromaticG(null, 10, 8)).toBeNull();
  });
});

describe('a blank', () => {
  test('a blank weight is unknown and never nothing: no total, no composition, no salt to add', () => {
    const { mix, plainSalt, finished } = stage([
      makeLine('pork', 'lean', null, '', made('70', '0')),
      makeLine('salt', 'salt', null, '15'),
    ]).values;
    expect([mix.totalG, mix.meatBlockG, mix.salt.fraction, finished]).toEqual([null, null, null, null]);
    expect(plainSalt).toEqual({ state: 'cannot-tell', because: 'mass' });
  });
});
