import { type Batch, labelOf, newBatch, newLine, newMould } from '@larderwright/calc/batch';
import { newGeleeSlice } from '@larderwright/calc/gelee';
import { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import { newLabelExtra, newLabelSlice } from '@larderwright/calc/label';
import { newCrustSlice } from '@larderwright/calc/mould';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';

const table = await loadIngredients();
const details = await loadIngredientDetails();

/** An invented pie: 300 × 80 × 85 mm, pastry of 4 mm that laps by 20 mm. */
function pie(): Batch {
  const batch = newBatch({ id: 'b', at: '2026-03-10T08:00:00+00:00', zone: 'UTC' });
  batch.formula.familyId = 'en-croute';
  batch.formula.lines = [
    {
      ...newLine('pork', 'lean'),
      ingredientId: 'kitchen-pork-shoulder-80-20',
      amount: enteredEntry('2000', 'g'),
    },
  ];
  const mould = newMould('m');
  batch.mould.moulds = [
    {
      ...mould,
      shape: 'rectangular',
      dimensions: {
        ...mould.dimensions,
        length: enteredEntry('300', 'mm'),
        width: enteredEntry('80', 'mm'),
        depth: enteredEntry('85', 'mm'),
      },
      count: enteredEntry('1', 'count'),
    },
  ];
  batch.crust = { ...newCrustSlice(), thickness: enteredEntry('4', 'mm') };
  batch.label = { ...newLabelSlice(), loss: 'nothing' };
  return batch;
}

const valuesOf = (batch: Batch) => labelOf(batch, table, details).values;
const partOf = (batch: Batch, id: string) => valuesOf(batch).parts.find((part) => part.id === id);
const ids = (batch: Batch) => labelOf(batch, table, details).findings.map(({ id }) => id);

describe('a crust of the batch on its label', () => {
  it('is in the list by its own worksheet, without being typed again', () => {
    const crust = partOf(pie(), 'crust');
    // Derived: (510 × 290 − 4 × 105²) + 340 × 120 = 144 600 mm² × 4 mm × 1.2 g/mL.
    expect(crust?.massG).toBeCloseTo(694.08, 6);
    // Derived from 100 flour, 47.5 fat in equal parts, 21 water, 10 egg, 2 salt, 1.5 vinegar: common practice, no source.
    expect(crust?.madeOf).toBe('wheat flour, butter, lard, water, egg, salt, vinegar');
    expect(valuesOf(pie()).ingoingG).toBeCloseTo(2694.08, 6);
    expect(ids(pie())).not.toContain('label.crust-not-counted');
  });

  it('brings wheat, milk and egg, and does not pass for told until somebody has read the packs', () => {
    const { values, verdicts } = labelOf(pie(), table, details);
    // Regulation (EU) No 1169/2011, Annex II.
    expect(values.euAllergens.map(({ name }) => name)).toEqual(['cereals containing gluten', 'eggs', 'milk']);
    expect(values.usAllergens.map(({ name }) => name)).toEqual(['egg', 'milk', 'wheat']);
    expect(verdicts.find(({ id }) => id === 'label.allergens')?.state).toBe('cannot-tell');
    const batch = pie();
    if (batch.label) batch.label.extras = [{ ...newLabelExtra('crust'), allergens: ['soybeans'] }];
    const read = labelOf(batch, table, details);
    expect(read.verdicts.find(({ id }) => id === 'label.allergens')?.state).toBe('pass');
    // A tick adds; it never takes away what is in the paste.
    expect(read.values.euAllergens.map(({ name }) => name)).toEqual([
      'cereals containing gluten',
      'eggs',
      'milk',
      'soybeans',
    ]);
  });

  it('counts its fat by the rows of its paste', () => {
    const batch = pie();
    batch.formula.lines = [];
    // Fat by USDA SR 28 (2016): flour 0.98, butter 81.11, lard 100, egg 9.51 %. Derived, on 182 parts.
    const perHundred = (0.98 * 100 + (81.11 + 100) * 23.75 + 9.51 * 10) / 182;
    expect(valuesOf(batch).nutrition?.fatG.value).toBeCloseTo(perHundred, 6);
  });

  it('weighs what a person typed, and nothing where 0 was typed', () => {
    const batch = pie();
    if (batch.label)
      batch.label.extras = [
        { ...newLabelExtra('crust'), mass: enteredEntry('650', 'g'), name: 'hot pastry' },
      ];
    expect(partOf(batch, 'crust')).toMatchObject({ massG: 650, name: 'hot pastry' });
    if (batch.label) batch.label.extras = [{ ...newLabelExtra('crust'), mass: enteredEntry('0', 'g') }];
    expect(valuesOf(batch).eu.map(({ name }) => name)).toEqual(['pork']);
    if (batch.label) batch.label.extras = [{ ...newLabelExtra('crust'), mass: enteredEntry('much', 'g') }];
    expect(valuesOf(batch).ingoingG).toBeNull();
  });

  it('is not known, allergens and all, for a paste of the kitchen’s own', () => {
    const batch = pie();
    if (batch.crust) batch.crust = { ...batch.crust, pasteId: null };
    expect(partOf(batch, 'crust')?.madeOf).toBe('');
    expect(ids(batch)).toEqual(expect.arrayContaining(['label.made-of-unknown', 'label.allergen-unknown']));
    expect(valuesOf(batch).nutrition?.fatG.value).toBeNull();
  });

  it('says so where it stands in the list by hand too', () => {
    const batch = pie();
    if (batch.label)
      batch.label.extras = [
        { ...newLabelExtra('e'), name: 'Shortcrust pastry', mass: enteredEntry('600', 'g') },
      ];
    expect(ids(batch)).toContain('label.told-twice');
    expect(ids(pie())).not.toContain('label.told-twice');
  });
});

describe('a jelly of the batch on its label', () => {
  const withJelly = () => {
    const batch = pie();
    batch.gelee = {
      ...newGeleeSlice(),
      liquid: enteredEntry('200', 'mL'),
      strength: enteredEntry('3', '%'),
      ph: enteredEntry('6', 'ratio'),
      alcohol: enteredEntry('5', '%'),
      origin: 'fish',
    };
    return batch;
  };

  it('weighs its liquid and its gelatine, is an allergen where it is of fish, and holds its alcohol', () => {
    const jelly = partOf(withJelly(), 'jelly');
    // Derived: 200 g and 3 % of 200 mL.
    expect(jelly?.massG).toBeCloseTo(206, 6);
    expect(jelly?.euAllergens.map(({ name }) => name)).toEqual(['fish']);
    // 5 % by volume × 0.78924 g/mL: OIML R 22 (1973), from memory. Derived.
    expect(jelly?.per100.alcoholG).toBeCloseTo(3.9462, 6);
  });

  it('leaves nutrition open for the stock nobody told of', () => {
    const { nutrition } = valuesOf(withJelly());
    expect(nutrition?.proteinG.value).toBeNull();
    expect(nutrition?.proteinG.unknownLines).toContain('jelly');
  });

  it('does not stand in for a crust nobody measured', () => {
    const { crust, ...bare } = withJelly();
    expect(crust).toBeDefined();
    expect(ids(bare)).toContain('label.crust-not-counted');
  });

  it('is not counted twice where its gelatine is a line of the formula', () => {
    const batch = withJelly();
    batch.formula.lines.push({
      ...newLine('g', 'liquid'),
      ingredientId: 'gelatin',
      amount: enteredEntry('6', 'g'),
    });
    expect(partOf(batch, 'jelly')).toBeUndefined();
  });
});
