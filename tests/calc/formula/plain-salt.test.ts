import { type FormulaLine, formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COUNTRY_TERRINE, makeLine, makeSlice } from '../../fixtures/scenario-formulas.ts';

const composition = await loadIngredients();
const declaredSalt = (percent: string) => {
  const zero = enteredEntry('0', '%');
  return {
    declared: { salt: enteredEntry(percent, '%'), fat: zero, protein: zero, water: enteredEntry('60', '%') },
  };
};
const need = (lines: FormulaLine[], target: string) =>
  formulaStage(makeSlice(lines, { saltTarget: enteredEntry(target, '%') }), { composition }).values.plainSalt;

describe('plain salt for a target', () => {
  it('is a share of the final total, itself included', () => {
    // 1.7 % of the final total: 983 × 0.017 ÷ (1 − 0.017) = 17.0 g in 1 kg. Derived.
    const found = need([makeLine('mix', 'lean', null, '983', declaredSalt('0'))], '1.7');
    expect(found.state === 'ok' && found.plainSaltG).toBeCloseTo(17, 9);
    expect(found.state === 'ok' && found.totalG).toBeCloseTo(1000, 9);
  });

  it('raises 3,600 g from 1.50 % to 1.65 % with 5.49 g on the new total', () => {
    // 3,600 × (0.0165 − 0.0150) ÷ (1 − 0.0165) = 5.49 g. Derived.
    const found = need([makeLine('mix', 'lean', null, '3600', declaredSalt('1.5'))], '1.65');
    expect(found.state === 'ok' && found.plainSaltG).toBeCloseTo(5.49, 2);
  });

  it('takes the curing salt’s own salt off', () => {
    const cure = { cure: { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('0', '%') } };
    const found = need(
      [
        makeLine('mix', 'lean', null, '1000', declaredSalt('0')),
        makeLine('cure', 'curing-salt', null, '2', cure),
      ],
      '2',
    );
    // (0.02 × 1002 − 2 × 0.9375) ÷ 0.98 = 18.536 g. Derived.
    expect(found.state === 'ok' && found.plainSaltG).toBeCloseTo(18.5357, 3);
    expect(found.state === 'ok' && found.carriedSaltG).toBeCloseTo(1.875, 12);
  });

  it('does not care what stands in the salt line, blank or wrong', () => {
    const mix = makeLine('mix', 'lean', null, '983', declaredSalt('0'));
    for (const text of ['', '12', '999', 'x']) {
      const found = need([mix, makeLine('salt', 'salt', null, text)], '1.7');
      expect(found.state === 'ok' && found.plainSaltG).toBeCloseTo(17, 9);
    }
  });

  it('is refused when the ingredients bring more, naming the one that brings most', () => {
    const found = need(
      [
        makeLine('pork', 'lean', 'kitchen-pork-shoulder-80-20', '1000'),
        makeLine('bacon', 'garnish', 'kitchen-bacon-dry-cured', '1000'),
      ],
      '1',
    );
    // Carried 1.5 + 30 = 31.5 g in 2,000 g = 1.575 %; 11.5 g over. Derived.
    expect(found).toMatchObject({
      state: 'over-supplied',
      carriedSaltG: expect.closeTo(31.5, 9),
      excessG: expect.closeTo(11.5, 9),
      carriedFraction: expect.closeTo(0.01575, 9),
      overSupplier: { lineId: 'bacon', name: 'bacon', saltG: expect.closeTo(30, 9) },
    });
  });

  it('of a batch that has just enough is none', () => {
    const found = need([makeLine('mix', 'lean', null, '1000', declaredSalt('1.7'))], '1.7');
    expect(found.state === 'ok' && found.plainSaltG).toBeCloseTo(0, 9);
  });

  it('cannot be told without target, masses or salt contents', () => {
    const mix = makeLine('mix', 'lean', null, '1000', declaredSalt('0'));
    expect(need([mix], '')).toEqual({ state: 'cannot-tell', because: 'target' });
    expect(need([mix], '100')).toEqual({ state: 'cannot-tell', because: 'target' });
    expect(need([mix, makeLine('milk', 'liquid', 'milk-whole', '')], '1.7')).toEqual({
      state: 'cannot-tell',
      because: 'mass',
    });
    expect(need([mix, makeLine('x', 'garnish', null, '100')], '1.7')).toEqual({
      state: 'cannot-tell',
      because: 'salt',
    });
    expect(need([], '1.7')).toEqual({ state: 'cannot-tell', because: 'mass' });
  });

  it('put in as a line brings the mix exactly to the target, shares of the total and all', () => {
    const amounts = fc.record({
      lean: fc.integer({ min: 100, max: 5000 }),
      broth: fc.integer({ min: 0, max: 20 }),
      milk: fc.integer({ min: 0, max: 30 }),
      target: fc.integer({ min: 8, max: 30 }),
    });
    fc.assert(
      fc.property(amounts, ({ lean, broth, milk, target }) => {
        const lines = (salt: string) => [
          makeLine('lean', 'lean', 'kitchen-pork-shoulder-80-20', String(lean)),
          makeLine('broth', 'liquid', 'stock-beef', String(broth), { basis: 'percent-of-total' }),
          makeLine('milk', 'liquid', 'milk-whole', String(milk), { basis: 'percent-of-meat' }),
          makeLine('salt', 'salt', null, salt),
        ];
        const found = need(lines(''), String(target / 10));
        if (found.state !== 'ok') throw new Error(found.state);
        const { mix } = formulaStage(makeSlice(lines(found.plainSaltG.toFixed(9))), { composition }).values;
        expect(mix.salt.fraction).toBeCloseTo(target / 1000, 8);
        expect(mix.totalG).toBeCloseTo(found.totalG, 5);
      }),
      { numRuns: 200 },
    );
  });

  it('follows the scale once something is weighed', () => {
    const found = need(
      [
        makeLine('mix', 'lean', null, '500', { ...declaredSalt('0'), actual: enteredEntry('983', 'g') }),
        makeLine('salt', 'salt', null, '10'),
      ],
      '1.7',
    );
    expect(found.state === 'ok' && found.plainSaltG).toBeCloseTo(17, 9);
  });
});

describe('what the formula says of its salt', () => {
  const findings = (lines: FormulaLine[], target: string) =>
    formulaStage(makeSlice(lines, { saltTarget: enteredEntry(target, '%') }), { composition }).findings;

  it('names the supplier of too much', () => {
    const found = findings([makeLine('ham', 'garnish', 'kitchen-ham-cooked', '1000')], '1');
    expect(found.find(({ id }) => id === 'formula.salt-over-supplied')?.params).toMatchObject({
      name: 'ham',
    });
  });

  it('notes a tenth of a point off target and lets less pass', () => {
    const mix = makeLine('mix', 'lean', null, '983', declaredSalt('0'));
    const ids = (salt: string) =>
      findings([mix, makeLine('salt', 'salt', null, salt)], '1.7').map(({ id }) => id);
    expect(ids('17')).not.toContain('formula.salt-off-target');
    expect(ids('16.5')).not.toContain('formula.salt-off-target');
    expect(ids('15')).toContain('formula.salt-off-target');
  });

  it('finds the country terrine, 1.64 for 1.70 %, near enough', () => {
    const { findings: found } = formulaStage(COUNTRY_TERRINE.slice, { composition });
    expect(found.map(({ id }) => id)).not.toContain('formula.salt-off-target');
  });
});
