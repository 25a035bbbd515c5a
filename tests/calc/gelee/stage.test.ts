import { type GeleeSlice, geleeStage, newGeleeSlice } from '@larderwright/calc/gelee';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { geleeWords } from '../../../worksheets/words/gelee.ts';

/** A litre for slicing, invented; strength 3.5 % at 200 bloom. */
const litre = (change: Partial<GeleeSlice> = {}): GeleeSlice => ({
  ...newGeleeSlice(),
  liquid: enteredEntry('1', 'L'),
  strength: enteredEntry('3.5', '%'),
  ph: enteredEntry('5.5', 'ratio'),
  origin: 'pork',
  ...change,
});
const ids = (slice: GeleeSlice) => geleeStage(slice).findings.map(({ id }) => id);
const grams = (slice: GeleeSlice) => geleeStage(slice).values.gelling?.minG;

describe('a jelly', () => {
  it('of a litre at 3.5 % takes 35 g of 200 bloom, 31.3 g of 250 and 39.1 g of 160 (calculated)', () => {
    expect(grams(litre())).toBeCloseTo(35, 9);
    expect(grams(litre({ bloom: enteredEntry('250', 'count') }))).toBeCloseTo(31.3, 1);
    expect(grams(litre({ bloom: enteredEntry('160', 'count') }))).toBeCloseTo(39.1, 1);
    expect(grams(litre({ bloom: enteredEntry('250', 'count'), rule: 'linear' }))).toBeCloseTo(28, 9);
  });

  it('tells both rules whenever they differ, and which was used', () => {
    expect(ids(litre())).not.toContain('gelee.rules-differ');
    const finding = geleeStage(litre({ bloom: enteredEntry('250', 'count') })).findings.find(
      ({ id }) => id === 'gelee.rules-differ',
    );
    expect(finding?.params).toMatchObject({ linearG: 28, rule: 'square-root' });
    expect(finding?.basis).toBe('gmia-gelatin-handbook');
  });

  it('takes the middle of what the use wants where no strength is typed: common practice, no source', () => {
    const blank = blankEntry('%');
    expect(grams(litre({ strength: blank, use: 'spoon' }))).toBeCloseTo(17.5, 9);
    expect(grams(litre({ strength: blank, use: 'coat' }))).toBeCloseTo(27.5, 9);
    expect(grams(litre({ strength: blank, use: 'inlay' }))).toBeCloseTo(45, 9);
    expect(grams(litre({ strength: blank, gelling: 'agar' }))).toBeCloseTo(8, 9);
  });

  it('of sheets weighs them: bloom and mass of the grade, unless read and weighed', () => {
    const gold = geleeStage(litre({ form: 'sheet' })).values;
    expect(gold.bloom).toBe(205);
    expect(gold.sheets?.min).toBeCloseTo((35 * Math.sqrt(200 / 205)) / 2, 9);
    const own = geleeStage(
      litre({ form: 'sheet', bloom: enteredEntry('200', 'count'), sheetMass: enteredEntry('2.5', 'g') }),
    ).values;
    expect(own.sheets?.min).toBeCloseTo(14, 9);
    expect(ids(litre({ form: 'sheet' }))).toContain('gelee.sheets-not-by-count');
  });

  it('takes off what the stock sets by itself', () => {
    expect(grams(litre({ naturalSet: enteredEntry('1.5', '%') }))).toBeCloseTo(20, 9);
    expect(grams(litre({ naturalSet: enteredEntry('4', '%') }))).toBe(0);
    expect(ids(litre({ naturalSet: enteredEntry('4', '%') }))).toContain('gelee.stock-sets-enough');
  });

  it('is raised for acid and for alcohol', () => {
    const sour = geleeStage(litre({ ph: enteredEntry('3.5', 'ratio') }));
    expect(sour.values.gelling?.minG).toBeCloseTo(38.5, 9);
    expect(sour.values.gelling?.maxG).toBeCloseTo(43.75, 9);
    expect(sour.findings.map(({ id }) => id)).toContain('gelee.weakened');
    expect(grams(litre({ alcohol: enteredEntry('15', '%') }))).toBeCloseTo(38.5, 9);
  });

  it('pH unknown is told as missing, and an alcohol that cannot be read gives no weight', () => {
    const { missing } = geleeStage(litre({ ph: blankEntry('ratio') }));
    expect(missing).toContainEqual({ field: 'gelee.ph', neededFor: 'gelee.acid' });
    expect(geleeStage(litre({ alcohol: enteredEntry('some', '%') })).values.gelling).toBe(null);
  });

  it('with raw pineapple does not set, and agar does not mind', () => {
    expect(ids(litre({ rawFruit: ['pineapple'] }))).toContain('gelee.enzyme-fruit');
    expect(ids(litre({ rawFruit: ['pineapple'], gelling: 'agar' }))).not.toContain('gelee.enzyme-fruit');
  });

  it('says when it is rubber, when the bloom cannot be and when sugar firms it', () => {
    expect(ids(litre({ strength: enteredEntry('6', '%') }))).toContain('gelee.too-strong');
    expect(ids(litre({ bloom: enteredEntry('350', 'count') }))).toContain('gelee.bloom-unusual');
    expect(ids(litre({ sugar: enteredEntry('30', '%') }))).toContain('gelee.sugar-firms');
  });

  it('poured under a crust warns of heat, of the clock and of what comes after the cook', () => {
    const poured = litre({
      cavity: enteredEntry('1620', 'mL'),
      pour: enteredEntry('45', 'C'),
      core: enteredEntry('55', 'C'),
    });
    const { values, findings } = geleeStage(poured);
    expect(values.underCrust?.minMl).toBeCloseTo(97.2, 9);
    const cautions = findings.flatMap(({ caution }) => caution ?? []);
    expect(cautions).toEqual(expect.arrayContaining(['cooling-clock', 'after-the-cook']));
    expect(findings.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['gelee.pour-too-hot', 'gelee.core-too-hot']),
    );
    expect(ids(litre())).not.toContain('gelee.adds-heat');
  });

  it('never takes an unknown origin for no allergen', () => {
    expect(geleeStage(litre({ origin: 'unknown' })).values.fishAllergen).toBe(null);
    expect(geleeStage(litre({ origin: 'fish' })).values.fishAllergen).toBe(true);
    expect(geleeStage(litre({ origin: 'beef' })).values.fishAllergen).toBe(false);
    expect(geleeStage(litre({ gelling: 'agar', origin: 'unknown' })).values.fishAllergen).toBe(false);
  });

  it('without a liquid, or with a bloom that is none, is unknown', () => {
    const { values, missing } = geleeStage(newGeleeSlice());
    expect(values.gelling).toBe(null);
    expect(missing.map(({ field }) => field)).toEqual(['gelee.liquid', 'gelee.ph']);
    for (const bad of ['', 'strong', '0'])
      expect(geleeStage(litre({ bloom: enteredEntry(bad, 'count') })).values.gelling).toBe(null);
  });

  it('has words for every finding it raises', () => {
    const all = litre({
      form: 'sheet',
      strength: enteredEntry('7', '%'),
      ph: enteredEntry('3', 'ratio'),
      alcohol: enteredEntry('20', '%'),
      sugar: enteredEntry('40', '%'),
      rawFruit: ['kiwi', 'fig'],
      origin: 'unknown',
      pour: enteredEntry('60', 'C'),
      core: enteredEntry('60', 'C'),
    });
    for (const slice of [all, litre({ gelling: 'agar' }), litre({ origin: 'fish' })])
      for (const { id, params } of geleeStage(slice).findings)
        expect(geleeWords[id](params).title).not.toMatch(/undefined|NaN/);
  });
});
