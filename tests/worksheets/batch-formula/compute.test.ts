import { newBatch, newLine } from '@larderwright/calc/batch';
import type { FormulaLine } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { figuresText, loadFormula } from '../../../worksheets/batch-formula/compute.ts';
import { wordsOf } from '../../../worksheets/words/index.ts';

const table = await loadIngredients();
const compute = await loadFormula();
const line = (given: Partial<FormulaLine>): FormulaLine => ({ ...newLine('l1', 'lean'), ...given });
const computed = (...lines: FormulaLine[]) => {
  const blank = newBatch({ id: 'b1', at: '2026-03-10T07:30:00+00:00', zone: 'UTC' });
  return compute({ ...blank, formula: { ...blank.formula, lines } });
};

describe('where the figures of a line come from', () => {
  test('is named by source, and by ingredient where the kitchen calls it otherwise', () => {
    const own = { name: 'Shoulder from the valley', ingredientId: 'kitchen-pork-shoulder-80-20' };
    expect(figuresText(line(own), table)).toBe('Figures: Pork shoulder 80/20 (kitchen value, ± 3 points)');
    const plain = { name: 'Pork shoulder 80/20', ingredientId: 'kitchen-pork-shoulder-80-20' };
    expect(figuresText(line(plain), table)).toBe('Figures: kitchen value, ± 3 points');
    expect(figuresText(line({ name: 'Pepper', ingredientId: 'pepper-black' }), table)).toMatch(/USDA SR28/);
  });

  test('is the pack alone for a curing salt', () => {
    expect(figuresText(line({ part: 'curing-salt' }), table)).toMatch(/pack alone/);
  });

  test('is the pack where all of it was written off the pack', () => {
    const figure = enteredEntry('1', '%');
    const declared = { salt: figure, fat: figure, protein: figure, water: figure };
    expect(figuresText(line({ name: 'Ham', declared }), table)).toBe('Figures: by the pack');
    const three = { ...declared, water: enteredEntry(' ', '%') };
    expect(figuresText(line({ name: 'Ham', declared: three }), table)).toMatch(/No table figures/);
  });

  test('is plainly missing for a name of one’s own or an ingredient of another version', () => {
    expect(figuresText(line({ name: 'Aunt’s paste' }), table)).toMatch(/No table figures/);
    expect(figuresText(line({ name: 'x', ingredientId: 'gone' }), table)).toMatch(/not in the table/);
    expect(figuresText(line({}), table)).toBe('');
  });
});

describe('the findings of the formula page', () => {
  test('hold what the cure has to say of a line, such as a strength that nobody read', () => {
    const pork = line({
      id: 'p',
      name: 'Pork',
      ingredientId: 'kitchen-pork-belly',
      amount: enteredEntry('1000', 'g'),
    });
    const cure = { ...newLine('c', 'curing-salt'), name: 'Curing salt', amount: enteredEntry('2', 'g') };
    const { findings } = computed(pork, cure);
    expect(findings).toContainEqual(
      expect.objectContaining({ severity: 'stop', field: 'formula.lines.c.cure.nitrite' }),
    );
  });

  test('all have words', () => {
    const shares = [
      line({ id: 'a', name: 'a', basis: 'percent-of-total', amount: enteredEntry('80', '%') }),
      line({ id: 'b', name: 'b', basis: 'percent-of-total', amount: enteredEntry('60', '%') }),
    ];
    for (const { id, params } of [...computed(...shares).findings, ...computed().findings])
      expect(wordsOf(id, params).title).not.toMatch(/NaN|undefined/);
  });
});
