import { brineStage } from '@larderwright/calc/brine';
import { coolFacts, coolRuleSet, curedState } from '@larderwright/calc/cooling';
import { limitAsSodiumNitrite, nitriteIonFromSodiumNitrite } from '@larderwright/calc/cure';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { muttonHam } from '../brine/brines.ts';
import { cure, cureSlice, line, venisonTerrine, withLines } from '../cure/demo-formula.ts';
import { ids, limit, porkAnd, run, severity, state } from '../cure/run-stage.ts';
import { cureSlice as pieceCure, run as runPiece } from '../dry-cure/pieces.ts';

// Every figure is derived from the masses in the fixture unless a source stands beside it.
const under = (ruleSetId: string) => cureSlice({ ruleSetId });

describe('what a ppm is counted on', () => {
  test('the same 5.4 g are 121 mg/kg on the meat block and 88 on the product: both are shown, the chosen rule judges', () => {
    const { values } = run(venisonTerrine());
    // 5.4 g × 62.5 mg/g on 2.800 kg and on 3.8501 kg.
    expect(values.nitritePpmMeat).toBeCloseTo(120.5, 1);
    expect(values.nitritePpmTotal).toBeCloseTo(87.7, 1);
    const judgedPpm = (id: string) =>
      run(venisonTerrine(), under(id)).verdicts.find((one) => one.id === 'cure.nitrite')?.params.ppm;
    expect(judgedPpm('us-federal')).toBe(values.nitritePpmMeat);
    expect(judgedPpm('great-britain')).toBe(values.nitritePpmTotal);
  });

  test('100 mg/kg as sodium nitrite is 66.7 as nitrite ion and within the European 80: like is compared with like', () => {
    // Regulation (EU) 2023/2108: 80 mg/kg as ion, 120.0 as sodium nitrite.
    expect(nitriteIonFromSodiumNitrite(100)).toBeCloseTo(66.7, 1);
    const { expressedAs, valuePpm } = limit('eu-nitrite-added');
    expect(limitAsSodiumNitrite(expressedAs, valuePpm)).toBeCloseTo(120, 1);
    // 1.6 g of 6.25 % on 1,013.6 g: 98.7 as salt, more than 80, and 65.8 as ion.
    expect(state(run(porkAnd(cure('1.6', '6.25', '0')), under('european-union-2025')), 'cure.nitrite')).toBe(
      'pass cure.within',
    );
  });

  test('mixed in, in a bag, in a brine and in a salt box the same cure is counted four ways, and in a salt box no ppm is shown', () => {
    const mixed = run(porkAnd(cure('2', '6.25', '0'))).values;
    expect(mixed.nitritePpmMeat).toBeCloseTo(125, 9);
    const bag = runPiece({ nitriteTarget: enteredEntry('120', 'ppm') }).first;
    expect(bag?.nitritePpmMeat).toBeCloseTo(120, 0);
    const brine = brineStage({ cure: pieceCure(), brine: muttonHam() }).values;
    // 6.9 g of 6.25 % on 3,600 g of meat and water, and on all 3,724.1 g in the bucket.
    expect(brine.nitritePpmMeatAndWater).toBeCloseTo(119.8, 1);
    expect(brine.nitritePpmAll).toBeCloseTo(115.8, 1);
    for (const method of ['salt-box', 'rub'] as const) {
      const buried = runPiece({ method });
      expect(buried.first?.nitritePpmMeat).toBeNull();
      expect(buried.verdict('nitrite')).toMatchObject({
        state: 'cannot-tell',
        reason: 'dry-cure.uptake-unknown',
      });
    }
  });
});

describe('the pack', () => {
  test('the strength of a curing salt is typed off the pack and never assumed, not even where its name gives it away', () => {
    const blank = run(porkAnd(cure('2.5', '', '0', { ingredientId: 'curing-salt-us-1' })));
    expect(blank.values.nitritePpmMeat).toBeNull();
    expect(severity(blank, 'cure.strength-missing')).toBe('stop');
    expect(state(blank, 'cure.nitrite')).toBe('cannot-tell cure.strength-unknown');
    const at = (strength: string, grams = '2.5') => run(porkAnd(cure(grams, strength, '0'))).values;
    expect(at('6.25').nitritePpmMeat).toBeCloseTo(156.25, 9);
    expect(at('0.6').nitritePpmMeat).toBeCloseTo(15, 9);
    expect(at('6.25', '20').nitritePpmMeat).toBeCloseTo(1250, 9);
    expect(severity(run(porkAnd(cure('20', '6.25', '0'))), 'cure.gross-error')).toBe('stop');
  });

  test('the salt of the curing salt itself counts: a 6.25 % pack is 93.75 % salt and takes its share off the plain salt', () => {
    const plain = (of: ReturnType<typeof porkAnd>) => {
      const { plain: need } = run(of).values.salt;
      return need.state === 'ok' ? need.plainSaltG : null;
    };
    const bare = plain({ ...porkAnd(cure('0', '6.25', '0')) }) ?? Number.NaN;
    const cured = plain(porkAnd(cure('2', '6.25', '0'))) ?? Number.NaN;
    // 2 g bring 1.875 g of salt and want 1.7 % of their own weight: (1.875 − 0.034) ÷ 0.983 less.
    expect(bare - cured).toBeCloseTo((2 * 0.9375 - 2 * 0.017) / 0.983, 6);
    // A 0.6 % pack is the salt: 15 g of it leave little to add, 18 g nothing.
    expect(plain(porkAnd(cure('15', '0.6', '0')))).toBeLessThan(2);
    expect(run(porkAnd(cure('18', '0.6', '0'))).values.salt.plain.state).toBe('over-supplied');
  });

  test('0.9 g of curing salt on a scale that shows whole grams is refused: fewer than fifty steps (common practice, no source)', () => {
    const coarse = run(
      porkAnd(cure('0.9', '6.25', '0')),
      cureSlice({ scaleReadability: enteredEntry('1', 'g') }),
    );
    expect(severity(coarse, 'cure.too-small-to-weigh')).toBe('stop');
    const five = run(porkAnd(cure('5', '0.6', '0')), cureSlice({ scaleReadability: enteredEntry('1', 'g') }));
    expect(five.values.weighing[0]).toMatchObject({ errorFraction: 0.1, isWeighable: false });
    expect(run(porkAnd(cure('5', '0.6', '0'))).values.weighing[0]?.isWeighable).toBe(true);
  });
});

describe('what comes in by itself', () => {
  test('a cured garnish brings nitrite of its own: by its maker, else bounded by 200 mg/kg (9 CFR 424.21(c))', () => {
    const { carried } = run(venisonTerrine()).values;
    expect(carried).toEqual([
      expect.objectContaining({ lineId: 'bacon', lowG: 0, highG: 0.036, isBound: true }),
    ]);
    const told = withLines(venisonTerrine(), { bacon: { carriedNitrite: enteredEntry('60', 'ppm') } });
    expect(run(told).values.carried[0]).toMatchObject({ lowG: 0.0108, highG: 0.0108, isBound: false });
  });

  test.each([
    'Celery powder',
    'Beetroot juice concentrate',
    'Fermented celery',
    'Vegetable extract, cultured',
  ])('%s is a cure by another name: until its nitrite is told no limit passes', (name) => {
    const formula = withLines(venisonTerrine(null), { spice: { name, ingredientId: null } });
    const result = run(formula, under('great-britain'));
    expect(severity(result, 'cure.vegetable-nitrite')).toBe('caution');
    expect(state(result, 'cure.nitrite')).toBe('cannot-tell cure.carried-unknown');
    expect(state(result, 'cure.nitrate')).toBe('cannot-tell cure.nitrate-not-declared');
    const none = withLines(formula, { spice: { amount: enteredEntry('0', 'g') } });
    expect(ids(run(none))).not.toContain('cure.vegetable-nitrite');
  });

  test.each(['Celery, diced', 'Celery salt', 'Vegetable stock powder', 'Spinach, blanched'])(
    '%s is none',
    (name) => {
      const formula = withLines(venisonTerrine(), { spice: { name, ingredientId: null } });
      expect(ids(run(formula))).not.toContain('cure.vegetable-nitrite');
    },
  );
});

describe('what nitrite does not do', () => {
  test('liver eats nitrite: above 15 % of the mix nothing is added over the limit, and cured cooling is not trusted (common practice, no source)', () => {
    const liverish = withLines(venisonTerrine(), { liver: { amount: enteredEntry('900', 'g') } });
    const result = run(liverish);
    expect(ids(result)).toContain('cure.liver-takes-nitrite');
    const facts = { ...coolFacts(result.values), nitritePpm: 150, acceleratorPpm: 300 };
    expect(facts.liverFraction ?? 0).toBeGreaterThan(0.15);
    expect(curedState([{ nitritePpm: 100, acceleratorPpm: 250 }], facts)).toBe('liver');
    const ceiling = run(liverish, cureSlice({ nitriteTarget: enteredEntry('170', 'ppm') })).values.dose?.dose;
    expect(ceiling).toMatchObject({ ok: false, reason: 'target-over-ceiling' });
  });

  test('some nitrite does not make a product cured for cooling: 88 mg/kg on the product is colour only, and uncured limits hold', () => {
    const { values, findings } = run(venisonTerrine(), under('great-britain'));
    expect(findings.map(({ id }) => id)).toContain('cure.colour-only');
    const ways = coolRuleSet('uk-large-cured')?.cured ?? [];
    expect(ways.length).toBeGreaterThan(0);
    expect(curedState(ways, coolFacts(values))).toBe('not-met');
  });

  test('nitrite that is only in the garnish or the lining never makes a core cured', () => {
    const lines = [...venisonTerrine(null).lines, line('wrap', 'lining', '300', 'kitchen-bacon-dry-cured')];
    const strong = withLines(
      { ...venisonTerrine(null), lines },
      {
        bacon: { carriedNitrite: enteredEntry('5000', 'ppm') },
        wrap: { carriedNitrite: enteredEntry('5000', 'ppm') },
      },
    );
    expect(run(strong).values.cured.ingoingPpmTotal).toBe(0);
  });
});

describe('a blank', () => {
  test('a blank is unknown and never zero: every limit cannot be told, and none passes', () => {
    const blank = withLines(venisonTerrine(), { venison: { amount: blankEntry('g') } });
    for (const id of ['us-federal', 'great-britain', 'canada-federal', 'european-union-2025'])
      expect(state(run(blank, under(id)), 'cure.nitrite'), id).toMatch(/^cannot-tell/);
    expect(state(run(porkAnd(cure('', '6.25', '0'))), 'cure.nitrite')).toBe(
      'cannot-tell cure.cure-amount-unknown',
    );
    expect(state(run({ ...porkAnd(cure('2', '6.25', '')) }), 'cure.nitrate')).toBe(
      'cannot-tell cure.nitrate-not-declared',
    );
  });
});
