import { newBatch, newLine } from '@larderwright/calc/batch';
import { describe, expect, test } from 'vitest';
import { getAt, hasPath, setAt } from '../../../worksheets/state/paths.ts';

const start = { id: 'b1', at: '2026-03-10T07:30:00+00:00', zone: 'Europe/London' };
const blank = newBatch(start);
const batch = {
  ...blank,
  formula: { ...blank.formula, lines: [newLine('veal', 'lean'), newLine('fat', 'fat')] },
};

describe('a path names a field of the batch', () => {
  test('through keys, and through a list by the id of the row', () => {
    expect(getAt(batch, 'product.name')).toBe('');
    expect(getAt(batch, 'formula.lines.fat.part')).toBe('fat');
  });

  test('a path that leads nowhere is an error of the program and throws', () => {
    expect(() => getAt(batch, 'product.colour')).toThrow(/colour/);
    expect(() => getAt(batch, 'formula.lines.goose.part')).toThrow(/goose/);
    expect(() => setAt(batch, 'formula.lines.goose.part', 'fat')).toThrow(/goose/);
  });

  test('whether it still leads somewhere can be asked', () => {
    expect(hasPath(batch, 'formula.lines.veal.amount')).toBe(true);
    expect(hasPath(batch, 'formula.lines.goose.amount')).toBe(false);
  });

  test('a number is no index: rows are named by id only', () => {
    expect(hasPath(batch, 'formula.lines.0.amount')).toBe(false);
  });
});

describe('setting a field', () => {
  test('gives a new tree with that field alone replaced, and leaves the old one as it was', () => {
    const next = setAt(batch, 'formula.lines.fat.lot', 'P-2208');
    expect(getAt(next, 'formula.lines.fat.lot')).toBe('P-2208');
    expect(getAt(batch, 'formula.lines.fat.lot')).toBe('');
    expect(next.formula.lines[0]).toBe(batch.formula.lines[0]);
    expect(next.product).toBe(batch.product);
  });
});
