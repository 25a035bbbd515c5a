import { newLine } from '@larderwright/calc/batch';
import { newBlendMaterial } from '@larderwright/calc/blend';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { linesWithBlend, materialsOf } from '../../../worksheets/lean-and-fat/blend-edits.ts';

let last = 0;
const newId = () => `new-${++last}`;
const material = (id: string, name: string, ingredientId: string | null = null) => ({
  ...newBlendMaterial(id, 'lean'),
  name,
  ingredientId,
});
const line = (id: string, name: string, ingredientId: string | null = null) => ({
  ...newLine(id, 'lean'),
  name,
  ingredientId,
  amount: enteredEntry('10', '%'),
  basis: 'percent-of-total' as const,
  actual: enteredEntry('99', 'g'),
  lot: 'L-1',
});

describe('a blend written into the formula', () => {
  const lines = [line('a', 'Shoulder', 'pork'), line('s', 'Salt', 'salt')];

  it('gives a line of the same ingredient its weight, in grams, and clears what belonged to the old one', () => {
    const [first, second] = linesWithBlend(
      lines,
      [material('m', 'Pork, mine', 'pork')],
      [{ materialId: 'm', massG: 7411.76 }],
      newId,
    );
    expect(first).toMatchObject({
      id: 'a',
      name: 'Shoulder',
      basis: 'mass',
      amount: { text: '7412', unit: 'g', origin: 'entered' },
      actual: { text: '' },
      lot: '',
    });
    expect(second).toBe(lines[1]);
  });

  it('knows a line of the kitchen by its name, and adds what has none', () => {
    const after = linesWithBlend(
      [line('a', 'Cheek')],
      [material('m', ' cheek'), material('n', 'Back fat', 'fat')],
      [
        { materialId: 'm', massG: 50.25 },
        { materialId: 'n', massG: 1200 },
      ],
      newId,
    );
    expect(after.map(({ name, amount }) => [name, amount.text])).toEqual([
      ['Cheek', '50.3'],
      ['Back fat', '1200'],
    ]);
    expect(after[1]?.ingredientId).toBe('fat');
  });

  it('writes two heaps of one meat into two lines, none over the other', () => {
    const after = linesWithBlend(
      [line('a', 'Pork', 'pork')],
      [material('m', 'Pork A', 'pork'), material('n', 'Pork B', 'pork')],
      [
        { materialId: 'm', massG: 300 },
        { materialId: 'n', massG: 700 },
      ],
      newId,
    );
    expect(after.map(({ amount }) => amount.text)).toEqual(['300', '700']);
  });

  it('adds no line for nothing, and never writes over a curing salt', () => {
    const curing = { ...newLine('c', 'curing-salt'), name: 'Pork' };
    const after = linesWithBlend(
      [curing],
      [material('m', 'Pork'), material('n', 'Veal')],
      [
        { materialId: 'm', massG: 200 },
        { materialId: 'n', massG: 0 },
      ],
      newId,
    );
    expect(after[0]).toBe(curing);
    expect(after.map(({ name }) => name)).toEqual(['Pork', 'Pork']);
  });
});

describe('materials taken from a formula', () => {
  it('are its meat with its figures, not its salt or its wine', () => {
    const taken = materialsOf(
      [line('a', 'Shoulder', 'pork'), { ...line('w', 'Wine'), part: 'liquid' }, line('b', '  ')],
      newId,
    );
    expect(taken.map(({ name, ingredientId }) => [name, ingredientId])).toEqual([['Shoulder', 'pork']]);
  });
});
