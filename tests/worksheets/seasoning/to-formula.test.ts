import { newBatch, newLine } from '@larderwright/calc/batch';
import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry } from '@larderwright/calc/quantities';
import {
  BLEND_STYLES,
  blendOfStyle,
  newLooseSpice,
  newSeasoningSlice,
  type SeasoningSlice,
} from '@larderwright/calc/seasoning';
import { describe, expect, it } from 'vitest';
import { computeSeasoning, totalWithSeasoning } from '../../../worksheets/seasoning/compute.ts';
import { SEASONING_LINE } from '../../../worksheets/seasoning/to-formula.ts';
import { hasOwnLines, type OwnLine, withOwnLines } from '../../../worksheets/state/own-lines.ts';

const withSeasoning = (formula: readonly FormulaLine[], lines: readonly OwnLine[]) =>
  withOwnLines(formula, lines, SEASONING_LINE);

/** A formula of 990 g without seasoning, and one blend of 10 g/kg in four kinds. */
function bench(slice: Partial<SeasoningSlice> = {}) {
  const batch = newBatch({ id: 'b', at: '', zone: 'UTC' });
  batch.formula.lines = [{ ...newLine('l', 'lean'), name: 'Lean', amount: enteredEntry('990', 'g') }];
  const [style] = BLEND_STYLES;
  if (!style) throw new Error('no style');
  const blend = { ...blendOfStyle('blend', style), dose: enteredEntry('10', 'g/kg') };
  return { ...batch, seasoning: { ...newSeasoningSlice(), blends: [blend], ...slice } };
}

describe('the mix a seasoning is dosed on', () => {
  it('holds the seasoning too: doses count on the finished mix', () => {
    const batch = bench();
    // Derived: 990 g and 10 g/kg of the whole make 1000 g.
    expect(totalWithSeasoning(batch, batch.seasoning)).toBeCloseTo(1000, 9);
    expect(computeSeasoning(batch).values.totalG).toBeCloseTo(10, 9);
  });

  it('stays the same once the seasoning is written, and so do the lines', () => {
    const batch = bench();
    const { lines } = computeSeasoning(batch);
    const formula = { ...batch.formula, lines: withSeasoning(batch.formula.lines, lines ?? []) };
    const written = { ...batch, formula };
    expect(totalWithSeasoning(written, batch.seasoning)).toBeCloseTo(1000, 9);
    const again = computeSeasoning(written).lines ?? [];
    expect(hasOwnLines(formula.lines, again, SEASONING_LINE)).toBe(true);
    expect(withSeasoning(formula.lines, again)).toEqual(formula.lines);
  });

  it('is not known while a dose or the formula is not', () => {
    const batch = bench({
      loose: [{ ...newLooseSpice('x'), name: 'Own', dose: enteredEntry('NaN', 'g/kg') }],
    });
    expect(computeSeasoning(batch).lines).toBeNull();
    batch.formula.lines = [newLine('l', 'lean')];
    expect(totalWithSeasoning(batch, batch.seasoning)).toBeNull();
  });
});

describe('lines for the formula', () => {
  it('weigh what the scale shows, by its steps', () => {
    const { lines } = computeSeasoning(bench());
    // Derived: 14, 3, 2 and 1 of 20 parts of 10 g.
    expect(lines?.map(({ name, grams }) => [name, grams])).toEqual([
      ['White pepper', '7'],
      ['Nutmeg', '1.5'],
      ['Ginger', '1'],
      ['Clove', '0.5'],
    ]);
  });

  it('replace what was written before, keep its lot, and leave the other lines alone', () => {
    const batch = bench();
    const { lines } = computeSeasoning(batch);
    const first = withSeasoning(batch.formula.lines, lines ?? []).map((line) =>
      line.name === 'Nutmeg' ? { ...line, lot: 'N7', actual: enteredEntry('1.6', 'g') } : line,
    );
    const fewer = (lines ?? [])
      .filter(({ name }) => name !== 'Clove')
      .map((line) => (line.name === 'Nutmeg' ? { ...line, grams: '2' } : line));
    const second = withSeasoning(first, fewer);
    expect(second.map(({ name }) => name)).toEqual(['Lean', 'White pepper', 'Nutmeg', 'Ginger']);
    expect(second[2]).toMatchObject({ lot: 'N7', amount: { text: '2' }, actual: { text: '' } });
    expect(second[0]).toBe(first[0]);
  });

  it('are none when the mix was typed by hand', () => {
    expect(computeSeasoning(bench({ batch: enteredEntry('5', 'kg') })).lines).toBeNull();
  });
});
