import { FAMILIES, type Family, familyOf, formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { describe, expect, it } from 'vitest';
import { COUNTRY_TERRINE, LIVER_PARFAIT, makeLine, makeSlice } from '../../fixtures/scenario-formulas.ts';

const composition = await loadIngredients();

function family(id: string): Family {
  const found = familyOf(id);
  if (!found) throw new Error(`no family ${id}`);
  return found;
}

describe('the families', () => {
  it('are 28, numbered in order, each with its own id and name', () => {
    expect(FAMILIES.map(({ number }) => number)).toEqual(Array.from({ length: 28 }, (_, index) => index + 1));
    expect(new Set(FAMILIES.map(({ id }) => id)).size).toBe(28);
    expect(new Set(FAMILIES.map(({ name }) => name)).size).toBe(28);
    expect(familyOf(null)).toBe(undefined);
    expect(familyOf('nothing')).toBe(undefined);
  });

  it('have ranges the right way round, with the usual value inside', () => {
    for (const found of FAMILIES) {
      const bands = [...Object.values(found.parts), found.chemicalFat, found.salt, found.sugar, found.spirit];
      for (const band of bands) {
        if (!band) continue;
        expect(band.min <= band.max && band.min >= 0 && band.max <= 1, found.id).toBe(true);
        if (band.usual !== undefined)
          expect(band.usual >= band.min && band.usual <= band.max, found.id).toBe(true);
      }
      for (const range of [found.pepperGPerKg, found.spiceGPerKg])
        if (range) expect(range[0] <= range[1], found.id).toBe(true);
    }
  });

  // Ranges: common practice, no source. Spot values against the family table.
  it('carry the ranges of the trade', () => {
    expect(family('country-terrine').salt).toEqual({ min: 0.016, max: 0.019, usual: 0.017 });
    expect(family('country-terrine').parts.liver).toEqual({ min: 0.1, max: 0.25 });
    expect(family('fish-mousseline').nitrite).toBe(null);
    expect(family('poultry-liver-parfait').nitrite).toMatchObject({ minPpm: 60, maxPpm: 100, of: 'liver' });
    expect(family('cooked-ham').salt?.usual).toBeCloseTo(0.022, 12);
    expect(family('dry-bacon').salt).toEqual({ min: 0.0225, max: 0.03, usual: 0.025 });
    expect(family('jelly').chemicalFat?.max).toBeLessThan(0.01);
  });

  it('name the shares that laws tie to a name', () => {
    // 9 CFR 319.182 and 319.881: 30 % fresh liver; 319.141: 50 % fat; 319.180: 30 and 40 %; 319.140: 3 % water, 3.5 % binders.
    expect(family('liver-sausage').named[0]).toMatchObject({ min: 0.3, source: 'us-9-cfr-319' });
    expect(family('fresh-sausage').named.map(({ max }) => max)).toEqual([0.5, 0.03, undefined, undefined]);
    expect(family('emulsified-sausage').named.map(({ max }) => max)).toEqual([0.3, 0.4]);
    expect(family('cooked-coarse-sausage').named[0]?.max).toBe(0.035);
  });
});

describe('a mix outside the habits of its family', () => {
  const findings = (slice: typeof COUNTRY_TERRINE.slice) => formulaStage(slice, { composition }).findings;

  it('gets notes, never more', () => {
    const sweet = makeSlice(
      [makeLine('lean', 'lean', 'kitchen-veal-shoulder', '950'), makeLine('salt', 'salt', null, '50')],
      { familyId: 'country-terrine' },
    );
    const notes = findings(sweet);
    expect(notes.length).toBeGreaterThan(4);
    for (const { severity } of notes) expect(severity).toBe('note');
    const salt = notes.find(({ params }) => params.what === 'salt');
    expect(salt?.params).toMatchObject({ family: 'Country terrine', minPercent: 1.6, maxPercent: 1.9 });
  });

  it('is told what a name asks for', () => {
    const lines = [
      makeLine('liver', 'liver', 'pork-liver', '1200'),
      makeLine('jowl', 'fat', 'kitchen-pork-jowl', '4800'),
    ];
    // 9 CFR 319.881: 30 % of 6.0 kg is 1.8 kg; 1.2 kg is 20 %.
    const named = findings(makeSlice(lines, { familyId: 'fine-liver-pate' })).find(
      ({ id }) => id === 'formula.named-share',
    );
    expect(named).toMatchObject({
      severity: 'note',
      basis: 'us-9-cfr-319',
      params: { valuePercent: expect.closeTo(20, 9), limitPercent: 30, side: 'least' },
    });
    const enough = [
      makeLine('liver', 'liver', 'pork-liver', '1800'),
      makeLine('jowl', 'fat', 'kitchen-pork-jowl', '4200'),
    ];
    expect(
      findings(makeSlice(enough, { familyId: 'fine-liver-pate' })).some(
        ({ id }) => id === 'formula.named-share',
      ),
    ).toBe(false);
  });

  it('stays quiet about salt and fat of the two terrines that keep to theirs', () => {
    for (const { slice } of [COUNTRY_TERRINE, LIVER_PARFAIT]) {
      const what = findings(slice).map(({ params }) => params.what);
      expect(what).not.toContain('salt');
      expect(what).not.toContain('chemical-fat');
    }
  });

  it('hears nothing while nothing can be told', () => {
    expect(findings(makeSlice([makeLine('a', 'lean', null, '')], { familyId: 'country-terrine' }))).toEqual([
      expect.objectContaining({ id: 'formula.allergens-unknown' }),
    ]);
  });
});
