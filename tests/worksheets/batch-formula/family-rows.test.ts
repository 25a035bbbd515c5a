import { newLine } from '@larderwright/calc/batch';
import { FAMILIES, type FormulaLine, familyOf, formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { defaultEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { familyRows } from '../../../worksheets/batch-formula/family-rows.ts';

const composition = await loadIngredients();
const mixOf = (lines: FormulaLine[]) =>
  formulaStage({ familyId: null, lines, saltTarget: defaultEntry('1.7', '%') }, { composition }).values.mix;
const line = (id: string, part: FormulaLine['part'], ingredientId: string, grams: string): FormulaLine => ({
  ...newLine(id, part),
  ingredientId,
  amount: enteredEntry(grams, 'g'),
});
const country = familyOf('country-terrine');
const here = (rows: ReturnType<typeof familyRows>, what: string) =>
  rows.find((row) => row.what === what)?.here;

describe('the usual ranges of a family', () => {
  test.each(FAMILIES.map((family) => [family.name, family] as const))('%s are readable', (_, family) => {
    for (const { what, usually } of familyRows(family, null)) {
      expect(`${what} ${usually}`).not.toMatch(/NaN|undefined|null/);
    }
  });

  // Derived: 750 g of lean and 250 g of fat in 1000 g.
  test('stand beside the shares of this mix', () => {
    if (!country) throw new Error('No country terrine');
    const lines = [
      line('a', 'lean', 'kitchen-pork-shoulder-80-20', '500'),
      line('b', 'lean', 'kitchen-venison-shoulder', '250'),
      line('c', 'fat', 'kitchen-pork-backfat', '250'),
    ];
    const rows = familyRows(country, mixOf(lines));
    expect(here(rows, 'Lean')).toBe('75.0 %');
    expect(here(rows, 'Fat')).toBe('25.0 %');
  });

  test('stand alone while a weight is missing', () => {
    if (!country) throw new Error('No country terrine');
    const rows = familyRows(country, mixOf([line('a', 'lean', 'kitchen-venison-shoulder', '')]));
    expect(rows.every((row) => row.here === null)).toBe(true);
  });
});
