import {
  type BinderContext,
  type BinderSlice,
  binderStage,
  type GarnishLine,
  newBinderSlice,
  newExtender,
  newGarnishLine,
  PANADES,
  piecesPerSlice,
  rawPanadeG,
  withPanade,
} from '@larderwright/calc/binder';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { binderWords } from '../../../worksheets/words/binder.ts';

/** An invented terrine: 2,400 g of meat in 4 kg of mix, mould 95 × 65 mm. */
const base: Omit<BinderContext, 'composition'> = {
  meatG: 2400,
  totalG: 4000,
  finishedG: null,
  mixDensityGPerMl: 1.04,
  mouldWidthMm: 95,
  mouldHeightMm: 65,
};
let composition: BinderContext['composition'];
beforeAll(async () => {
  composition = await loadIngredients();
});
const stage = (slice: BinderSlice, change: Partial<BinderContext> = {}) =>
  binderStage(slice, { ...base, composition, ...change });
const ids = (slice: BinderSlice, change: Partial<BinderContext> = {}) =>
  stage(slice, change).findings.map(({ id }) => id);
const g = (text: string) => enteredEntry(text, 'g');

describe('panade', () => {
  it('of 2,400 g of meat is 240 g by default, 10 % of the meat, never of the total (common practice; derived)', () => {
    const { values } = stage(withPanade(newBinderSlice(), 'bread', 250));
    expect(values.panade.wantedCookedG).toBeCloseTo(240, 9);
    // 5 % lost in the pan: 240 ÷ 0.95.
    expect(values.panade.wantedRawG).toBeCloseTo(252.63, 2);
    expect(rawPanadeG(240, 0.1)).toBeCloseTo(266.67, 2);
  });

  it('raw to cooked and back is the same mass, and impossible losses are refused', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (cookedG, loss) => {
          expect((rawPanadeG(cookedG, loss) ?? Number.NaN) * (1 - loss)).toBeCloseTo(cookedG, 6);
        },
      ),
    );
    for (const bad of [1, -0.1, Number.NaN]) expect(rawPanadeG(100, bad)).toBe(null);
    expect(rawPanadeG(Number.POSITIVE_INFINITY, 0.1)).toBe(null);
  });

  it('begun from a kind weighs what is asked, its parts marked as defaults', () => {
    const slice = withPanade(newBinderSlice(), 'flour', 340);
    // Common practice: flour 1, liquid 2, butter 0.4.
    expect(slice.panadeParts.map(({ amount }) => amount.text)).toEqual(['100.0', '200.0', '40.0']);
    expect(slice.panadeParts.every(({ amount }) => amount.origin === 'default')).toBe(true);
    expect(stage(slice).values.panade.rawG).toBeCloseTo(340, 9);
    for (const { kind, parts } of PANADES)
      for (const { ingredientId } of parts) {
        expect(ingredientId === null || composition.get(ingredientId)).toBeTruthy();
        expect(withPanade(newBinderSlice(), kind, null).panadeParts).toHaveLength(parts.length);
      }
  });

  it('weighed outranks reckoned, and the difference is told', () => {
    const slice = { ...withPanade(newBinderSlice(), 'bread', 300), panadeCooked: g('200') };
    expect(stage(slice).values.panade.cookedG).toBe(200);
    expect(ids(slice)).toContain('binder.panade-differs');
    expect(stage({ ...slice, panadeCooked: g('some') }).values.panade.cookedG).toBe(null);
  });

  it('over a fifth of the meat is told, and warm panade (common practice, no source)', () => {
    const slice = withPanade(newBinderSlice(), 'bread', 600);
    expect(ids(slice)).toContain('binder.panade-over');
    const severity = (tempC: string) =>
      stage({ ...slice, panadeTemp: enteredEntry(tempC, 'C') }).findings.find(
        ({ id }) => id === 'binder.panade-warm',
      )?.severity;
    expect([severity('4'), severity('6'), severity('12')]).toEqual([undefined, 'note', 'caution']);
    expect(stage(slice).missing.map(({ field }) => field)).toContain('binder.panadeTemp');
  });
});

describe('what binders bring', () => {
  it('salt stays in the panade, steam takes water (derived)', () => {
    // Kitchen compositions: bread 1.1 % salt, 37 % water; milk 0.1 and 88 %. 100 g and 125 g, 5 % lost.
    const { values } = stage(withPanade(newBinderSlice(), 'bread', 225));
    expect(values.carried.saltG).toBeCloseTo(1.1 + 0.125, 6);
    expect(values.carried.waterG).toBeCloseTo(37 + 110 - 0.05 * 225, 6);
  });

  it('a salt read off the pack outranks the table, and one unknown makes the sum unknown', () => {
    const slice = withPanade(newBinderSlice(), 'bread', 225);
    const [bread, milk] = slice.panadeParts;
    if (!bread || !milk) throw new Error('no parts');
    slice.panadeParts = [{ ...bread, salt: enteredEntry('2', '%') }, milk];
    expect(stage(slice).values.carried.saltG).toBeCloseTo(2.125, 6);
    slice.panadeParts = [{ ...bread, ingredientId: null }, milk];
    expect(stage(slice).values.carried.saltG).toBe(null);
    expect(stage(slice).values.allergensUnknown).toEqual([bread.id]);
    expect(ids(slice)).toContain('binder.allergens-unknown');
  });

  it('wheat, milk and egg are told by both lists', () => {
    const { values, findings } = stage({ ...withPanade(newBinderSlice(), 'choux', 300), cream: g('100') });
    // Regulation (EU) No 1169/2011, Annex II; 21 U.S.C. 321(qq).
    expect(values.euAllergens.map(({ name }) => name)).toEqual(['cereals containing gluten', 'eggs', 'milk']);
    expect(values.usAllergens.map(({ name }) => name)).toEqual(['egg', 'milk', 'wheat']);
    expect(findings.find(({ id }) => id === 'binder.allergens')?.caution).toBe('allergens-listed');
  });

  it('nothing of 0 g is an allergen, and a blank is not 0', () => {
    expect(stage(newBinderSlice()).values.euAllergens).toEqual([]);
    const blank = stage({ ...newBinderSlice(), egg: blankEntry('g') });
    expect(blank.values.euAllergens.map(({ name }) => name)).toEqual(['eggs']);
    expect(blank.values.carried.saltG).toBe(null);
    expect(blank.missing.map(({ field }) => field)).toContain('binder.egg');
  });

  it('more cream than flesh is told', () => {
    expect(ids({ ...newBinderSlice(), cream: g('2500') })).toContain('binder.cream-over');
    expect(ids({ ...newBinderSlice(), cream: g('1920') })).not.toContain('binder.cream-over');
  });
});

describe('binders of a sausage sold by name in the United States', () => {
  // 9 CFR 424.21(c), 2015: 3.5 % alone or together; isolated soy protein and sodium caseinate 2 % each.
  const with$ = (cereal: string, soy = '0', change: Partial<BinderSlice> = {}): BinderSlice => ({
    ...newBinderSlice(),
    usNamedSausage: true,
    extenders: [
      { ...newExtender('c'), ingredientId: 'milk-dry-nonfat', amount: g(cereal) },
      { ...newExtender('s'), ingredientId: 'soy-protein-isolate', kind: 'isolated-soy', amount: g(soy) },
    ],
    ...change,
  });
  const states = (slice: BinderSlice, finishedG: number | null = 4000) =>
    Object.fromEntries(stage(slice, { finishedG }).verdicts.map(({ id, state }) => [id, state]));

  it('pass at 3.5 % and fail above, together', () => {
    expect(states(with$('140'))['binder.us.all']).toBe('pass');
    expect(states(with$('140.1'))['binder.us.all']).toBe('fail');
    expect(states(with$('80', '60.1'))['binder.us.all']).toBe('fail');
  });

  it('isolated soy protein has 2 % of its own', () => {
    expect(states(with$('0', '80'))['binder.us.isolated-soy']).toBe('pass');
    expect(states(with$('0', '80.1'))['binder.us.isolated-soy']).toBe('fail');
  });

  it('are judged on the finished product: without its weight within is not known, over is over', () => {
    expect(states(with$('130'), null)['binder.us.all']).toBe('cannot-tell');
    expect(states(with$('141'), null)['binder.us.all']).toBe('fail');
    // 130 g are 3.25 % of the raw mix and 3.6 % of 3,600 g finished. Derived.
    expect(states(with$('130'), 3600)['binder.us.all']).toBe('fail');
  });

  it('a blank weight is cannot tell, never none; and nobody is judged who does not sell by name', () => {
    expect(states(with$(''))['binder.us.all']).toBe('cannot-tell');
    expect(states(with$('500', '0', { usNamedSausage: false }))).toEqual({});
  });

  it('share of a binder never falls when it is added to', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }), (a, b) => {
        const share = (text: number) =>
          stage(with$(String(text)), { finishedG: 4000 }).values.extenders[0]?.shareFraction ?? Number.NaN;
        expect(share(a + b)).toBeGreaterThanOrEqual(share(a));
      }),
      { numRuns: 30 },
    );
  });
});

describe('garnish', () => {
  const cubes = {
    ...newGarnishLine('h'),
    name: 'Ham',
    ingredientId: 'kitchen-ham-cooked',
    prepared: g('600'),
  };
  const garnished = (change: Partial<GarnishLine> = {}): BinderSlice => ({
    ...newBinderSlice(),
    garnish: [{ ...cubes, ...change }],
  });

  it('of 15 % by volume in cubes of 10 mm gives 11.1 pieces to a slice of 95 × 65 × 12 mm, 13.9 on its face (derived)', () => {
    const pieces = piecesPerSlice({
      volumeFraction: 0.15,
      shape: 'cube',
      sizeMm: 10,
      faceMm2: 95 * 65,
      sliceMm: 12,
    });
    expect(pieces?.within).toBeCloseTo(11.1, 1);
    expect(pieces?.onFace).toBeCloseTo(13.9, 1);
  });

  it('in thin slices of balls is seen as often as chance places them (counted in a random packing)', () => {
    // derived: 200,000 ball centres dropped by a fixed sequence; a plane meets those nearer than half a diameter.
    let seed = 12345;
    const next = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed / 2147483648;
    };
    const [count, boxMm, faceMm2, sizeMm] = [200_000, 100, 1e6, 8];
    let met = 0;
    for (let i = 0; i < count; i++) if (Math.abs(next() * boxMm - boxMm / 2) < sizeMm / 2) met++;
    const volumeFraction = (count * (Math.PI / 6) * sizeMm ** 3) / (boxMm * faceMm2);
    const pieces = piecesPerSlice({ volumeFraction, shape: 'ball', sizeMm, faceMm2, sliceMm: 5 });
    expect(Math.abs((pieces?.onFace ?? 0) / met - 1)).toBeLessThan(0.03);
  });

  it('prepared by its yield or as weighed, and tells what to buy', () => {
    const reckoned = garnished({
      prepared: blankEntry('g'),
      asBought: g('800'),
      prepYield: enteredEntry('75', '%'),
    });
    expect(stage(reckoned).values.garnish[0]?.preparedG).toBeCloseTo(600, 9);
    const weighed = stage(garnished({ prepYield: enteredEntry('75', '%') })).values.garnish[0];
    expect(weighed?.preparedG).toBe(600);
    expect(weighed?.toBuyG).toBeCloseTo(800, 9);
    expect(stage(garnished()).values.garnishFraction).toBeCloseTo(0.15, 12);
  });

  it('no larger than a third of the smaller side of the mould, nor than 12 mm (common practice, no source)', () => {
    expect(ids(garnished({ pieceSize: enteredEntry('12', 'mm') }))).not.toContain('binder.piece-over-usual');
    expect(ids(garnished({ pieceSize: enteredEntry('15', 'mm') }))).toContain('binder.piece-over-usual');
    expect(ids(garnished({ pieceSize: enteredEntry('22', 'mm') }))).toContain('binder.piece-too-large');
    const narrow = stage(garnished({ pieceSize: enteredEntry('11', 'mm') }), { mouldWidthMm: 30 });
    expect(narrow.findings.map(({ id }) => id)).toContain('binder.piece-too-large');
  });

  it('laid along is counted, not chanced', () => {
    expect(stage(garnished({ laidCount: enteredEntry('3', 'count') })).values.garnish[0]?.pieces).toEqual({
      within: 3,
      onFace: 3,
    });
  });

  it('counts in the salt it brings: cured garnish in the salt, and not in the meat of this worksheet', () => {
    // Kitchen composition: cooked ham 2.1 % salt.
    expect(stage(garnished()).values.carried.saltG).toBeCloseTo(12.6, 6);
    expect(stage(garnished()).values.meatG).toBe(2400);
  });

  it('raw onion, wet and too much are told', () => {
    const wet = garnished({
      name: 'Onion',
      ingredientId: null,
      prepared: g('1400'),
      water: enteredEntry('89', '%'),
      rawAllium: true,
    });
    expect(ids(wet)).toEqual(
      expect.arrayContaining(['binder.garnish-over', 'binder.raw-allium', 'binder.wet-garnish']),
    );
    expect(ids(garnished({ water: enteredEntry('89', '%'), dried: true }))).not.toContain(
      'binder.wet-garnish',
    );
  });

  it('pieces are unknown while something they hang on is, and none for no garnish', () => {
    expect(stage(garnished(), { mouldWidthMm: null }).values.garnish[0]?.pieces).toBe(null);
    expect(stage(garnished({ prepared: g('a lot') })).values.garnish[0]?.pieces).toBe(null);
    expect(stage(garnished({ prepared: g('0') })).values.garnish[0]?.pieces).toEqual({
      within: 0,
      onFace: 0,
    });
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(
        piecesPerSlice({ volumeFraction: 0.1, shape: 'cube', sizeMm: bad, faceMm2: 100, sliceMm: 12 }),
      ).toBe(null);
    expect(piecesPerSlice({ volumeFraction: 1.1, shape: 'cube', sizeMm: 5, faceMm2: 100, sliceMm: 12 })).toBe(
      null,
    );
  });

  it('has words for every finding and verdict raised', () => {
    const all: BinderSlice = {
      ...withPanade(newBinderSlice(), 'bread', 900),
      panadeTemp: enteredEntry('15', 'C'),
      panadeCooked: g('600'),
      cream: g('3000'),
      usNamedSausage: true,
      extenders: [{ ...newExtender('x'), amount: g('') }],
      garnish: [
        { ...newGarnishLine('a'), prepared: g('2000'), pieceSize: enteredEntry('40', 'mm'), rawAllium: true },
        {
          ...newGarnishLine('b'),
          prepared: g('10'),
          pieceSize: enteredEntry('15', 'mm'),
          water: enteredEntry('90', '%'),
        },
      ],
    };
    const { findings, verdicts } = stage(all);
    expect(findings.length).toBeGreaterThan(7);
    for (const { id, params } of findings) expect(binderWords[id](params).title).not.toMatch(/undefined|NaN/);
    for (const finishedG of [null, 4000])
      for (const { reason, params } of [...verdicts, ...stage(all, { finishedG }).verdicts])
        expect(binderWords[reason](params).title).not.toMatch(/undefined|NaN/);
  });
});
