import { type Batch, newBatch, newLine } from '@larderwright/calc/batch';
import { formulaStage, type LinePart } from '@larderwright/calc/formula';
import { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import {
  type LabelContext,
  type LabelSlice,
  labelStage,
  newLabelExtra,
  newLabelLine,
  newLabelSlice,
} from '@larderwright/calc/label';
import { defaultEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import checks from '../../fixtures/label-checks.json' with { type: 'json' };

const table = await loadIngredients();
const details = await loadIngredientDetails();

type Row = readonly [id: string, part: LinePart, ingredientId: string | null, grams: string, name?: string];

function batchOf(rows: readonly Row[], familyId: string | null = 'country-terrine'): Batch {
  const batch = newBatch({ id: 'b', at: '2026-03-10T08:00:00+00:00', zone: 'UTC' });
  batch.formula.familyId = familyId;
  batch.formula.lines = rows.map(([id, part, ingredientId, grams, name = '']) => ({
    ...newLine(id, part),
    name,
    ingredientId,
    amount: enteredEntry(grams, 'g'),
    ...(part === 'curing-salt'
      ? { cure: { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('0', '%') } }
      : {}),
  }));
  return batch;
}

function label(batch: Batch, change: Partial<LabelSlice> = {}, context: Partial<LabelContext> = {}) {
  const slice: LabelSlice = { ...newLabelSlice(), loss: 'water', ...change };
  return labelStage(slice, {
    formula: batch.formula,
    formulaValues: formulaStage(batch.formula, { composition: table }).values,
    table,
    details,
    finishedG: 900,
    filledByMouldsG: null,
    foodLining: false,
    carried: [],
    firstCookAt: '2026-03-10T08:40:00+00:00',
    writtenUseBy: '',
    ...context,
  });
}

const said = (id: string, change: Partial<ReturnType<typeof newLabelLine>>) => ({
  ...newLabelLine(id),
  ...change,
});
const ids = (findings: readonly { id: string }[]) => findings.map(({ id }) => id);
const read = (parts: readonly { text: string }[] | undefined) =>
  (parts ?? []).map(({ text }) => text).join('');
const standingOut = (parts: readonly { text: string; allergen: boolean }[] | undefined) =>
  (parts ?? []).filter(({ allergen }) => allergen).map(({ text }) => text);

const PORK: readonly Row[] = [
  ['a', 'lean', 'pork-butt-lf', '700'],
  ['b', 'fat', 'pork-backfat', '200'],
  ['c', 'liver', 'pork-liver', '50'],
  ['d', 'liquid', 'cream-heavy', '34'],
  ['e', 'salt', 'salt', '14'],
  ['f', 'curing-salt', null, '2', 'Curing salt'],
];

describe('The ingredient list', () => {
  it('falls by what went in, names meat by its animal, and parts a curing salt into salt and preservative', () => {
    const { values } = label(batchOf(PORK));
    // Derived: salt 14 + 2 × 0.9375 = 15.875 g; nitrite 2 × 0.0625 = 0.125 g.
    expect(values.eu.map(({ name }) => name)).toEqual([
      'pork',
      'pork fat',
      'pork liver',
      'cream',
      'salt',
      'preservative: sodium nitrite (E 250)',
    ]);
    expect(values.eu[4]?.massG).toBeCloseTo(15.875, 9);
    expect(values.eu[5]?.massG).toBeCloseTo(0.125, 9);
    expect(values.us.at(-1)?.name).toBe('sodium nitrite (preservative)');
  });

  // 21 CFR 101.4(a); Regulation (EU) No 1169/2011, Annex VII part A. Order of each recipe: derived.
  it.each(checks.cases.filter(({ kind }) => kind === 'recipe'))(
    'stands in the derived order of $id',
    (check) => {
      const inputs = check.inputs as { ingredients: { id: string; grams: number }[] };
      const batch = batchOf(inputs.ingredients.map(({ id, grams }) => [id, 'garnish', id, String(grams)]));
      const result = label(batch, {
        lines: inputs.ingredients.map(({ id }) => said(id, { name: id })),
      });
      const {
        ingredient_order_by_weight: order,
        us_major_allergens: us,
        eu_annex_ii: eu,
      } = check.expected as unknown as {
        ingredient_order_by_weight: string[];
        us_major_allergens: string[];
        eu_annex_ii: string[];
      };
      expect(result.values.eu.map(({ name }) => name)).toEqual(order);
      const sure = (list: typeof result.values.euAllergens) =>
        list
          .filter(({ toCheck }) => !toCheck)
          .map(({ name, kinds }) => (kinds.length > 0 ? `${name} (${kinds.join(', ')})` : name));
      expect(sure(result.values.usAllergens)).toEqual(us);
      expect(sure(result.values.euAllergens)).toEqual(eu);
    },
  );

  it('makes an allergen stand out, and adds its name where the ingredient does not say it', () => {
    const batch = batchOf([
      ...PORK,
      ['g', 'panade', 'flour-wheat-white', '20'],
      ['h', 'egg', 'egg-white', '30'],
    ]);
    const { values } = label(batch);
    const of = (name: string) => values.eu.find((item) => item.name.includes(name))?.text;
    expect(standingOut(of('cream'))).toEqual(['cream', 'milk']);
    expect(read(of('cream'))).toBe('cream (milk)');
    expect(standingOut(of('flour'))).toEqual(['wheat']);
    expect(standingOut(of('egg'))).toEqual(['egg']);
  });

  it('shows what a compound ingredient is made of, and asks while nobody has said', () => {
    const batch = batchOf([...PORK, ['g', 'garnish', 'bacon-raw', '100', 'Bacon']]);
    expect(ids(label(batch).findings)).toContain('label.made-of-unknown');
    expect(label(batch).verdicts[0]).toMatchObject({ id: 'label.allergens', state: 'cannot-tell' });
    const told = label(batch, {
      lines: [said('g', { madeOf: 'pork belly, salt, preservative: sodium nitrite', allergens: [] })],
    });
    expect(ids(told.findings)).not.toContain('label.made-of-unknown');
    expect(read(told.values.eu.find(({ name }) => name === 'bacon')?.text)).toBe(
      'bacon (pork belly, salt, preservative: sodium nitrite)',
    );
    expect(told.verdicts[0]?.state).toBe('pass');
  });

  it('lists crust and jelly from outside the bowl, and cannot tell allergens of a pie without them', () => {
    const batch = batchOf(PORK, 'en-croute');
    const bare = label(batch);
    expect(ids(bare.findings)).toContain('label.crust-not-counted');
    expect(bare.verdicts[0]?.state).toBe('cannot-tell');
    const crust = {
      ...newLabelExtra('x'),
      name: 'crust',
      mass: enteredEntry('400', 'g'),
      madeOf: 'wheat flour, butter, egg, water, salt',
      allergens: ['gluten', 'milk', 'eggs'],
    };
    const full = label(batch, { extras: [crust] });
    expect(full.values.eu[1]?.name).toBe('crust');
    expect(standingOut(full.values.eu[1]?.text)).toEqual(['wheat', 'butter', 'egg', 'milk']);
    expect(full.values.euAllergens.map(({ name }) => name)).toContain('cereals containing gluten');
    expect(full.verdicts[0]?.state).toBe('pass');
  });

  it('loses no gram: listed weights add up to what went in', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 6, maxLength: 6 }), (grams) => {
        const batch = batchOf(
          PORK.map((row, index) => [row[0], row[1], row[2], String(grams[index]), row[4] ?? '']),
        );
        const { values } = label(batch, {
          lines: [said('a', { collagen: enteredEntry('5', '%') })],
        });
        const listed = values.eu.reduce((sum, { massG }) => sum + (massG ?? Number.NaN), 0);
        expect(Math.abs(listed - (values.ingoingG ?? 0))).toBeLessThan(0.001);
      }),
    );
  });
});

describe('Meat and quantities', () => {
  const named = { lines: [said('a', { stressed: true })] };

  it('cannot tell the meat content without collagen, and never takes it from a hydroxyproline column', () => {
    // The row has a published hydroxyproline: it must not be used.
    expect(details.get('pork-butt-lf')?.hydroxyprolineG).toBe(0.045);
    const result = label(batchOf(PORK), named);
    expect(result.values.meat[0]).toMatchObject({ name: 'pork', content: null });
    expect(result.values.meat[0]?.unknown).toEqual([{ lineId: 'a', what: 'collagen' }]);
    expect(result.values.quantities?.[0]).toMatchObject({ state: 'cannot-tell' });
    expect(ids(result.findings)).toContain('label.meat-limit-unknown');
  });

  it('counts within the limits once collagen is typed or a published cut is chosen', () => {
    const typed = label(batchOf(PORK), {
      lines: [said('a', { stressed: true, collagen: enteredEntry('2', '%') })],
    });
    // Derived: 12.36 % fat and 2 of 17.42 % protein are inside both limits of pork: 700 ÷ 900.
    expect(typed.values.meat[0]?.content?.declarableFraction).toBe(1);
    expect(typed.values.quantities?.[0]).toMatchObject({
      state: 'settled',
      declare: { as: 'percent', figure: 78 },
    });
    const cut = label(batchOf(PORK), { lines: [said('a', { stressed: true, collagenCut: 'pork-butt' })] });
    // Food Science of Animal Resources 41 (2), 2021, table 2: 2.61 %, the highest of three means.
    expect(cut.values.parts[0]?.collagenFraction).toBe(0.0261);
    expect(cut.values.quantities?.[0]?.state).toBe('settled');
  });

  it('reckons a cut published on fat-free meat back to the meat as it is', () => {
    const batch = batchOf([['a', 'lean', 'beef-chuck-lf', '1000']]);
    const { values } = label(batch, { lines: [said('a', { collagenCut: 'beef-shin' })] });
    const fat = table.get('beef-chuck-lf')?.fatFraction ?? Number.NaN;
    // Meat Science 12, 1986, abstract: 4.8 % of the wet, fat-free meat. Derived: × (1 − fat).
    expect(values.parts[0]?.collagenFraction).toBeCloseTo(0.048 * (1 - fat), 12);
  });

  it('lists fat above the limit of the animal by its own name', () => {
    const batch = batchOf([['a', 'lean', 'fr-pork-throat', '600']]);
    const { values, findings } = label(
      batch,
      { lines: [said('a', { stressed: true, collagen: enteredEntry('1.9', '%') })] },
      { finishedG: 1390 },
    );
    // Derived: 75 % counts as meat, 25 % is fat (Ciqual 28471 with collagen assumed for the test).
    expect(values.eu.map(({ name, massG }) => [name, Math.round(massG ?? 0)])).toEqual([
      ['pork', 450],
      ['pork fat', 150],
    ]);
    expect(ids(findings)).toContain('label.over-meat-limits');
  });

  it('A quantity above 100: used for 100 g of the food, not per cent', () => {
    // Common practice: 2,400 g of mutton for 2,112 g of ham is 114 g for 100 g.
    const batch = batchOf([['a', 'lean', 'kitchen-mutton-leg', '2400']], 'cooked-ham');
    const { values, findings } = label(
      batch,
      { lines: [said('a', { stressed: true, name: 'mutton', collagen: enteredEntry('2', '%') })] },
      { finishedG: 2112 },
    );
    expect(values.quantities?.[0]?.declare).toEqual({ as: 'grams-per-100', figure: 114 });
    expect(ids(findings)).toContain('label.quantities-in-grams');
  });

  it('Yield denominators: mix left in the bowl is no water lost', () => {
    // Derived: 900 of 1000 g filled, 850 g finished. 700 × 0.9 ÷ 850 = 74.1 %, not 700 ÷ 850 = 82.4 %.
    const slice = { lines: [said('a', { stressed: true, collagen: enteredEntry('2', '%') })] };
    const filled = label(batchOf(PORK), { ...slice, filled: enteredEntry('900', 'g') }, { finishedG: 850 });
    expect(filled.values.quantities?.[0]?.declare.figure).toBe(74);
    expect(filled.values.yieldFraction).toBeCloseTo(850 / 900, 9);
    const moulds = label(batchOf(PORK), slice, { finishedG: 850, filledByMouldsG: 900 });
    expect(moulds.values.quantities?.[0]?.declare.figure).toBe(74);
    const bowl = label(batchOf(PORK), slice, { finishedG: 850 });
    expect(bowl.values.quantities?.[0]?.declare.figure).toBe(82);
    expect(ids(bowl.findings)).toContain('label.whole-bowl-filled');
  });
});

describe('Nutrition', () => {
  it('is unknown until somebody says what was lost, and when juices were', () => {
    expect(label(batchOf(PORK), { loss: null }).values.nutrition).toBeNull();
    expect(label(batchOf(PORK), { loss: null }).missing.map(({ field }) => field)).toContain('label.loss');
    const juices = label(batchOf(PORK), { loss: 'juices' });
    expect(juices.values.nutrition).toBeNull();
    expect(ids(juices.findings)).toContain('label.juices-lost');
    expect(label(batchOf(PORK), {}, { finishedG: null }).values.nutrition).toBeNull();
  });

  it('drained fat is fat lost and no water: its saturates go with it', () => {
    const dry = label(batchOf(PORK)).values;
    const { values } = label(batchOf(PORK), { loss: 'fat-weighed', drainedFat: enteredEntry('50', 'g') });
    const fatG = (dry.nutrition?.fatG.value ?? 0) * 9;
    // Derived: grams in 900 g, less 50.
    expect((values.nutrition?.fatG.value ?? 0) * 9).toBeCloseTo(fatG - 50, 6);
    const share = (dry.nutrition?.saturatesG.value ?? 0) / (dry.nutrition?.fatG.value ?? 1);
    expect((values.nutrition?.saturatesG.value ?? 0) / (values.nutrition?.fatG.value ?? 1)).toBeCloseTo(
      share,
      9,
    );
    const blank = label(batchOf(PORK), { loss: 'fat-weighed' });
    expect(blank.values.nutrition).toBeNull();
    expect(blank.missing.map(({ field }) => field)).toContain('label.drainedFat');
  });

  it('salt counts the sodium of curing salt and of the meat, not common salt alone', () => {
    const { values } = label(batchOf(PORK));
    const salt = values.euTable?.find(({ id }) => id === 'salt')?.exact.value ?? 0;
    // Derived: sodium of 14 g table salt (SR28: 38.758 %), 2 g cure, meat, liver and cream, × 2.5, in 900 g.
    const sodiumMg =
      14 * 387.58 + 2 * (0.9375 * 393.37 + 0.0625 * 333.21) + 700 * 0.61 + 200 * 0.11 + 50 * 0.87 + 34 * 0.27;
    expect(Math.abs(salt - (sodiumMg * 2.5) / 1000 / 9)).toBeLessThan(0.02);
  });

  it('is a fat that nobody knows: cannot tell, and the line is named', () => {
    const batch = batchOf([...PORK, ['g', 'garnish', null, '100', 'Mystery']]);
    const { values, missing } = label(batch);
    expect(values.euTable?.find(({ id }) => id === 'fat')?.declared).toBeNull();
    expect(missing).toContainEqual({ field: 'label.lines.g.figures', neededFor: 'label.nutrition' });
  });

  it('takes what is typed from the pack, and nothing from the table for a text it cannot read', () => {
    const figures = newLabelLine('c').figures;
    const typed = label(batchOf(PORK), {
      lines: [said('c', { figures: { ...figures, sugars: enteredEntry('0', '%') } })],
    });
    expect(typed.values.euTable?.find(({ id }) => id === 'sugars')?.declared).not.toBeNull();
    const odd = label(batchOf(PORK), {
      lines: [said('a', { figures: { ...figures, saturates: enteredEntry('NaN', '%') } })],
    });
    expect(odd.values.nutrition?.saturatesG.value).toBeNull();
  });

  it('asks how alcohol was treated before it tells energy', () => {
    const batch = batchOf([...PORK, ['g', 'liquid', 'spirit-80-proof', '40']]);
    const open = label(batch);
    expect(open.missing.map(({ field }) => field)).toContain('label.alcohol');
    expect(open.values.nutrition?.alcoholG.value).toBeNull();
    const told = label(batch, { alcohol: 'min-60' });
    // USDA retention factors, release 6: 25 % after an hour.
    const grams = (40 * (details.get('spirit-80-proof')?.alcoholG ?? 0)) / 100;
    expect(told.values.nutrition?.alcoholG.value).toBeCloseTo((grams * 0.25 * 100) / 900, 9);
  });

  it('from the kitchen’s own rows says that it is for planning', () => {
    const { findings, values } = label(batchOf([['a', 'lean', 'kitchen-pork-shoulder-80-20', '1000']]));
    expect(findings.find(({ id }) => id === 'label.kitchen-figures')?.severity).toBe('caution');
    // Derived: 20 % fat in the saturates' share of the table row, 4.348 ÷ 12.36, and 900 g of 1000.
    expect(values.nutrition?.saturatesG.value).toBeCloseTo(((20 * 4.348) / 12.36 / 900) * 1000, 6);
  });

  it('never falls when an ingredient is heavier, and never shows a figure for an unknown mass', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 1, max: 500 }), (grams, more) => {
        const of = (g: number) =>
          label(
            batchOf([
              ['a', 'lean', 'pork-butt-lf', '700'],
              ['b', 'fat', 'pork-backfat', String(g)],
            ]),
          ).values.nutrition?.fatG.value ?? Number.NaN;
        expect(of(grams + more)).toBeGreaterThan(of(grams));
      }),
      { numRuns: 30 },
    );
    const blank = label(batchOf([['a', 'lean', 'pork-butt-lf', ''], ...PORK.slice(1)]));
    expect(blank.values.nutrition).toBeNull();
    expect(blank.values.quantities).toBeNull();
  });
});

describe('Allergens', () => {
  it('of an ingredient nobody has told are not known: never a pass', () => {
    const batch = batchOf([...PORK, ['g', 'garnish', null, '10', 'House sauce']]);
    const open = label(batch);
    expect(open.verdicts[0]).toMatchObject({ state: 'cannot-tell', params: { names: 'House sauce' } });
    const told = label(batch, { lines: [said('g', { allergens: ['mustard'] })] });
    expect(told.verdicts[0]?.state).toBe('pass');
    expect(told.values.euAllergens.map(({ name }) => name)).toContain('mustard');
    // Mustard is no major allergen of the United States.
    expect(told.values.usAllergens.map(({ name }) => name)).not.toContain('mustard');
  });

  it('that the table has for certain cannot be unticked', () => {
    const { values } = label(batchOf(PORK), { lines: [said('d', { allergens: [] })] });
    expect(values.euAllergens.map(({ name }) => name)).toContain('milk');
  });

  it('that depend on the maker stay open until somebody has read the pack', () => {
    const batch = batchOf([...PORK, ['g', 'seasoning', 'kitchen-spice-blend', '6', 'Blend']]);
    expect(ids(label(batch).findings)).toContain('label.allergen-to-check');
    expect(label(batch).verdicts[0]?.state).toBe('cannot-tell');
  });

  it('of an empty formula are not known', () => {
    expect(label(batchOf([])).verdicts[0]?.state).toBe('cannot-tell');
  });
});

describe('Dates', () => {
  it('Use-by from pack date: it is counted from the cook, and packing again never restarts the clock', () => {
    const once = label(batchOf(PORK), { packedOn: '2026-03-11' });
    const again = label(batchOf(PORK), { packedOn: '2026-03-14' });
    // Derived: five days with the day of the cook as day one.
    expect(once.values.useBy).toBe('2026-03-14');
    expect(again.values.useBy).toBe('2026-03-14');
    expect(ids(again.findings)).toContain('label.packing-moves-nothing');
  });

  it('counts from the earlier of two cook days', () => {
    const later = label(batchOf(PORK), { cookedOn: '2026-03-12' });
    expect(later.values.cookedOn).toBe('2026-03-10');
    expect(ids(later.findings)).toContain('label.two-cook-dates');
    expect(label(batchOf(PORK), { cookedOn: '2026-03-08' }).values.cookedOn).toBe('2026-03-08');
  });

  it('fails a later date on the batch sheet, passes an earlier one, and cannot tell without one', () => {
    const life = enteredEntry('5', 'd');
    const written = (writtenUseBy: string) =>
      label(batchOf(PORK), { life }, { writtenUseBy }).verdicts[1]?.state;
    expect(written('2026-03-15')).toBe('fail');
    expect(written('2026-03-14')).toBe('pass');
    expect(written('')).toBe('cannot-tell');
    expect(written('next Friday')).toBe('cannot-tell');
    // A life that is still the default judges nothing, either way.
    expect(label(batchOf(PORK), {}, { writtenUseBy: '2026-03-14' }).verdicts[1]?.state).toBe('cannot-tell');
    expect(label(batchOf(PORK), {}, { writtenUseBy: '2026-03-30' }).verdicts[1]?.state).toBe('cannot-tell');
    const undated = label(batchOf(PORK), { life }, { firstCookAt: null, writtenUseBy: '2026-03-14' });
    expect(undated.verdicts[1]?.state).toBe('cannot-tell');
    expect(undated.missing.map(({ field }) => field)).toContain('label.cookedOn');
  });

  it.each(['', 'NaN', '-3', '0', '5 kgs'])('a life of %j gives no date', (text) => {
    expect(label(batchOf(PORK), { life: enteredEntry(text, 'd') }).values.useBy).toBeNull();
  });

  it('a long life sealed without air is stopped unless a hurdle is proven', () => {
    // Food Standards Agency guidance, December 2020: 10 days at 3 to 8 °C.
    const at = (days: string, more: Partial<LabelSlice> = {}) =>
      label(batchOf(PORK), { life: enteredEntry(days, 'd'), pack: 'vacuum', ...more }).findings;
    expect(ids(at('10'))).not.toContain('label.sealed-too-long');
    expect(at('11').find(({ id }) => id === 'label.sealed-too-long')?.severity).toBe('stop');
    expect(ids(at('11', { pack: 'wrapped' }))).not.toContain('label.sealed-too-long');
    expect(ids(at('11', { hurdle: 'ph-5' }))).not.toContain('label.sealed-too-long');
    // This formula has about 2.9 % salt on water.
    expect(
      at('11', { hurdle: 'salt-3-5' }).find(({ id }) => id === 'label.hurdle-salt-short')?.severity,
    ).toBe('stop');
  });

  it('best-before on a chilled terrine is a stop', () => {
    const { findings } = label(batchOf(PORK), { dateKind: 'best-before' });
    expect(findings.find(({ id }) => id === 'label.best-before')?.severity).toBe('stop');
  });
});

describe('Who eats it', () => {
  it('warns of Listeria, vitamin A and nitrite, and of Listeria when nobody named the family', () => {
    expect(label(batchOf(PORK)).values.warnings).toEqual(['listeria', 'vitamin-a', 'nitrite-infants']);
    const plain = batchOf(PORK.slice(0, 2), null);
    expect(label(plain).values.warnings).toEqual(['listeria']);
  });

  it('warns of nitrite while an ingredient is unknown', () => {
    const batch = batchOf([...PORK.slice(0, 2), ['g', 'garnish', null, '10', 'House sauce']]);
    expect(label(batch).values.warnings).toContain('nitrite-infants');
  });

  it('stops a hospital and a nursery', () => {
    const of = (audience: LabelSlice['audience']) =>
      label(batchOf(PORK), { audience }).findings.filter(({ severity }) => severity === 'stop');
    expect(ids(of('susceptible'))).toEqual(['label.susceptible-audience']);
    expect(ids(of('under-threes'))).toEqual(['label.nitrite-for-infants']);
    expect(of('general')).toEqual([]);
  });
});

describe('A blank label', () => {
  it('of a blank batch claims nothing', () => {
    const result = label(
      newBatch({ id: 'b', at: '', zone: 'UTC' }),
      { loss: null },
      { finishedG: null, firstCookAt: null },
    );
    expect(result.values).toMatchObject({ ingoingG: null, nutrition: null, quantities: null, useBy: null });
    expect(result.verdicts.map(({ state }) => state)).toEqual(['cannot-tell', 'cannot-tell']);
    expect(result.findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
  });

  it('marks its defaults as defaults', () => {
    expect(newLabelSlice().storeAt).toEqual(defaultEntry('3', 'C'));
    expect(newLabelSlice().life).toEqual(defaultEntry('5', 'd'));
  });
});
