import { type MouldItem, type MouldSlice, mouldStage } from '@larderwright/calc/mould';
import { blankEntry, defaultEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { terrineMould as terrine } from '../../fixtures/terrine-mould.ts';

function slice(...moulds: MouldItem[]): MouldSlice {
  return { moulds, density: defaultEntry('1.04', 'g/mL') };
}

function ids(of: MouldSlice, totalMassG: number | null = null) {
  return mouldStage(of, { totalMassG }).findings.map((finding) => finding.id);
}

describe('mould stage', () => {
  test('two terrines of a 3,850.1 g batch take 1,862 g each and leave 125 g (derived)', () => {
    const { values, findings, missing, verdicts } = mouldStage(slice(terrine()), { totalMassG: 3850.1 });
    expect(values.moulds[0]?.fillG).toBeCloseTo(1862.38, 2);
    expect(values.capacityG).toBeCloseTo(3724.76, 2);
    expect(values.leftoverG).toBeCloseTo(125.34, 2);
    expect(values.moulds[0]?.batchFills).toEqual({ whole: 2, leftoverG: expect.closeTo(125.34, 2) });
    expect(values.moulds[0]?.planAreaMm2).toBe(290 * 95);
    expect(values.moulds[0]?.boardMm).toEqual({ lengthMm: 285, widthMm: 90 });
    expect([findings, missing, verdicts]).toEqual([[], [], []]);
  });

  test('measures typed in other units are the same mould', () => {
    const inches = terrine({
      dimensions: {
        ...terrine().dimensions,
        length: enteredEntry('29 cm', 'mm'),
        width: enteredEntry('9,5', 'cm'),
      },
    });
    expect(mouldStage(slice(inches), { totalMassG: null }).values.moulds[0]?.fillG).toBeCloseTo(1862.38, 2);
  });

  test('a blank measure is missing, never zero: no fill, no capacity', () => {
    const blank = terrine({ dimensions: { ...terrine().dimensions, depth: blankEntry('mm') } });
    const { values, missing } = mouldStage(slice(blank, terrine({ id: 'm2' })), { totalMassG: 3850.1 });
    expect(values.moulds[0]?.fillG).toBeNull();
    expect(values.capacityG).toBeNull();
    expect(values.leftoverG).toBeNull();
    expect(missing).toEqual([{ field: 'mould.moulds.m1.dimensions.depth', neededFor: 'mould.fill' }]);
  });

  test('unreadable, zero and negative measures count as missing', () => {
    for (const text of ['x', '0', '-75', 'NaN', 'Infinity']) {
      const bad = terrine({ dimensions: { ...terrine().dimensions, depth: enteredEntry(text, 'mm') } });
      const { values, missing } = mouldStage(slice(bad), { totalMassG: 3850.1 });
      expect(values.moulds[0]?.fillG, text).toBeNull();
      expect(missing.map(({ field }) => field)).toContain('mould.moulds.m1.dimensions.depth');
    }
  });

  test('blank density, headspace and count are missing', () => {
    const open = terrine({ headspace: blankEntry('mm'), count: blankEntry('count') });
    const { missing } = mouldStage({ moulds: [open], density: blankEntry('g/mL') }, { totalMassG: null });
    expect(missing.map(({ field }) => field).sort()).toEqual([
      'mould.density',
      'mould.moulds.m1.count',
      'mould.moulds.m1.headspace',
    ]);
  });

  test('fat and bacon of unknown thickness leave the fill unknown; film takes no room', () => {
    const fat = mouldStage(slice(terrine({ liningKind: 'fat' })), { totalMassG: null });
    expect(fat.values.moulds[0]?.fillG).toBeNull();
    expect(fat.missing.map(({ field }) => field)).toEqual(['mould.moulds.m1.liningThickness']);
    const film = mouldStage(slice(terrine({ liningKind: 'film' })), { totalMassG: null });
    expect(film.values.moulds[0]?.fillG).toBeCloseTo(1862.38, 2);
  });

  test('a fat lining tells its grams and its sheet, and that it belongs in the formula', () => {
    const lined = slice(terrine({ liningKind: 'fat', liningThickness: enteredEntry('2', 'mm') }));
    const { values, findings } = mouldStage(lined, { totalMassG: null });
    expect(values.moulds[0]?.fatLiningG).toBeCloseTo(209.9, 1);
    expect(values.moulds[0]?.liningSheetMm).toEqual({ acrossMm: 380, alongMm: 480 });
    expect(findings.map(({ id }) => id)).toEqual(['mould.lining-in-formula']);
  });

  test('water and measures more than 5 % apart are told, and water is used (common practice, no source)', () => {
    const off = slice(terrine({ waterFill: enteredEntry('1950', 'mL') }));
    expect(ids(off)).toContain('mould.water-differs');
    expect(mouldStage(off, { totalMassG: null }).values.moulds[0]?.brimMl).toBe(1950);
    expect(ids(slice(terrine({ waterFill: enteredEntry('2000', 'mL') })))).not.toContain(
      'mould.water-differs',
    );
  });

  test('a fill deeper than 75 mm is cautioned with the chill-depth page (common practice, no source)', () => {
    const deep = (depth: string) =>
      slice(terrine({ dimensions: { ...terrine().dimensions, depth: enteredEntry(depth, 'mm') } }));
    const { findings } = mouldStage(deep('86'), { totalMassG: null });
    expect(findings).toMatchObject([
      { id: 'mould.chill-depth', severity: 'caution', caution: 'chill-depth' },
    ]);
    expect(ids(deep('85'))).not.toContain('mould.chill-depth');
  });

  test('a tied roll has no headspace unless a person gives it one', () => {
    const roll = terrine({
      shape: 'cylinder',
      dimensions: { ...terrine().dimensions, diameter: enteredEntry('60', 'mm'), depth: blankEntry('mm') },
    });
    const whole = mouldStage(slice(roll), { totalMassG: null }).values.moulds[0];
    expect(whole?.fillMl).toBeCloseTo((Math.PI / 4) * 60 ** 2 * 0.29, 6);
    const low = mouldStage(slice({ ...roll, headspace: enteredEntry('10', 'mm') }), { totalMassG: null });
    expect(low.values.moulds[0]?.fillMl).toBeLessThan(whole?.fillMl ?? 0);
  });

  test('a cylinder with a depth and a length is asked about, not guessed', () => {
    const both = terrine({ shape: 'cylinder' });
    const withDiameter = { ...both, dimensions: { ...both.dimensions, diameter: enteredEntry('80', 'mm') } };
    expect(ids(slice(withDiameter))).toContain('mould.stands-or-lies');
    expect(mouldStage(slice(withDiameter), { totalMassG: null }).values.moulds[0]?.fillG).toBeNull();
  });

  test('a headspace deeper than the mould leaves no room and says so', () => {
    expect(ids(slice(terrine({ headspace: enteredEntry('80', 'mm') })))).toContain('mould.no-room');
  });

  test('a batch too large, too small, or leaving a last mould below 30 % is noted (common practice, no source)', () => {
    expect(ids(slice(terrine()), 6000)).toContain('mould.moulds-short');
    expect(ids(slice(terrine()), 3600)).toContain('mould.batch-short');
    expect(ids(slice(terrine()), 2300)).toContain('mould.last-mould-low');
    expect(ids(slice(terrine()), 1500)).toContain('mould.batch-short');
    expect(ids(slice(terrine()), 3850)).toEqual([]);
  });

  test('a filled mould more than 5 % off its target is noted; a blank box is not', () => {
    const filled = terrine({
      actualFills: [enteredEntry('1860', 'g'), enteredEntry('1.7 kg', 'g'), blankEntry('g')],
    });
    const { values, findings } = mouldStage(slice(filled), { totalMassG: null });
    expect(findings.map(({ id, field }) => [id, field])).toEqual([
      ['mould.fill-differs', 'mould.moulds.m1.actualFills.1'],
    ]);
    expect(values.actualTotalG).toBe(3560);
  });

  test('a density no forcemeat has is noted', () => {
    expect(ids({ moulds: [], density: enteredEntry('1.4', 'g/mL') })).toEqual(['mould.density-unusual']);
  });

  test('the slice is left as it was', () => {
    const before = slice(terrine());
    const copy = structuredClone(before);
    mouldStage(before, { totalMassG: 3850.1 });
    expect(before).toEqual(copy);
  });
});
