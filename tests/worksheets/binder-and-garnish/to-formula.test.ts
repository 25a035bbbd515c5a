import { newBatch, newLine } from '@larderwright/calc/batch';
import { newBinderSlice, newGarnishLine, withPanade } from '@larderwright/calc/binder';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { computeBinder } from '../../../worksheets/binder-and-garnish/compute.ts';
import { BINDER_LINE } from '../../../worksheets/binder-and-garnish/to-formula.ts';
import { hasOwnLines, withOwnLines } from '../../../worksheets/state/own-lines.ts';

const composition = await loadIngredients();

/** 2 kg of lean, a bread panade of 100 g bread and 125 g milk, egg and 80 g of a garnish. */
function bench() {
  const batch = newBatch({ id: 'b', at: '', zone: 'UTC' });
  batch.formula.lines = [{ ...newLine('l', 'lean'), name: 'Lean', amount: enteredEntry('2', 'kg') }];
  const binder = withPanade(newBinderSlice(), 'bread', 225);
  binder.panadeLoss = enteredEntry('4', '%');
  binder.egg = enteredEntry('50', 'g');
  binder.garnish = [
    {
      ...newGarnishLine('g'),
      name: 'Nuts',
      asBought: enteredEntry('100', 'g'),
      prepYield: enteredEntry('80', '%'),
    },
  ];
  return { ...batch, binder };
}

describe('lines for the formula', () => {
  it('weigh what goes into the bowl: steam comes off the largest part of the panade', () => {
    const { lines } = computeBinder(bench(), composition);
    // Derived: 225 g × 4 % = 9 g of steam; 125 − 9 = 116 g.
    expect(lines?.map(({ name, part, grams }) => [name, part, grams])).toEqual([
      ['White bread, crusts off', 'panade', '100'],
      ['Milk', 'panade', '116'],
      ['Egg', 'egg', '50'],
      ['Nuts', 'garnish', '80'],
    ]);
  });

  it('give the same shares whether they stand in the formula or not', () => {
    const batch = bench();
    const before = computeBinder(batch, composition);
    const lines = withOwnLines(batch.formula.lines, before.lines ?? [], BINDER_LINE);
    const after = computeBinder({ ...batch, formula: { ...batch.formula, lines } }, composition);
    // Derived: 80 g of 2346 g.
    expect(before.values.garnishFraction).toBeCloseTo(80 / 2346, 9);
    expect(after.values.garnishFraction).toBeCloseTo(80 / 2346, 9);
    expect(hasOwnLines(lines, after.lines ?? [], BINDER_LINE)).toBe(true);
  });

  it('are none while a weight is unknown, or more steam left than there was liquid', () => {
    const unknown = bench();
    unknown.binder.egg = enteredEntry('', 'g');
    expect(computeBinder(unknown, composition).lines).toBeNull();
    const dry = bench();
    dry.binder.panadeCooked = enteredEntry('50', 'g');
    expect(computeBinder(dry, composition).lines).toBeNull();
  });

  it('are none at all for a batch nobody has bound or garnished', () => {
    const batch = { ...bench(), binder: newBinderSlice() };
    expect(computeBinder(batch, composition).lines).toEqual([]);
  });
});
