import { newLine } from '@larderwright/calc/batch';
import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry, entryValue } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { NEW_SCALE_FORM, readFactor, requestScale } from '../../../worksheets/batch-formula/scale-request.ts';

const line = (id: string, part: FormulaLine['part'], grams: string): FormulaLine => ({
  ...newLine(id, part),
  name: id,
  amount: enteredEntry(grams, 'g'),
});
const lines = [line('lean', 'lean', '1500'), line('fat', 'fat', '500'), line('milk', 'liquid', '200')];
const factor = (text: string) => ({ ...NEW_SCALE_FORM, factor: enteredEntry(text, 'g') });
const grams = (scaled: ReturnType<typeof requestScale>) =>
  scaled?.ok ? scaled.lines.map(({ amount }) => entryValue('mass', amount)) : scaled;

describe('a factor', () => {
  test.each([
    ['2', 2],
    ['0,5', 0.5],
    ['1 1/2', 1.5],
    ['1/2', 0.5],
  ])('%s is read', (text, value) => expect(readFactor(enteredEntry(text, 'g'))).toBeCloseTo(value));

  test.each(['', '2 kg', '150 %', '1e999', '٣', '-2', '<script>', 'NaN', 'Infinity'])('%j is none', (text) =>
    expect(readFactor(enteredEntry(text, 'g'))).toBeNull(),
  );

  // Derived: plain multiplication.
  test('doubles every weight', () => {
    expect(grams(requestScale(factor('2'), lines, null))).toEqual([3000, 1000, 400]);
  });

  test('of nothing is refused', () => {
    expect(requestScale(factor('0'), lines, null)).toEqual({ ok: false, problem: 'unusable-factor' });
  });
});

describe('a form that is not filled in asks for nothing', () => {
  test.each(['factor', 'total', 'meat'] as const)('to a %s', (to) =>
    expect(requestScale({ ...NEW_SCALE_FORM, to }, lines, 1000)).toBeNull(),
  );
  test('to moulds that are not measured', () =>
    expect(requestScale({ ...NEW_SCALE_FORM, to: 'moulds' }, lines, null)).toBeNull());
});

describe('to a size', () => {
  // Derived: 2200 g to 4400 g, and a meat block of 2000 g to 1000 g.
  test('the total or the meat block becomes what was asked', () => {
    const total = requestScale(
      { ...NEW_SCALE_FORM, to: 'total', total: enteredEntry('4.4', 'kg') },
      lines,
      null,
    );
    expect(grams(total)).toEqual([3000, 1000, 400]);
    const meat = requestScale(
      { ...NEW_SCALE_FORM, to: 'meat', meat: enteredEntry('1000', 'g') },
      lines,
      null,
    );
    expect(grams(meat)).toEqual([750, 250, 100]);
  });

  // Derived: 1029 ÷ (1 − 0.02) + 50 = 1100, half of 2200.
  test('the moulds are filled with the test poach and what stays in the bowl on top', () => {
    expect(grams(requestScale({ ...NEW_SCALE_FORM, to: 'moulds' }, lines, 1029))).toEqual([750, 250, 100]);
  });

  test('a blank weight stands in the way', () => {
    const open = [...lines, line('egg', 'egg', '')];
    const asked = requestScale(
      { ...NEW_SCALE_FORM, to: 'total', total: enteredEntry('1', 'kg') },
      open,
      null,
    );
    expect(asked).toEqual({ ok: false, problem: 'unknown-total' });
  });
});
