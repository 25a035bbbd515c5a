import { newLine } from '@larderwright/calc/batch';
import { FAMILIES, familyOf, familyStart, formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { entryValue } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';

const composition = await loadIngredients();
const TOTAL_G = 3000;
/** Families whose least shares add up to more than the bowl: derived from their ranges. Garnish is added by the cook. */
const OVERFULL = ['game-terrine', 'gratin-terrine'];

function begun(id: string) {
  const family = familyOf(id);
  if (!family) throw new Error(`no family ${id}`);
  const start = familyStart(family, TOTAL_G);
  const lines = start.lines.map(({ part, amount, basis }, index) => ({
    ...newLine(`${index}`, part),
    amount,
    basis,
    ...(part === 'salt' ? { name: 'Salt', ingredientId: 'salt' } : {}),
  }));
  return { family, start, slice: { familyId: id, lines, saltTarget: start.saltTarget } };
}

describe.each(FAMILIES.map(({ id }) => id))('a batch begun as %s', (id) => {
  const { family, start, slice } = begun(id);
  const { values, findings } = formulaStage(slice, { composition });
  const { planned } = values;

  it('marks everything it puts in as a default', () => {
    const entries = [...start.lines.map(({ amount }) => amount), start.saltTarget];
    expect(entries.filter(({ origin }) => origin !== 'default')).toEqual([]);
  });

  // Derived: the shares and the weight of the largest part leave nothing over.
  it('weighs what was asked for, where every amount is known', () => {
    const open = start.lines.some(({ amount }) => amount.text === '');
    if (open) {
      expect(planned.totalG).toBeNull();
      // Only a salt counted on what is not in the bowl is left open: common practice, no source.
      expect(family.saltOf).toMatch(/jelly|finished product/);
    } else expect(planned.totalG ?? 0).toBeCloseTo(TOTAL_G, -1.2);
  });

  it('lies inside every range of its family', () => {
    const outside = findings.filter(({ id: finding }) => finding === 'formula.outside-band');
    expect(outside.map(({ params }) => params.what)).toEqual(OVERFULL.includes(id) ? ['garnish'] : []);
    for (const { part, amount, basis } of start.lines) {
      const band = family.parts[part];
      if (!band || basis !== 'percent-of-total') continue;
      const share = entryValue('fraction', amount) ?? -1;
      expect(share, part).toBeGreaterThanOrEqual(band.min - 5e-4);
      expect(share, part).toBeLessThanOrEqual(band.max + 5e-4);
    }
  });

  it('brings no curing salt: its strength is read off a pack', () => {
    expect(start.lines.map(({ part }) => part)).not.toContain('curing-salt');
    expect(findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
  });

  it('asks for the salt of its family only where that is counted on everything in the bowl', () => {
    if (family.saltOf !== 'total') expect(start.saltTarget.text).toBe('');
    else if (family.salt) {
      const target = entryValue('fraction', start.saltTarget) ?? -1;
      expect(target).toBeGreaterThanOrEqual(family.salt.min);
      expect(target).toBeLessThanOrEqual(family.salt.max);
    }
  });
});

describe('the salt a family begins with', () => {
  // Usual salt of the trade: common practice, no source.
  it.each([
    ['country-terrine', '1.7'],
    ['fish-mousseline', '1.15'],
    ['emulsified-sausage', '1.9'],
    ['cooked-ham', '2.2'],
  ])('is %s %s % of the total', (id, percent) => {
    expect(begun(id).start.saltTarget).toEqual({ text: percent, unit: '%', origin: 'default' });
  });

  it('is counted on the meat for dry-cured bacon: 2.5 %, common practice, no source', () => {
    const salt = begun('dry-bacon').start.lines.find(({ part }) => part === 'salt');
    expect(salt).toMatchObject({ basis: 'percent-of-meat', amount: { text: '2.5', origin: 'default' } });
  });
});
