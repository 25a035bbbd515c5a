import { newLine } from '@larderwright/calc/batch';
import { type FormulaLine, formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { defaultEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { sharesOf } from '../../../worksheets/batch-formula/shares.ts';

const composition = await loadIngredients();

function line(id: string, ingredientId: string | null, grams: string): FormulaLine {
  return { ...newLine(id, 'lean'), name: id, ingredientId, amount: enteredEntry(grams, 'g') };
}

function sharesFor(lines: FormulaLine[]) {
  const saltTarget = defaultEntry('1.7', '%');
  return sharesOf(formulaStage({ familyId: null, lines, saltTarget }, { composition }).values.mix);
}

describe('the bar of a mix', () => {
  // Kitchen values of pork back fat: 9 % water, 3 % protein, 88 % fat, 0.05 % salt. Common practice, no source.
  test('shows the table’s own shares of a single ingredient', () => {
    const shares = sharesFor([line('fat', 'kitchen-pork-backfat', '1000')]);
    const of = Object.fromEntries(shares?.map((share) => [share.of, share.massG]) ?? []);
    expect(of.water).toBeCloseTo(90);
    expect(of.protein).toBeCloseTo(30);
    expect(of.fat).toBeCloseTo(880);
    expect(of.unknown).toBeUndefined();
  });

  test('adds up to everything in the bowl, the unknown included', () => {
    const shares = sharesFor([line('fat', 'kitchen-pork-liver', '700'), line('mystery', null, '300')]);
    expect(shares?.reduce((sum, { massG }) => sum + massG, 0)).toBeCloseTo(1000);
    expect(shares?.find(({ of }) => of === 'unknown')?.fraction).toBeCloseTo(0.3);
  });

  test('is not drawn while a weight is missing', () => {
    expect(sharesFor([line('fat', 'kitchen-pork-backfat', '')])).toBeNull();
    expect(sharesFor([])).toBeNull();
  });
});
