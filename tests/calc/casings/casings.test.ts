import {
  CASINGS,
  type CasingsSlice,
  casingForG,
  casingOf,
  casingsStage,
  linksByLength,
  linksByMass,
  massPerMetreG,
  newCasingsSlice,
} from '@larderwright/calc/casings';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { casingPrep, casingsWords } from '../../../worksheets/words/casings.ts';

describe('filling by the metre', () => {
  it('of 33 mm is 0.881 kg, and 10 kg with 10 % spare take 12.5 m (calculated)', () => {
    const perMetreG = massPerMetreG(33, 1.03) ?? Number.NaN;
    expect(perMetreG / 1000).toBeCloseTo(0.881, 3);
    expect(casingForG(10_000, perMetreG, 0.1)?.withSpareM).toBeCloseTo(12.5, 1);
  });

  // Calculated at 1.03 g/mL, as the trade's table gives it.
  it.each([
    [19, 0.29, 3.4],
    [23, 0.43, 2.3],
    [27, 0.59, 1.7],
    [29, 0.68, 1.5],
    [33, 0.88, 1.1],
    [40, 1.29, 0.77],
    [43, 1.5, 0.67],
    [55, 2.45, 0.41],
    [90, 6.55, 0.15],
    [60, 2.9, 0.34],
    [100, 8.1, 0.12],
  ])('of %d mm is %d kg, and a kilogram fills %d m', (mm, kg, metres) => {
    const perMetreG = massPerMetreG(mm, 1.03) ?? Number.NaN;
    expect(Math.abs(perMetreG / 1000 - kg)).toBeLessThan(0.02);
    expect(Math.abs(1000 / perMetreG / metres - 1)).toBeLessThan(0.05);
  });

  it('is unknown for what is no size, and spare is never taken off', () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(massPerMetreG(bad, 1.03)).toBe(null);
      expect(massPerMetreG(33, bad)).toBe(null);
      expect(massPerMetreG(33, 1.03, bad)).toBe(null);
      expect(casingForG(1000, bad, 0.1)).toBe(null);
    }
    expect(casingForG(1000, 881, -0.1)).toBe(null);
    expect(casingForG(0, 881, 0.1)).toEqual({ filledM: 0, withSpareM: 0 });
  });
});

describe('links', () => {
  it('and the rest are all of the batch, to 1 mg', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: 10, max: 5000 }),
        (massG, tenths) => {
          const links = linksByMass(massG, 881, tenths / 10);
          if (!links) throw new Error('refused a link');
          expect(Math.abs(links.count * links.linkG + links.leftoverG - massG)).toBeLessThan(1e-3);
          expect(links.leftoverG).toBeLessThan(links.linkG + 1e-6);
        },
      ),
    );
  });

  it('told by mass and by the length it comes to are the same links', () => {
    const byMass = linksByMass(10_000, 881, 120);
    expect(byMass).toMatchObject({ count: 83, leftoverG: 40 });
    // Derived: 120 ÷ 881 m.
    expect(byMass?.linkMm).toBeCloseTo(136.2, 1);
    expect(linksByLength(10_000, 881, byMass?.linkMm ?? 0)?.linkG).toBeCloseTo(120, 9);
    for (const bad of [0, -1, Number.NaN]) {
      expect(linksByMass(10_000, 881, bad)).toBe(null);
      expect(linksByLength(10_000, 881, bad)).toBe(null);
    }
  });

  it('of the usual length weigh what the trade says, within a fifth (common practice, no source)', () => {
    for (const { linkMm, linkG, usualMm } of CASINGS) {
      if (!linkMm || !linkG) continue;
      const perMm = (massPerMetreG(usualMm, 1.03) ?? 0) / 1000;
      const middle = (range: readonly [number, number]) => (range[0] + range[1]) / 2;
      expect(Math.abs((middle(linkMm) * perMm) / middle(linkG) - 1)).toBeLessThan(0.2);
    }
  });
});

describe('the casing table', () => {
  it('has 13 rows, the usual size within its range, each with its preparation', () => {
    expect(CASINGS).toHaveLength(13);
    for (const { id, stuffedMm, usualMm, material, species } of CASINGS) {
      expect(usualMm).toBeGreaterThanOrEqual(stuffedMm[0]);
      expect(usualMm).toBeLessThanOrEqual(stuffedMm[1]);
      expect(casingPrep[id]).toBeDefined();
      expect(species !== null).toBe(material === 'natural');
    }
    expect(casingOf('none')).toBe(undefined);
    expect(casingOf(null)).toBe(undefined);
  });
});

const hog = (change: Partial<CasingsSlice> = {}): CasingsSlice => ({
  ...newCasingsSlice(),
  casingId: 'hog-32-35',
  batch: enteredEntry('10', 'kg'),
  fullness: enteredEntry('100', '%'),
  linkMass: enteredEntry('120', 'g'),
  ...change,
});
const stage = (slice: CasingsSlice) => casingsStage(slice, { totalG: null });
const ids = (slice: CasingsSlice) => stage(slice).findings.map(({ id }) => id);

describe('casings of a batch', () => {
  it('come from the table until a stuffed diameter is typed', () => {
    const { values } = stage(hog());
    expect(values.stuffedMm).toBe(33);
    expect(values.casing?.withSpareM).toBeCloseTo(12.486, 2);
    expect(values.links?.count).toBe(83);
    expect(stage(hog({ stuffedDiameter: enteredEntry('35', 'mm') })).values.stuffedMm).toBe(35);
    expect(stage(hog({ stuffedDiameter: enteredEntry('wide', 'mm') })).values.casing).toBe(null);
  });

  it('are more when they are filled slack', () => {
    // Derived: 12.486 ÷ 0.95.
    expect(stage(hog({ fullness: enteredEntry('95', '%') })).values.casing?.withSpareM).toBeCloseTo(13.14, 2);
  });

  it('are counted in whole strands and bundles', () => {
    const { values } = stage(
      hog({ strandLength: enteredEntry('2', 'm'), hankLength: enteredEntry('90', 'm') }),
    );
    expect([values.strands, values.hanks]).toEqual([7, 1]);
    expect(stage(hog()).values.strands).toBe(null);
  });

  it('take the batch from the formula, and stay unknown without one', () => {
    const blank = hog({ batch: newCasingsSlice().batch });
    expect(casingsStage(blank, { totalG: 5000 }).values.batchG).toBe(5000);
    const { values, missing } = stage(blank);
    expect(values.casing).toBe(null);
    expect(missing).toContainEqual({ field: 'casings.batch', neededFor: 'casings.length' });
  });

  it('say how the cook grows with the square of the diameter (derived)', () => {
    // (90 ÷ 30)² = 9.
    expect(stage(hog({ casingId: 'bung' })).values.comeUpTimes30).toBe(9);
    expect(ids(hog({ casingId: 'bung' }))).toContain('casings.heats-slower');
    expect(ids(hog({ casingId: 'sheep-18-20' }))).not.toContain('casings.heats-slower');
  });

  it('tell what is off: size, fullness, spare, link, tally', () => {
    const off = hog({
      stuffedDiameter: enteredEntry('45', 'mm'),
      fullness: enteredEntry('80', '%'),
      spare: enteredEntry('3', '%'),
      linkMass: enteredEntry('60', 'g'),
      actualLinks: [enteredEntry('70', 'g'), enteredEntry('72', 'g'), enteredEntry('', 'g')],
    });
    expect(ids(off)).toEqual(
      expect.arrayContaining([
        'casings.outside-size',
        'casings.fullness',
        'casings.spare-outside-habit',
        'casings.link-outside-habit',
        'casings.species',
        'casings.links-off-target',
      ]),
    );
    expect(stage(off).values.actual?.mean).toBe(71);
    expect(ids(hog())).toContain('casings.label-is-not-stuffed');
    expect(ids(hog({ casingId: 'cellulose' }))).toContain('casings.peel');
    expect(ids(hog({ linkMass: enteredEntry('20', 'kg') }))).toContain('casings.no-link');
    for (const slice of [off, hog(), hog({ casingId: 'fibrous', linkMass: enteredEntry('20', 'kg') })])
      for (const { id, params } of stage(slice).findings)
        expect(casingsWords[id](params).title).not.toMatch(/undefined|NaN/);
  });

  it('links told by length, and blanks, follow their own fields', () => {
    const byLength = hog({ linkBy: 'length', linkLength: enteredEntry('150', 'mm') });
    expect(stage(byLength).values.links?.linkG).toBeCloseTo(132.1, 1);
    const missing = stage(newCasingsSlice()).missing.map(({ field }) => field);
    expect(missing).toEqual(['casings.batch', 'casings.stuffedDiameter', 'casings.linkMass']);
  });
});
