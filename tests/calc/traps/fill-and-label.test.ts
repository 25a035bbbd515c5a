import { newBatch, newLine } from '@larderwright/calc/batch';
import { formulaStage, type LinePart } from '@larderwright/calc/formula';
import { convertBloom, geleeStage, newGeleeSlice, SHEETS, sheetOf } from '@larderwright/calc/gelee';
import { loadIngredients } from '@larderwright/calc/ingredients';
import {
  type LabelContext,
  type LabelSlice,
  labelStage,
  newLabelLine,
  newLabelSlice,
  quidOf,
  useByDate,
} from '@larderwright/calc/label';
import { cookFacts } from '@larderwright/calc/lethality';
import { fillOf, liningVolumeMl, mouldGeometry } from '@larderwright/calc/mould';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';

const composition = await loadIngredients();
const geometry = (...of: Parameters<typeof mouldGeometry>) => {
  const made = mouldGeometry(...of);
  if (!made) throw new Error(`no ${of[0]}`);
  return made;
};
const TERRINE = geometry('rectangular', { length: 290, width: 95, depth: 75 });

describe('a mould', () => {
  test('does not hold its brim in water: headspace, lining and density come off, 2.07 L of brim being 1.63 kg (derived)', () => {
    // 65 mm deep, 2 mm of fat round it; 1.04 g/mL (common practice, no source).
    const fill = fillOf({
      geometry: TERRINE,
      waterFillMl: null,
      headspaceMm: 10,
      liningThicknessMm: 2,
      densityGPerMl: 1.04,
    });
    expect(fill?.brimMl).toBeCloseTo(2066.25, 9);
    // 2 × (290 × 95 bottom + 290 × 95 top + 2 × 385 × 65 walls) ÷ 1,000.
    expect(fill?.liningMl).toBeCloseTo(210.3, 9);
    expect(fill?.fillG).toBeCloseTo((1790.75 - 210.3) * 1.04, 6);
  });

  test('loses 0.23 L to 2 mm of fat on all six faces of 290 × 95 × 75 mm (derived)', () =>
    expect(liningVolumeMl(TERRINE, 75, 2) / 1000).toBeCloseTo(0.23, 2));

  test('of roof shape at half its depth is a quarter full (derived)', () => {
    const roof = geometry('roof', { width: 75, depth: 70, length: 300 });
    expect(roof.volumeToMm3(35) / roof.volumeToMm3(70)).toBeCloseTo(0.25, 12);
  });
});

describe('jelly', () => {
  test('gelatine goes by bloom and use, not by six sheets: root and product rules stand side by side, and acid, spirit and natural set are asked for', () => {
    const both = convertBloom(10, 250, 160);
    expect(both?.squareRootG).toBeCloseTo(12.5, 9);
    expect(both?.linearG).toBeCloseTo(15.625, 9);
    const gelatineG = (change: Partial<ReturnType<typeof newGeleeSlice>>) =>
      geleeStage({
        ...newGeleeSlice(),
        liquid: enteredEntry('1', 'L'),
        strength: enteredEntry('3', '%'),
        ph: enteredEntry('6', 'ratio'),
        ...change,
      }).values.gelling;
    expect(gelatineG({})?.minG).toBeCloseTo(30, 9);
    // A stock that sets like 1 % takes 1 % less; acid or spirit 10–25 % more each (common practice, no source).
    expect(gelatineG({ naturalSet: enteredEntry('1', '%') })?.minG).toBeCloseTo(20, 9);
    const sour = gelatineG({ ph: enteredEntry('3.5', 'ratio') });
    expect([sour?.minG, sour?.maxG]).toEqual([expect.closeTo(33, 9), expect.closeTo(37.5, 9)]);
    const strong = gelatineG({ ph: enteredEntry('3.5', 'ratio'), alcohol: enteredEntry('15', '%') });
    expect([strong?.minG, strong?.maxG]).toEqual([expect.closeTo(36.3, 9), expect.closeTo(46.875, 9)]);
  });

  test('sheet grades are made of equal strength by weight, powders are not: bloom × mass is within a seventh in every grade', () => {
    const strengths = SHEETS.map(({ grade, sheetG }) => sheetOf(grade).bloom * sheetG);
    expect(Math.max(...strengths) / Math.min(...strengths)).toBeLessThan(1.16);
    const blooms = SHEETS.map(({ grade }) => sheetOf(grade).bloom);
    expect(Math.max(...blooms) / Math.min(...blooms)).toBeGreaterThan(1.7);
  });
});

describe('poultry', () => {
  const facts = (rows: readonly (readonly [LinePart, string, string])[]) => {
    const lines = rows.map(([part, ingredientId, grams], i) => ({
      ...newLine(`l${i}`, part),
      ingredientId,
      amount: enteredEntry(grams, 'g'),
    }));
    const { values } = formulaStage(
      { familyId: 'country-terrine', lines, saltTarget: enteredEntry('1.7', '%') },
      { composition },
    );
    return cookFacts(values, 'country-terrine');
  };
  const PORK = ['lean', 'kitchen-pork-shoulder-80-20', '1000'] as const;

  test('anywhere is poultry: one chicken liver, duck fat, duck skin as a lining, guinea fowl or pheasant; an egg is none', () => {
    expect(facts([PORK]).hasPoultry).toBe(false);
    expect(facts([PORK, ['egg', 'kitchen-egg', '100']]).hasPoultry).toBe(false);
    for (const [part, id] of [
      ['liver', 'kitchen-chicken-liver'],
      ['liver', 'chicken-liver'],
      ['fat', 'duck-fat'],
      ['lining', 'kitchen-duck-skin-fat'],
      ['lean', 'kitchen-guinea-fowl'],
      ['lean', 'kitchen-pheasant'],
    ] as const)
      expect(facts([PORK, [part, id, '10']]).hasPoultry, id).toBe(true);
    // Nobody can say what an unnamed line is.
    expect(facts([PORK, ['garnish', '', '10']]).hasPoultry).toBeNull();
  });
});

describe('label', () => {
  test('114 % meat is not said: where loss makes more go in than come out, it is 114 g used for 100 g (Regulation (EU) No 1169/2011, Annex VIII; derived)', () => {
    expect(quidOf([{ name: 'mutton', massG: 2400 }], 2580, 2112)?.[0]?.declare).toEqual({
      as: 'grams-per-100',
      figure: 114,
    });
    expect(quidOf([{ name: 'pork', massG: 700 }], 1000, 900)?.[0]?.declare).toEqual({
      as: 'percent',
      figure: 78,
    });
  });

  const label = (change: Partial<LabelSlice>, context: Partial<LabelContext> = {}) => {
    const batch = newBatch({ id: 'b', at: '2026-03-10T08:00:00+00:00', zone: 'UTC' });
    batch.formula.lines = [
      { ...newLine('a', 'lean'), ingredientId: 'pork-butt-lf', amount: enteredEntry('1000', 'g') },
    ];
    return labelStage(
      { ...newLabelSlice(), ...change },
      {
        formula: batch.formula,
        formulaValues: formulaStage(batch.formula, { composition }).values,
        table: composition,
        details: null,
        finishedG: 900,
        filledByMouldsG: null,
        foodLining: false,
        carried: [],
        firstCookAt: '2026-03-10T08:40:00+00:00',
        writtenUseBy: '',
        ...context,
      },
    );
  };

  test('a use-by is counted from the cook: packing or packing again later moves nothing', () => {
    expect(useByDate('2026-03-10', 5, true)).toBe('2026-03-14');
    for (const packedOn of ['2026-03-10', '2026-03-11', '2026-03-15'])
      expect(label({ packedOn }).values.useBy, packedOn).toBe(label({}).values.useBy);
    const late = label(
      { packedOn: '2026-03-14', life: enteredEntry('5', 'd') },
      { writtenUseBy: '2026-03-18' },
    );
    expect(late.verdicts.find(({ id }) => id === 'label.use-by')).toMatchObject({ state: 'fail' });
  });

  test('an allergen nobody has told is unknown: a blank never passes', () => {
    expect(
      label(
        { lines: [newLabelLine('a')] },
        { formula: { familyId: null, saltTarget: enteredEntry('', '%'), lines: [] } },
      ).verdicts[0]?.state,
    ).toBe('cannot-tell');
  });
});
