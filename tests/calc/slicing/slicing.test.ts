import type { PlanCosts, Pricing } from '@larderwright/calc/plan';
import { enteredEntry } from '@larderwright/calc/quantities';
import {
  cutByMass,
  cutSlices,
  newSlicingSlice,
  type SlicingContext,
  type SlicingSlice,
  sliceHabitOf,
  slicingStage,
} from '@larderwright/calc/slicing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slicingWords } from '../../../worksheets/words/slicing.ts';

const mm = (text: string) => enteredEntry(text, 'mm');

describe('slices of a mould', () => {
  it.each([
    // Invented batches; whole slices derived: (290 − 20) ÷ 12 = 22.5, (300 − 20) ÷ 10 = 28.
    [290, 12, 10, 0, 22],
    [300, 10, 10, 0, 28],
    // A knife takes half a millimetre each time: 270 ÷ 12.5 = 21.6. Derived.
    [290, 12, 10, 0.5, 21],
    // 0.3 ÷ 0.1 is a hair under 3 in binary; no slice may be lost to that.
    [0.3, 0.1, 0, 0, 3],
    [50, 60, 0, 0, 0],
    [20, 5, 10, 0, 0],
  ])(
    '%d mm at %d mm with %d mm ends and %d mm kerf: %d',
    (lengthMm, thicknessMm, endTrimMm, kerfMm, slices) => {
      expect(cutSlices({ lengthMm, massG: 1000, thicknessMm, endTrimMm, kerfMm })?.slices).toBe(slices);
    },
  );

  it('weigh by their share of the length: 72 g of an invented terrine of 1,748 g', () => {
    // 3,497 g in two; 12 ÷ 290 of 1,748.5 = 72.4 g. Derived.
    const cut = cutSlices({ lengthMm: 290, massG: 1748.5, thicknessMm: 12, endTrimMm: 10, kerfMm: 0 });
    expect(cut?.sliceG).toBeCloseTo(72.35, 2);
    // 970 g less 2 % at 10 of 300 mm: 31.7 g. Derived.
    expect(
      cutSlices({ lengthMm: 300, massG: 950.6, thicknessMm: 10, endTrimMm: 10, kerfMm: 0 })?.sliceG,
    ).toBeCloseTo(31.69, 2);
  });

  it('with ends, blade and rest are the whole piece, to 1 mg', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4000 }),
        fc.integer({ min: 1, max: 50_000 }),
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 0, max: 30 }),
        (length, massG, thickness, end, kerf) => {
          const cut = cutSlices({
            lengthMm: length / 10,
            massG,
            thicknessMm: thickness / 10,
            endTrimMm: end / 10,
            kerfMm: kerf / 10,
          });
          if (!cut) return;
          const { slicesG, endsG, kerfG, restG } = cut;
          expect(Math.abs(slicesG + endsG + kerfG + restG - massG)).toBeLessThan(1e-3);
        },
      ),
    );
  });

  it('are unknown for what is no length or mass', () => {
    const whole = { lengthMm: 290, massG: 1000, thicknessMm: 12, endTrimMm: 10, kerfMm: 0 };
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      for (const key of Object.keys(whole)) expect(cutSlices({ ...whole, [key]: bad })).toBe(null);
    }
    expect(cutSlices({ ...whole, lengthMm: 0 })).toBe(null);
    expect(cutSlices({ ...whole, thicknessMm: 0 })).toBe(null);
    expect(cutSlices({ ...whole, endTrimMm: 146 })).toBe(null);
  });
});

describe('portions by the scale', () => {
  it.each([
    // Invented batches; derived: 2,112 × 0.97 ÷ 50 = 40.97 and 1,645 × 0.97 ÷ 50 = 31.9.
    [2112, 50, 0.03, 40],
    [1645, 50, 0.03, 31],
    [100, 200, 0, 0],
  ])('%d g by %d g after %d ends: %d', (massG, packG, ends, packs) => {
    const packed = cutByMass(massG, packG, ends);
    expect(packed?.packs).toBe(packs);
    expect((packed?.packsG ?? 0) + (packed?.endsG ?? 0) + (packed?.restG ?? 0)).toBeCloseTo(massG, 9);
  });

  it('are unknown for nonsense', () => {
    expect(cutByMass(100, 0, 0)).toBe(null);
    expect(cutByMass(Number.NaN, 50, 0)).toBe(null);
    expect(cutByMass(100, 50, 1)).toBe(null);
    expect(cutByMass(100, Number.POSITIVE_INFINITY, 0)).toBe(null);
  });
});

const COSTS: PlanCosts = {
  food: 34.38,
  foodKnown: 34.38,
  labour: null,
  overhead: null,
  full: null,
  foodPerKgFinished: null,
  foodPerPortion: null,
  fullPerPortion: null,
};
const PRICING: Pricing = { method: 'gross-profit', shareFraction: 0.7, taxFraction: 0.2, currency: 'cu' };

function slicing(change: Partial<SlicingSlice> = {}): SlicingSlice {
  return { ...newSlicingSlice(), kerf: mm('0'), ...change };
}
function context(change: Partial<SlicingContext> = {}): SlicingContext {
  return {
    familyId: 'country-terrine',
    finishedG: 3497,
    mouldCount: 2,
    mouldLengthMm: 290,
    plannedPortions: null,
    plan: { costs: COSTS, pricing: PRICING },
    ...change,
  };
}
const ids = (slice: SlicingSlice, of = context()) => slicingStage(slice, of).findings.map(({ id }) => id);

describe('the stage of slicing', () => {
  it('prices an invented terrine by slice, portion, kilogram and pound', () => {
    const { values, findings, missing } = slicingStage(slicing(), context());
    expect([values.slices, values.portions]).toEqual([44, 44]);
    // 34.38 ÷ 44 = 0.7814; ÷ 0.3 = 2.6045; × 1.2 = 3.1255. 44 × 72.35 g = 3.1835 kg; 34.38 ÷ 3.1835 ÷ 0.3 = 36.00. Derived.
    expect(values.foodPerPortion).toBeCloseTo(0.7814, 4);
    expect(values.pricePerPortion.exTax).toBeCloseTo(2.6045, 4);
    expect(values.pricePerPortion.incTax).toBeCloseTo(3.1255, 4);
    expect(values.pricePerSlice).toEqual(values.pricePerPortion);
    expect(values.pricePerKg.exTax).toBeCloseTo(35.998, 2);
    expect(values.pricePerLb.exTax).toBeCloseTo(35.998 * 0.45359237, 2);
    expect([findings, missing]).toEqual([[], []]);
  });

  it('counts several slices to a portion, and lets none be half', () => {
    // 28 slices by two: 14 portions. An invented mousseline; derived.
    const two = slicing({ thickness: mm('10'), slicesPerPortion: enteredEntry('2', 'count') });
    const { values } = slicingStage(
      two,
      context({ finishedG: 950.6, mouldCount: 1, mouldLengthMm: 300, familyId: null }),
    );
    expect([values.slices, values.portions]).toEqual([28, 14]);
    expect(values.portionG).toBeCloseTo(63.4, 1);
    const three = slicing({ thickness: mm('10'), slicesPerPortion: enteredEntry('3', 'count') });
    expect(slicingStage(three, context({ mouldCount: 1, mouldLengthMm: 300 })).values.portions).toBe(9);
  });

  it('shares the whole cost among what is sold: ends and blade were paid for', () => {
    const { values } = slicingStage(slicing(), context());
    expect((values.foodPerPortion ?? 0) * (values.portions ?? 0)).toBeCloseTo(34.38, 9);
    expect(((values.pricePerKg.exTax ?? 0) * (values.soldG ?? 0)) / 1000).toBeCloseTo(34.38 / 0.3, 9);
  });

  it('takes the length typed before that of the mould', () => {
    expect(slicingStage(slicing({ length: mm('280') }), context()).values.cut?.slices).toBe(21);
    const bad = slicingStage(slicing({ length: mm('1,234') }), context());
    expect(bad.values.cut).toBe(null);
    expect(bad.missing).toEqual([{ field: 'slicing.length', neededFor: 'slicing.portions' }]);
  });

  it('parts by mass where that is how it is sold', () => {
    const packs = slicing({ cutBy: 'mass', packMass: enteredEntry('50', 'g') });
    const { values, findings } = slicingStage(
      packs,
      context({ finishedG: 2112, familyId: 'cooked-ham', mouldCount: null }),
    );
    expect(values.portions).toBe(40);
    expect(values.pricePerSlice.exTax).toBe(null);
    expect(findings).toEqual([]);
  });

  it('notes what is unusual and what cannot be', () => {
    expect(ids(slicing({ thickness: mm('18') }))).toEqual(['slicing.outside-habit']);
    expect(ids(slicing({ slicesPerPortion: enteredEntry('2', 'count') }))).toEqual([
      'slicing.portion-outside-habit',
    ]);
    expect(ids(slicing({ endTrim: mm('145') }), context({ familyId: null }))).toEqual([
      'slicing.ends-are-all',
    ]);
    expect(ids(slicing({ thickness: mm('280') }), context({ familyId: null }))).toEqual(['slicing.no-slice']);
    expect(ids(slicing(), context({ plannedPortions: 50 }))).toEqual(['slicing.fewer-than-planned']);
    expect(ids(slicing(), context({ plannedPortions: 44 }))).toEqual([]);
  });

  it('asks for what is blank and prices nothing without a plan', () => {
    const { missing, values } = slicingStage(
      slicing({ thickness: mm(''), kerf: mm('') }),
      context({ finishedG: null, mouldCount: 0, mouldLengthMm: null }),
    );
    expect(missing.map(({ field }) => field)).toEqual([
      'product.finished',
      'mould.moulds',
      'slicing.length',
      'slicing.thickness',
      'slicing.kerf',
    ]);
    expect(values.portions).toBe(null);
    expect(slicingStage(slicing(), context({ plan: null })).values.pricePerPortion).toEqual({
      exTax: null,
      incTax: null,
    });
    const noPack = slicingStage(slicing({ cutBy: 'mass', packMass: enteredEntry('0', 'g') }), context());
    expect(noPack.missing).toEqual([{ field: 'slicing.packMass', neededFor: 'slicing.portions' }]);
    const none = slicingStage(slicing({ thickness: mm('280') }), context());
    expect(none.values.pricePerPortion.exTax).toBe(null);
    expect(none.values.foodPerPortion).toBe(null);
  });

  it('knows how families are cut, and no more than that', () => {
    // Common practice, no source.
    expect(sliceHabitOf('country-terrine')?.thicknessMm).toEqual([10, 14]);
    expect(sliceHabitOf('rillettes')?.thicknessMm).toBe(null);
    expect(sliceHabitOf('toString')).toBe(null);
    expect(sliceHabitOf(null)).toBe(null);
  });

  it('says every finding in a whole sentence', () => {
    const params = {
      thicknessMm: 18,
      minMm: 10,
      maxMm: 14,
      portionG: 144,
      minG: 60,
      maxG: 120,
      endTrimMm: 145,
      lengthMm: 290,
      portions: 44,
      planned: 50,
      short: 6,
    };
    for (const [id, say] of Object.entries(slicingWords)) {
      const { title, body } = say(params);
      expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\s{2,}/);
      expect(title.endsWith('.'), id).toBe(true);
    }
  });
});
