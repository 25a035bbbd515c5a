import {
  type FormulaLine,
  formulaStage,
  mixForFillG,
  type Scaled,
  scaleFormula,
  scaleToFill,
  scaleToMeatBlock,
  scaleToTotal,
} from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COUNTRY_TERRINE, makeLine, makeSlice } from '../../fixtures/scenario-formulas.ts';

const composition = await loadIngredients();

function lines(scaled: Scaled): FormulaLine[] {
  if (!scaled.ok) throw new Error(scaled.problem);
  return scaled.lines;
}
const mixOf = (list: FormulaLine[]) => formulaStage(makeSlice(list), { composition }).values.mix;
const texts = (scaled: Scaled) => lines(scaled).map(({ amount }) => amount.text);

describe('a scaled formula', () => {
  it('is rewritten in the units it was typed in', () => {
    const typed = ['2', '1.5 kg', '2 lb', '1 lb 8 oz', '1½ oz', '0,5', '1 200 g'].map((text, index) =>
      makeLine(`l${index}`, 'lean', null, text),
    );
    expect(texts(scaleFormula(typed, 2))).toEqual(['4', '3 kg', '4 lb', '3 lb', '3 oz', '1', '2400']);
    expect(texts(scaleFormula([makeLine('a', 'lean', null, '100')], 1 / 3))).toEqual(['33.333333']);
  });

  it('leaves shares, blanks and what cannot be read as they are', () => {
    const typed = [
      makeLine('a', 'salt', null, '1.7', { basis: 'percent-of-total' }),
      makeLine('b', 'lean', null, ''),
      makeLine('c', 'lean', null, '1,234'),
    ];
    expect(texts(scaleFormula(typed, 3))).toEqual(['1.7', '', '1,234']);
  });

  it('takes weights off the scale out, tells how many, and keeps the lots', () => {
    const typed = [makeLine('a', 'lean', null, '100', { actual: enteredEntry('101', 'g'), lot: 'P-1' })];
    const scaled = scaleFormula(typed, 2);
    expect(scaled.ok && scaled.clearedWeights).toBe(1);
    expect(lines(scaled)[0]).toMatchObject({ lot: 'P-1', actual: { text: '' } });
  });

  it('does not change the one it came from', () => {
    const before = structuredClone(COUNTRY_TERRINE.slice.lines);
    scaleFormula(COUNTRY_TERRINE.slice.lines, 7);
    expect(COUNTRY_TERRINE.slice.lines).toEqual(before);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('is refused for a factor of %d', (factor) => {
    expect(scaleFormula([makeLine('a', 'lean', null, '100')], factor)).toEqual({
      ok: false,
      problem: 'unusable-factor',
    });
  });

  it('scaled twice is scaled once by the product', () => {
    const factor = fc.integer({ min: 20, max: 5000 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(factor, factor, (first, second) => {
        const twice = mixOf(
          lines(scaleFormula(lines(scaleFormula(COUNTRY_TERRINE.slice.lines, first)), second)),
        );
        const once = mixOf(lines(scaleFormula(COUNTRY_TERRINE.slice.lines, first * second)));
        for (const [index, { massG }] of once.lines.entries()) {
          const other = twice.lines[index]?.massG ?? Number.NaN;
          expect(Math.abs(other - (massG ?? Number.NaN))).toBeLessThanOrEqual(2e-7 * (massG ?? 0));
        }
      }),
      { numRuns: 100 },
    );
  });

  it('keeps every share, so that salt and cure scale exactly', () => {
    const before = mixOf([...COUNTRY_TERRINE.slice.lines]);
    const after = mixOf(lines(scaleFormula(COUNTRY_TERRINE.slice.lines, 3.7)));
    for (const component of ['water', 'protein', 'fat', 'salt'] as const)
      expect(after[component].fraction).toBeCloseTo(before[component].fraction ?? Number.NaN, 8);
  });
});

describe('a formula scaled to a size', () => {
  it('reaches the total, the meat block, the fill', () => {
    const { lines: from } = COUNTRY_TERRINE.slice;
    expect(mixOf(lines(scaleToTotal(from, 10_000))).totalG).toBeCloseTo(10_000, 3);
    expect(mixOf(lines(scaleToMeatBlock(from, 1400))).meatBlockG).toBeCloseTo(1400, 4);
    const fill = { fillG: 3720, testPoachG: 60, residueFraction: 0.02 };
    // 3,720 ÷ 0.98 + 60 = 3,855.9 g. Derived.
    expect(mixForFillG(fill)).toBeCloseTo(3855.92, 2);
    expect(mixOf(lines(scaleToFill(from, fill))).totalG).toBeCloseTo(3855.92, 2);
  });

  it('writes a recipe wholly in per cent out in grams', () => {
    const recipe = [
      makeLine('lean', 'lean', null, '70', { basis: 'percent-of-total' }),
      makeLine('fat', 'fat', null, '28.3', { basis: 'percent-of-total' }),
      makeLine('salt', 'salt', null, '1.7', { basis: 'percent-of-total' }),
    ];
    const scaled = lines(scaleToTotal(recipe, 5000));
    expect(scaled.map(({ amount, basis }) => [amount.text, basis])).toEqual([
      ['3500', 'mass'],
      ['1415', 'mass'],
      ['85', 'mass'],
    ]);
  });

  it('is refused when its size is unknown or impossible', () => {
    const blank = [makeLine('a', 'lean', null, '100'), makeLine('b', 'salt', null, '')];
    expect(scaleToTotal(blank, 500)).toEqual({ ok: false, problem: 'unknown-total' });
    const half = [makeLine('a', 'lean', null, '50', { basis: 'percent-of-total' })];
    expect(scaleToTotal(half, 500)).toEqual({ ok: false, problem: 'no-anchor' });
    expect(scaleToTotal([makeLine('a', 'lean', null, '100')], 0)).toEqual({
      ok: false,
      problem: 'unusable-factor',
    });
    expect(scaleToMeatBlock([makeLine('a', 'liquid', null, '100')], 500)).toEqual({
      ok: false,
      problem: 'unknown-total',
    });
    expect(mixForFillG({ fillG: 100, testPoachG: 0, residueFraction: 1 })).toBe(null);
    expect(mixForFillG({ fillG: Number.NaN, testPoachG: 0, residueFraction: 0 })).toBe(null);
  });
});
