import { loadIngredients } from '@larderwright/calc/ingredients';
import {
  BLEND_STYLES,
  type BlendPart,
  blendParts,
  blendStyleOf,
  diluteInSalt,
  doseOf,
  inForm,
  SPICES,
  spiceOf,
  spiceTotals,
  spiceWeighable,
  strongAromaticG,
  wholeToGrindG,
} from '@larderwright/calc/seasoning';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spiceNotes } from '../../../worksheets/words/seasoning.ts';

describe('a blend by parts', () => {
  it('14 : 3 : 2 : 1 at 3 g/kg in 4 kg is 8.4, 1.8, 1.2 and 0.6 g (calculated)', () => {
    const grams = blendParts([14, 3, 2, 1], 3, 4000)?.map(({ massG }) => massG) ?? [];
    for (const [index, wanted] of [8.4, 1.8, 1.2, 0.6].entries()) expect(grams[index]).toBeCloseTo(wanted, 9);
  });

  it('weighs dose × batch in all, to 1 mg, and its shares are one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 14 }),
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: 1, max: 200_000 }),
        (parts, dose, batchG) => {
          const split = blendParts(parts, dose / 10, batchG);
          if (!split) {
            expect(parts.every((part) => part === 0)).toBe(true);
            return;
          }
          const sum = (pick: (part: BlendPart) => number) =>
            split.reduce((total, part) => total + pick(part), 0);
          expect(Math.abs(sum(({ massG }) => massG) - (dose / 10) * (batchG / 1000))).toBeLessThan(1e-3);
          expect(sum(({ shareFraction }) => shareFraction)).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it('keeps its g/kg when the batch grows, and its masses grow with it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100 }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (part, times) => {
          const one = blendParts([part, 7], 3, 1000)?.[0];
          const more = blendParts([part, 7], 3, 1000 * times)?.[0];
          expect(more?.gPerKg).toBe(one?.gPerKg);
          expect((more?.massG ?? 0) / (one?.massG ?? 1)).toBeCloseTo(times, 9);
        },
      ),
    );
  });

  it('is unknown for what is no part, dose or batch', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(blendParts([bad, 1], 3, 1000)).toBe(null);
      expect(blendParts([1], bad, 1000)).toBe(null);
      expect(blendParts([1], 3, bad)).toBe(null);
    }
    expect(blendParts([], 3, 1000)).toBe(null);
    expect(blendParts([0, 0], 3, 1000)).toBe(null);
  });
});

describe('the dose table', () => {
  // Common practice, no source: figures as the trade gives them.
  it.each([
    ['clove', 'ground', 0.05, 0.15, 0.35],
    ['nutmeg', 'ground', 0.3, 0.6, 1.2],
    ['thyme', 'dried', 0.3, 0.7, 1.5],
    ['thyme', 'fresh', 1, 2.5, 5],
    ['garlic', 'fresh', 1, 3, 8],
    ['onion', 'cooked', 15, 30, 60],
    ['mustard', 'whole', 1, 4, 10],
    ['star-anise', 'ground', 0.05, 0.15, 0.4],
  ] as const)('%s, %s: %d, %d and %d g/kg', (id, form, low, typical, ceiling) => {
    expect(doseOf(id, form)).toEqual({
      lowGPerKg: low,
      typicalGPerKg: typical,
      ceilingGPerKg: ceiling,
      mark: 'common-practice',
    });
  });

  it('has 47 seasonings, each once, with rising doses and a note or plain use', () => {
    expect(SPICES).toHaveLength(47);
    expect(new Set(SPICES.map(({ id }) => id)).size).toBe(47);
    for (const { doses } of SPICES)
      for (const { lowGPerKg, typicalGPerKg, ceilingGPerKg } of Object.values(doses)) {
        expect(lowGPerKg).toBeLessThan(typicalGPerKg);
        expect(typicalGPerKg).toBeLessThan(ceilingGPerKg);
      }
    for (const id of Object.keys(spiceNotes)) expect(spiceOf(id)?.id).toBe(id);
  });

  it('agrees on allergens with the composition rows it names', async () => {
    const ids = SPICES.flatMap(({ ingredientId }) => ingredientId ?? []);
    const table = await loadIngredients(ids);
    for (const { ingredientId, euAllergens, usAllergens } of SPICES) {
      if (ingredientId === null) continue;
      const row = table.get(ingredientId);
      expect(row?.id).toBe(ingredientId);
      const names = (list: typeof euAllergens = []) => list.map(({ name }) => name).sort();
      expect(names(euAllergens)).toEqual(names(row?.euAllergens));
      expect(names(usAllergens)).toEqual(names(row?.usAllergens));
    }
  });
});

describe('forms of a spice', () => {
  // Common practice, no source: dried herb a third of fresh, garlic powder a quarter.
  it('convert where the trade has a figure, and stay unknown where it has none', () => {
    expect(inForm('thyme', 6, 'fresh', 'dried')).toBeCloseTo(2, 12);
    expect(inForm('garlic', 8, 'fresh', 'ground')).toBe(2);
    expect(inForm('onion', 30, 'cooked', 'ground')).toBe(null);
    expect(inForm('ginger', 5, 'fresh', 'ground')).toBe(null);
    expect(inForm('clove', 5, 'ground', 'ground')).toBe(5);
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1])
      expect(inForm('thyme', bad, 'fresh', 'dried')).toBe(null);
  });

  it('there and back is the same mass', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), (massG) => {
        const dried = inForm('sage', massG, 'fresh', 'dried') ?? Number.NaN;
        expect(inForm('sage', dried, 'dried', 'fresh')).toBeCloseTo(massG, 8);
      }),
    );
  });

  it('a form without a dose of its own is judged by a converted one, marked derived', () => {
    expect(doseOf('tarragon', 'dried')).toMatchObject({ mark: 'derived' });
    expect(doseOf('tarragon', 'dried')?.ceilingGPerKg).toBeCloseTo(10 / 3, 9);
    expect(doseOf('onion', 'fresh')).toBe(null);
    expect(doseOf('no-such-spice', 'ground')).toBe(null);
    expect(doseOf(null, 'ground')).toBe(null);
  });

  it('whole spice to grind covers the loss of the mill', () => {
    // Derived: 9.7 ÷ 0.97.
    expect(wholeToGrindG(9.7, 0.03)).toBeCloseTo(10, 12);
    for (const loss of [1, -0.1, Number.NaN]) expect(wholeToGrindG(10, loss)).toBe(null);
  });
});

describe('blend styles at their strongest', () => {
  // Common practice with invented proportions; the shares are calculated.
  it.each([
    ['four-spice-pepper', 'clove', 0.2],
    ['four-spice-sweet', 'cinnamon', 0.55],
    ['four-spice-sweet', 'clove', 0.14],
    ['pale', 'mace', 0.4],
    ['game', 'juniper', 1.8],
    ['game', 'bay', 0.3],
    ['liver', 'mace', 0.6],
    ['country-herb', 'bay', 0.25],
  ])('%s: %s at %d g/kg', (styleId, spiceId, gPerKg) => {
    const style = blendStyleOf(styleId);
    const parts = style?.parts.map((part) => part.parts) ?? [];
    const index = style?.parts.findIndex((part) => part.spiceId === spiceId) ?? -1;
    expect(blendParts(parts, style?.doseGPerUnit.max ?? 0, 1000)?.[index]?.gPerKg).toBeCloseTo(gPerKg, 2);
  });

  it('stay under every ceiling on the mix', () => {
    for (const { parts, doseGPerUnit, unit, id } of BLEND_STYLES) {
      if (unit !== 'g/kg' || id === 'mutton-ham') continue;
      const split = blendParts(
        parts.map((part) => part.parts),
        doseGPerUnit.max,
        1000,
      );
      const totals = spiceTotals(
        parts.map((part, index) => ({ ...part, gPerKg: split?.[index]?.gPerKg ?? null })),
      );
      for (const { ceilingShare } of totals) expect(ceilingShare).toBeLessThanOrEqual(1);
    }
    expect(BLEND_STYLES).toHaveLength(10);
    expect(BLEND_STYLES.flatMap(({ parts }) => parts).every(({ spiceId }) => spiceOf(spiceId))).toBe(true);
  });
});

describe('ceilings, loose and blended together', () => {
  it('two doses that pass alone fail together', () => {
    // Ceiling of clove 0.35 g/kg, common practice: 0.2 and 0.2 are 0.4, that is 114 % of it. Derived.
    const [total] = spiceTotals([
      { spiceId: 'clove', form: 'ground', gPerKg: 0.2 },
      { spiceId: 'clove', form: 'ground', gPerKg: 0.2 },
    ]);
    expect(total?.ceilingShare).toBeCloseTo(0.4 / 0.35, 12);
  });

  it('dried and fresh of one herb count together, each by its own ceiling', () => {
    // Derived: 1 ÷ 1.5 + 2.5 ÷ 5.
    const [total] = spiceTotals([
      { spiceId: 'thyme', form: 'dried', gPerKg: 1 },
      { spiceId: 'thyme', form: 'fresh', gPerKg: 2.5 },
    ]);
    expect(total?.ceilingShare).toBeCloseTo(1 / 1.5 + 0.5, 12);
  });

  it('an unknown dose leaves a floor and says so; a form without a ceiling leaves nothing', () => {
    expect(
      spiceTotals([
        { spiceId: 'clove', form: 'ground', gPerKg: 0.1 },
        { spiceId: 'clove', form: 'ground', gPerKg: null },
      ])[0],
    ).toMatchObject({ open: true, gPerKgByForm: { ground: null } });
    expect(spiceTotals([{ spiceId: 'onion', form: 'fresh', gPerKg: 1 }])[0]?.ceilingShare).toBe(null);
    expect(spiceTotals([{ spiceId: null, form: 'ground', gPerKg: 1 }])).toEqual([]);
  });

  it('more of a spice never uses less of its ceiling', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (a, b) => {
          const one =
            spiceTotals([{ spiceId: 'bay', form: 'ground', gPerKg: a }])[0]?.ceilingShare ?? Number.NaN;
          const two =
            spiceTotals([
              { spiceId: 'bay', form: 'ground', gPerKg: a },
              { spiceId: 'bay', form: 'ground', gPerKg: b },
            ])[0]?.ceilingShare ?? Number.NaN;
          expect(two).toBeGreaterThanOrEqual(one);
        },
      ),
    );
  });
});

describe('a spice too light for the scale', () => {
  // Common practice, no source: under 0.5 g on a scale of 0.1 g, one part in ten of salt.
  it('0.2 g is 2 g of the mixture, with 1.8 g of salt in it', () => {
    expect(spiceWeighable(0.5, 0.1)).toBe(true);
    expect(spiceWeighable(0.49, 0.1)).toBe(false);
    expect(diluteInSalt(0.2, 0.1)).toEqual({
      spiceG: 0.5,
      saltG: 4.5,
      useG: 2,
      saltInBatchG: 1.8,
      stillTooSmall: false,
    });
    expect(diluteInSalt(0.01, 0.1)?.stillTooSmall).toBe(true);
  });

  it('the mixture brings exactly the spice wanted, and salt for the rest', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 10, noNaN: true }), (massG) => {
        const made = diluteInSalt(massG, 0.1);
        if (!made) throw new Error('refused a mass');
        const { spiceG, saltG, useG, saltInBatchG } = made;
        expect((useG * spiceG) / (spiceG + saltG)).toBeCloseTo(massG, 9);
        expect(saltInBatchG + massG).toBeCloseTo(useG, 9);
      }),
    );
  });

  it('is refused for what is no mass and no scale', () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(diluteInSalt(bad, 0.1)).toBe(null);
      expect(diluteInSalt(1, bad)).toBe(null);
      expect(spiceWeighable(bad, 0.1)).toBe(false);
    }
  });
});

describe('spice is not linear', () => {
  // Common practice, no source: 85–95 % at five to ten times.
  it('a strong aromatic of an eightfold batch starts at 85 to 95 %', () => {
    const start = strongAromaticG('clove', 10, 8);
    expect(start?.leastG).toBeCloseTo(8.5, 12);
    expect(start?.mostG).toBeCloseTo(9.5, 12);
  });

  it('up to fivefold, and for every spice that is not strong, the multiplied weight stands', () => {
    expect(strongAromaticG('clove', 10, 5)).toBe(null);
    expect(strongAromaticG('white-pepper', 10, 8)).toBe(null);
  });

  it('salt, cure and sugar are never cut', () => {
    for (const id of ['sugar', 'dextrose', 'soy-sauce', 'salt', 'curing-salt', null])
      expect(strongAromaticG(id, 10, 100)).toBe(null);
    expect(SPICES.filter(({ strong }) => strong).map(({ id }) => id)).toEqual([
      'clove',
      'cinnamon',
      'juniper',
      'bay',
      'garlic',
      'chilli',
    ]);
  });
});
