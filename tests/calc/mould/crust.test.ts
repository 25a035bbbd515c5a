import {
  type CrustSlice,
  caulG,
  chimneysFor,
  crustStage,
  MOULD_SIZES,
  type MouldItem,
  newCrustSlice,
  ovalPastry,
  ovalRoundMm,
  pasteWeights,
  pastryG,
  slicedLining,
  slicesAcross,
  straightPastry,
} from '@larderwright/calc/mould';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crustWords } from '../../../worksheets/words/crust.ts';

describe('pastry for a straight mould', () => {
  const pie = straightPastry(300, 80, 85, 20);

  it('of 300 × 80 × 85 mm with 20 mm over: 510 × 290 and 340 × 120 mm, about 0.143 m² (calculated)', () => {
    expect(pie?.base).toMatchObject({ lengthMm: 510, widthMm: 290 });
    expect(pie?.lid).toMatchObject({ lengthMm: 340, widthMm: 120 });
    // The trade rounds to 0.143; derived 103,800 + 40,800 mm².
    expect(pie?.areaMm2).toBe(144_600);
    expect(Math.abs((pie?.areaMm2 ?? 0) / 143_000 - 1)).toBeLessThan(0.015);
  });

  it('at 4 mm and 1.2 g/mL weighs about 690 g, 10–15 % more with decoration (calculated)', () => {
    const mass = pie && pastryG(pie, 4, 4, 1.2, 0.12);
    expect(Math.abs((mass?.sheetsG ?? 0) - 690)).toBeLessThan(6);
    expect((mass?.withSpareG ?? 0) / (mass?.sheetsG ?? 1)).toBeCloseTo(1.12, 12);
  });

  it('covers base, walls, lid and laps, each once, whatever the measures (derived)', () => {
    const mm = fc.integer({ min: 1, max: 600 });
    fc.assert(
      fc.property(mm, mm, mm, fc.integer({ min: 0, max: 60 }), (l, w, h, o) => {
        const inside = l * w + 2 * (l + w) * (h + o);
        const lid = (l + 2 * o) * (w + 2 * o);
        expect(straightPastry(l, w, h, o)?.areaMm2).toBeCloseTo(inside + lid, 6);
      }),
    );
  });

  it('is unknown for what is no measure', () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(straightPastry(bad, 80, 85, 20)).toBe(null);
      expect(ovalPastry(240, bad, 85, 20)).toBe(null);
      expect(pie && pastryG(pie, bad, 4, 1.2, 0.1)).toBe(null);
    }
    expect(straightPastry(300, 80, 85, -1)).toBe(null);
    expect(pie && pastryG(pie, 4, 4, 1.2, -0.1)).toBe(null);
  });
});

describe('pastry for an oval mould', () => {
  it('has a wall as long as the way round: exact for a circle, and near an ellipse summed up', () => {
    expect(ovalRoundMm(100, 100)).toBeCloseTo(100 * Math.PI, 9);
    // derived: 100,000 chords of an ellipse of 240 × 150 mm.
    const steps = 100_000;
    let around = 0;
    for (let i = 0; i < steps; i++) {
      const [a, b] = [(2 * Math.PI * i) / steps, (2 * Math.PI * (i + 1)) / steps];
      around += Math.hypot(120 * (Math.cos(b) - Math.cos(a)), 75 * (Math.sin(b) - Math.sin(a)));
    }
    expect(ovalRoundMm(240, 150)).toBeCloseTo(around, 1);
    expect(ovalPastry(240, 150, 85, 20)?.wall?.widthMm).toBe(125);
  });
});

describe('chimneys', () => {
  it('are one to each 100 to 150 mm (common practice, no source), evenly apart', () => {
    expect(chimneysFor(300)).toEqual({ least: 2, most: 3, placesMm: [75, 225] });
    expect(chimneysFor(80)).toMatchObject({ least: 1, most: 1, placesMm: [40] });
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(chimneysFor(bad)).toBe(null);
  });
});

describe('linings of slices, strips and caul', () => {
  it('slices lap each other and cover the whole length (derived)', () => {
    expect(slicesAcross(290, 45, 6)).toBe(8);
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 600 }),
        fc.integer({ min: 10, max: 120 }),
        fc.integer({ min: 0, max: 9 }),
        (length, wide, lap) => {
          const count = slicesAcross(length, wide, lap) ?? 0;
          const covered = (slices: number) => slices * wide - (slices - 1) * lap;
          expect(covered(count) + 1e-6).toBeGreaterThanOrEqual(length);
          if (count > 1) expect(covered(count - 1)).toBeLessThan(length);
        },
      ),
    );
    expect(slicesAcross(290, 6, 6)).toBe(null);
    for (const bad of [0, -1, Number.NaN]) expect(slicesAcross(bad, 45, 6)).toBe(null);
  });

  it('a lining brings its salt, and unknown salt stays unknown', () => {
    // Bacon of 3 % salt, common practice; 8 slices of 15 g.
    expect(slicedLining(8, 15, 0.03)?.massG).toBe(120);
    expect(slicedLining(8, 15, 0.03)?.saltG).toBeCloseTo(3.6, 12);
    expect(slicedLining(8, 15, null)?.saltG).toBe(null);
    expect(slicedLining(1.5, 15, null)).toBe(null);
  });

  it('caul is 40 to 60 g for 1.2 L (common practice, no source)', () => {
    expect(caulG(1200)?.minG).toBeCloseTo(40, 9);
    expect(caulG(1200)?.maxG).toBeCloseTo(60, 9);
    expect(caulG(Number.NaN)).toBe(null);
  });
});

describe('the paste', () => {
  it('counts its parts on the flour, and all of them are the pastry', () => {
    const paste = pasteWeights('hot-water', 1000);
    // Derived: 100 + 37.5 + 37.5 + 2 parts.
    expect(paste?.flour).toBeCloseTo(1000 / 1.77, 6);
    expect((paste?.salt ?? 0) / (paste?.flour ?? 1)).toBeCloseTo(0.02, 12);
    const sum = Object.values(pasteWeights('short', 870) ?? {}).reduce((total, grams) => total + grams, 0);
    expect(Math.abs(sum - 870)).toBeLessThan(1e-3);
    expect(pasteWeights('none', 1000)).toBe(null);
    expect(pasteWeights('short', Number.NaN)).toBe(null);
  });
});

const mm = (text: string) => enteredEntry(text, 'mm');
const mould = (change: Partial<MouldItem> = {}): MouldItem => ({
  id: 'm',
  name: 'Hinged',
  shape: 'rectangular',
  dimensions: {
    length: mm('300'),
    width: mm('80'),
    depth: mm('85'),
    baseLength: blankEntry('mm'),
    baseWidth: blankEntry('mm'),
    diameter: blankEntry('mm'),
  },
  waterFill: blankEntry('mL'),
  headspace: mm('0'),
  liningKind: 'none',
  liningThickness: blankEntry('mm'),
  count: enteredEntry('2', 'count'),
  actualFills: [],
  ...change,
});
const stage = (slice: Partial<CrustSlice> = {}, item = mould()) =>
  crustStage({ ...newCrustSlice(), ...slice }, { moulds: [item], density: enteredEntry('1.04', 'g/mL') });

describe('the crust of a batch', () => {
  it('leaves 1.62 L inside 300 × 80 × 85 mm at 4 mm (calculated), and twice that in two', () => {
    const { values } = stage();
    expect((values.cavityMl ?? 0) / 1000).toBeCloseTo(1.62, 2);
    expect(values.cavityTotalMl).toBeCloseTo(2 * (values.cavityMl ?? 0), 9);
    expect(values.pastryTotalG).toBeCloseTo(2 * 694.08 * 1.12, 6);
    expect(values.saltG).toBeCloseTo(values.paste?.salt ?? Number.NaN, 12);
  });

  it('serves oval and round moulds, and says when it has no plan', () => {
    const oval = mould({ shape: 'oval' });
    expect(stage({}, oval).values.sheets?.wall).not.toBe(null);
    const round = mould({
      shape: 'cylinder',
      dimensions: {
        ...mould().dimensions,
        length: blankEntry('mm'),
        width: blankEntry('mm'),
        diameter: mm('140'),
      },
    });
    expect(stage({}, round).values.sheets?.lid.lengthMm).toBe(180);
    expect(stage({}, mould({ shape: 'roof' })).findings.map(({ id }) => id)).toContain('crust.shape');
  });

  it('warns of thin, thick and lapless pastry, and of a crust that leaves no room', () => {
    const ids = (slice: Partial<CrustSlice>) => stage(slice).findings.map(({ id }) => id);
    expect(ids({ thickness: mm('2') })).toContain('crust.too-thin');
    expect(ids({ lidThickness: mm('7') })).toContain('crust.too-thick');
    expect(ids({ overlap: mm('5') })).toContain('crust.overlap');
    expect(ids({ thickness: mm('40') })).toContain('crust.no-cavity');
    expect(ids({})).toEqual(['crust.salt-outside']);
    for (const { id, params } of stage({ thickness: mm('40'), overlap: mm('5') }).findings)
      expect(crustWords[id](params).title).not.toMatch(/undefined|NaN/);
  });

  it('counts slices across and the salt they bring, and weighs caul by the mould', () => {
    const piece = { pieceWidth: mm('45'), pieceOverlap: mm('6') };
    const weighed = { pieceMass: enteredEntry('20', 'g'), pieceSalt: enteredEntry('3', '%') };
    const { values, findings } = stage({ ...piece, ...weighed });
    // Derived: (300 − 6) ÷ (45 − 6) is 7.5, so 8 slices of 20 g at 3 %.
    expect(values.lining?.slices).toBe(8);
    expect(values.lining?.sliced?.massG).toBe(160);
    expect(values.lining?.sliced?.saltG).toBeCloseTo(4.8, 9);
    expect(findings.map(({ id }) => id)).toContain('crust.lining-salt');
    // Common practice, no source: 40–60 g for 1.2 L; derived for 2.04 L.
    expect(values.lining?.caul?.minG).toBeCloseTo(68, 6);
    expect(values.lining?.caul?.maxG).toBeCloseTo(102, 6);
    expect(stage(piece).values.lining?.sliced).toBe(null);
    expect(stage({ ...piece, ...weighed, pieceSalt: blankEntry('%') }).values.lining?.sliced?.saltG).toBe(
      null,
    );
    const narrow = stage({ ...piece, pieceOverlap: mm('45') });
    expect(narrow.values.lining?.slices).toBe(null);
    expect(narrow.findings.map(({ id }) => id)).toContain('crust.slices-too-narrow');
  });

  it('warns when the measures are the room inside a crust: a sheet cut by them is too small', () => {
    const [size] = MOULD_SIZES.filter(
      ({ crustMm, shape }) => crustMm !== undefined && shape === 'rectangular',
    );
    if (!size?.crustMm) throw new Error('no usual pie mould');
    const { length = 0, width = 0, depth = 0 } = size.measures;
    const bare = (less: number) => ({
      ...mould().dimensions,
      length: mm(String(length - less)),
      width: mm(String(width - less)),
      depth: mm(String(depth - less)),
    });
    const ids = (less: number) => stage({}, mould({ dimensions: bare(less) })).findings.map(({ id }) => id);
    expect(ids(2 * size.crustMm)).toContain('crust.inside-measures');
    expect(ids(0)).not.toContain('crust.inside-measures');
  });

  it('without a mould, a measure or its own salt is unknown', () => {
    const none = crustStage(newCrustSlice(), { moulds: [], density: enteredEntry('1', 'g/mL') });
    expect(none.values.pastry).toBe(null);
    expect(none.missing.map(({ field }) => field)).toContain('crust.mouldId');
    const blank = mould({ dimensions: { ...mould().dimensions, depth: blankEntry('mm') } });
    expect(stage({}, blank).values.pastry).toBe(null);
    expect(stage({ pasteId: null }).values.saltG).toBe(null);
    expect(stage({ pasteId: null, salt: enteredEntry('1', '%') }).values.saltG).toBeCloseTo(15.55, 2);
  });
});
