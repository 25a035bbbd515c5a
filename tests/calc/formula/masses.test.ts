import { type AmountBasis, type FormulaLine, formulaStage, type LinePart } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeLine, makeSlice } from '../../fixtures/scenario-formulas.ts';

const composition = await loadIngredients();

function line(id: string, part: LinePart, amount: string, basis: AmountBasis = 'mass'): FormulaLine {
  return makeLine(id, part, part === 'salt' ? null : 'water', amount, { basis });
}

const stage = (lines: FormulaLine[]) => formulaStage(makeSlice(lines), { composition });
const masses = (lines: FormulaLine[]) => stage(lines).values.mix.lines.map(({ massG }) => massG);

describe('masses from grams, % of the meat block and % of the total', () => {
  it('are solved together, the salt being part of the total it is a share of', () => {
    // By hand: meat 900, milk 10 % of meat 90, salt 1 % of total: total = 990 ÷ 0.99 = 1000. Derived.
    const { values } = stage([
      line('pork', 'lean', '900'),
      line('milk', 'liquid', '10', 'percent-of-meat'),
      line('salt', 'salt', '1', 'percent-of-total'),
    ]);
    expect(values.mix.meatBlockG).toBe(900);
    expect(values.mix.totalG).toBeCloseTo(1000, 9);
    expect(values.mix.lines.map(({ massG }) => massG)).toEqual([900, 90, expect.closeTo(10, 9)]);
  });

  it('let a share of the total be meat itself', () => {
    // By hand: lean 600 g, fat 30 % of total, cream 10 % of total: total = 600 ÷ 0.6 = 1000, meat 900. Derived.
    const { mix } = stage([
      line('lean', 'lean', '600'),
      line('fat', 'fat', '30', 'percent-of-total'),
      line('cream', 'liquid', '10', 'percent-of-total'),
    ]).values;
    expect(mix.totalG).toBeCloseTo(1000, 9);
    expect(mix.meatBlockG).toBeCloseTo(900, 9);
  });

  it('let a share of the meat block be meat itself, and more than all of it for what is no meat', () => {
    // By hand: lean 750 g = 75 % of meat, fat 25 % of meat: meat 1000; butter 120 % of meat: 1200. Derived.
    expect(
      masses([
        line('lean', 'lean', '750'),
        line('fat', 'fat', '25', 'percent-of-meat'),
        line('butter', 'liquid', '120', 'percent-of-meat'),
      ]),
    ).toEqual([750, expect.closeTo(250, 9), expect.closeTo(1200, 9)]);
  });

  it('leave a lining out of total and meat block but tell its weight', () => {
    const { mix, facts } = formulaStage(
      makeSlice([
        makeLine('pork', 'lean', 'pork-ground', '1000'),
        makeLine('duck', 'lining', 'duck-meat-skin', '10', { basis: 'percent-of-total' }),
      ]),
      { composition },
    ).values;
    expect(mix.totalG).toBe(1000);
    expect(mix.meatBlockG).toBe(1000);
    expect(mix.lines[1]?.massG).toBeCloseTo(100, 9);
    expect(mix.lines[1]?.ofTotalFraction).toBe(null);
    expect(facts.poultry).toBe(true);
  });

  it('refuse percentages that add up past everything', () => {
    const ofTotal = stage([
      line('lean', 'lean', '60', 'percent-of-total'),
      line('fat', 'fat', '50', 'percent-of-total'),
      line('salt', 'salt', '10'),
    ]);
    expect(ofTotal.values.mix.totalG).toBe(null);
    expect(ofTotal.findings[0]).toMatchObject({
      id: 'formula.percent-over-100',
      params: { ofTotalPercent: expect.closeTo(110, 9) },
    });
    const full = stage([line('lean', 'lean', '100', 'percent-of-total'), line('salt', 'salt', '10')]);
    expect(full.findings[0]?.id).toBe('formula.percent-over-100');
    const ofMeat = stage([
      line('lean', 'lean', '70', 'percent-of-meat'),
      line('fat', 'fat', '50', 'percent-of-meat'),
      line('milk', 'liquid', '100'),
    ]);
    expect(ofMeat.values.mix.meatBlockG).toBe(null);
    expect(ofMeat.findings[0]?.id).toBe('formula.percent-over-100');
  });

  it('say that a batch wholly in per cent has no size', () => {
    const { values, findings } = stage([
      line('lean', 'lean', '98', 'percent-of-total'),
      line('salt', 'salt', '2', 'percent-of-total'),
    ]);
    expect(values.mix.totalG).toBe(null);
    expect(findings.map(({ id }) => id)).toContain('formula.no-anchor');
  });

  it('conserve mass whatever the mixture of bases', () => {
    const parts = fc.constantFrom<LinePart>('lean', 'fat', 'liver', 'liquid', 'garnish', 'salt', 'egg');
    const amount = fc.oneof(
      fc.record({ basis: fc.constant<AmountBasis>('mass'), text: fc.integer({ min: 0, max: 5000 }) }),
      fc.record({
        basis: fc.constantFrom<AmountBasis>('percent-of-meat', 'percent-of-total'),
        text: fc.integer({ min: 0, max: 30 }),
      }),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(parts, amount), { minLength: 1, maxLength: 8 }), (drawn) => {
        const lines = drawn.map(([part, { basis, text }], index) =>
          line(`l${index}`, part, String(text), basis),
        );
        const { mix } = stage(lines).values;
        if (mix.totalG === null) return;
        const sum = mix.lines.reduce((total, { massG }) => total + (massG ?? Number.NaN), 0);
        expect(sum).toBeCloseTo(mix.totalG, 6);
        for (const { massG } of mix.lines) expect(massG).toBeGreaterThanOrEqual(0);
        for (const [index, [, { basis, text }]] of drawn.entries()) {
          const found = mix.lines[index];
          if (basis === 'percent-of-total' && mix.totalG > 0)
            expect(found?.ofTotalFraction).toBeCloseTo(text / 100, 9);
          if (basis === 'percent-of-meat' && mix.meatBlockG)
            expect(found?.ofMeatFraction).toBeCloseTo(text / 100, 9);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('what is not written down is not zero', () => {
  it('a begun line without an amount leaves the total unknown and the meat block known', () => {
    const { values, missing } = stage([line('pork', 'lean', '1000'), line('salt', 'salt', '')]);
    expect(values.mix.totalG).toBe(null);
    expect(values.mix.meatBlockG).toBe(1000);
    expect(values.mix.salt.fraction).toBe(null);
    expect(missing).toContainEqual({ field: 'formula.lines.salt.amount', neededFor: 'formula.total' });
  });

  it('an unreadable amount does the same', () => {
    const { values, missing } = stage([line('pork', 'lean', '1,234'), line('salt', 'salt', '20')]);
    expect(values.mix.totalG).toBe(null);
    expect(values.mix.meatBlockG).toBe(null);
    expect(missing.map(({ field }) => field)).toContain('formula.lines.pork.amount');
  });

  it('a row nobody has begun is no line', () => {
    const untouched = makeLine('new', 'garnish', null, '', { name: '' });
    expect(stage([line('pork', 'lean', '1000'), untouched]).values.mix.totalG).toBe(1000);
  });

  it('an empty formula has nothing and says so', () => {
    const { values, missing, findings } = stage([]);
    expect(values.mix.totalG).toBe(null);
    expect(values.mix.meatBlockG).toBe(null);
    expect(values.facts.poultry).toBe(null);
    expect(values.facts.porkLiver).toBe(null);
    expect(missing).toEqual([{ field: 'formula.lines', neededFor: 'formula.total' }]);
    expect(findings).toEqual([]);
  });

  it('zero grams everywhere divide by nothing', () => {
    const { mix } = stage([line('pork', 'lean', '0'), line('salt', 'salt', '0')]).values;
    expect(mix.salt.fraction).toBe(null);
    expect(mix.saltOnWaterFraction).toBe(null);
  });
});

describe('curing salt is in grams or not at all', () => {
  it('refuses a percentage, with a stop', () => {
    const cure = makeLine('cure', 'curing-salt', null, '0.25', { basis: 'percent-of-meat' });
    const { values, findings } = stage([line('pork', 'lean', '1000'), cure]);
    expect(findings).toContainEqual(
      expect.objectContaining({ id: 'formula.curing-salt-in-percent', severity: 'stop' }),
    );
    expect(values.mix.lines[1]?.massG).toBe(null);
  });

  it('refuses ounces', () => {
    const cure = makeLine('cure', 'curing-salt', null, '1/4 oz');
    expect(stage([line('pork', 'lean', '1000'), cure]).values.mix.lines[1]?.massG).toBe(null);
  });
});

describe('the mix as weighed', () => {
  const weighed = (id: string, part: LinePart, amount: string, actual: string) => ({
    ...line(id, part, amount),
    actual: enteredEntry(actual, 'g'),
  });

  it('counts once a weight is written down, the plan standing in for the rest, and says so', () => {
    const { values, findings } = stage([
      weighed('pork', 'lean', '1000', '1040'),
      line('milk', 'liquid', '100'),
      weighed('salt', 'salt', '20', '20'),
    ]);
    expect(values.inUse).toBe('as-weighed');
    expect(values.mix.totalG).toBe(1160);
    expect(values.planned.totalG).toBe(1120);
    expect(values.mix.meatBlockG).toBe(1040);
    expect(values.mix.lines.map((found) => found.weighed)).toEqual([true, false, true]);
    expect(findings.find(({ id }) => id === 'formula.partly-weighed')?.params).toMatchObject({
      names: 'milk',
      count: 1,
      ofCount: 3,
    });
  });

  it('needs no plan for a line that was weighed', () => {
    const { values } = stage([weighed('pork', 'lean', '', '1000'), weighed('salt', 'salt', '', '17')]);
    expect(values.planned.totalG).toBe(null);
    expect(values.mix.totalG).toBe(1017);
  });

  it('does not let the plan stand in for a weight that cannot be read', () => {
    const { values, missing } = stage([weighed('pork', 'lean', '1000', '1,040'), line('salt', 'salt', '20')]);
    expect(values.mix.totalG).toBe(null);
    expect(missing).toContainEqual({ field: 'formula.lines.pork.actual', neededFor: 'formula.total' });
  });

  it('points to a weight far from its plan', () => {
    const { findings } = stage([
      weighed('pork', 'lean', '1000', '1000'),
      weighed('salt', 'salt', '20', '200'),
    ]);
    expect(findings.find(({ id }) => id === 'formula.weighed-off-plan')).toMatchObject({
      field: 'formula.lines.salt.actual',
      params: { actualG: 200, plannedG: 20 },
    });
  });

  it('is the plan while nothing is weighed', () => {
    const { values } = stage([line('pork', 'lean', '1000')]);
    expect(values.inUse).toBe('planned');
    expect(values.asWeighed).toBe(null);
  });
});
