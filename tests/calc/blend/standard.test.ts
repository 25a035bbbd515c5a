import {
  type BlendMaterial,
  type BlendSlice,
  blendStage,
  judgeStandard,
  leastCostBlend,
  leastCostFindings,
  makeupOf,
  newBlendMaterial,
  newBlendSlice,
} from '@larderwright/calc/blend';
import {
  addedWaterFraction,
  cookedHamName,
  keepsCookedSausageStandard,
  type LinePart,
  NAMED_STANDARDS,
  proteinFatFreePercent,
} from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const composition = await loadIngredients();
const context = { composition, familyId: null };

function material(id: string, part: LinePart, [fat, protein, water]: readonly string[], price = '5') {
  const blank = newBlendMaterial(id, part);
  return {
    ...blank,
    name: id,
    declared: {
      ...blank.declared,
      fat: enteredEntry(fat ?? '', '%'),
      protein: enteredEntry(protein ?? '', '%'),
      water: enteredEntry(water ?? '', '%'),
    },
    price: enteredEntry(price, 'money'),
  };
}

const LEAN = material('lean', 'lean', ['10', '20', '70']);
const FAT = material('fat', 'fat', ['90', '2', '8'], '2');
const LIVER = material('liver', 'liver', ['4', '21', '71'], '9');
const ICE: BlendMaterial = {
  ...newBlendMaterial('ice', 'liquid'),
  name: 'ice',
  ingredientId: 'water',
  price: enteredEntry('0', 'money'),
};
const TWO_KG_OF_ICE = { ...ICE, locked: enteredEntry('2', 'kg') };

function sold(nameId: string, change: Partial<BlendSlice> = {}, yieldPercent = ''): BlendSlice {
  return {
    ...newBlendSlice(),
    materials: [LEAN, FAT, TWO_KG_OF_ICE],
    total: enteredEntry('10', 'kg'),
    freeA: 'lean',
    freeB: 'fat',
    standard: { nameId, yield: enteredEntry(yieldPercent, '%'), asBounds: true },
    ...change,
  };
}
const target = (percent: string) => ({ fatTarget: enteredEntry(percent, '%') });
const judged = (slice: BlendSlice) =>
  Object.fromEntries(
    blendStage(slice, context).verdicts.map(({ id, state }) => [id.replace('blend.standard.', ''), state]),
  );

describe('a blend sold under a name', () => {
  it('is not judged where no name is chosen, nor in records of before it was asked', () => {
    const { standard, ...old } = sold('us-frankfurter', target('26'));
    expect(standard).toBeDefined();
    expect(judged(old)).toEqual({});
  });

  // 9 CFR 319.180(a): fat 30 % at most, with added water 40 % at most, of the finished product.
  it.each([
    // Derived: 26 ÷ 0.9 = 28.9 % fat; 5.75 kg lean, 2.25 kg fat, 2 kg ice hold 14.2 % added water, 10 points of it lost.
    ['26', '90', { fat: 'pass', 'fat-and-added-water': 'pass' }],
    // Derived: 28 ÷ 0.9 = 31.1 %.
    ['28', '90', { fat: 'fail', 'fat-and-added-water': 'pass' }],
    // Nothing lost: 26 % and 14.2 % are 40.2 % together.
    ['26', '100', { fat: 'pass', 'fat-and-added-water': 'fail' }],
    // No yield: what is within may gather; what is over stays over.
    ['26', '', { fat: 'cannot-tell', 'fat-and-added-water': 'cannot-tell' }],
    ['31', '', { fat: 'fail', 'fat-and-added-water': 'cannot-tell' }],
    ['26', 'much', { fat: 'cannot-tell', 'fat-and-added-water': 'cannot-tell' }],
  ])('frankfurter with %s %% fat and %s %% yield', (fat, yieldPercent, wanted) => {
    expect(judged(sold('us-frankfurter', target(fat), yieldPercent))).toEqual(wanted);
  });

  it('judges as the two published formulas do on the finished product', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.75, max: 1, noNaN: true }), (a, b, yieldFraction) => {
        const [fat, ice] = [0.45 * a, 0.05 + 0.25 * b];
        const makeup = makeupOf([
          {
            share: 1 - fat - ice,
            fractions: { fat: 0.05, protein: 0.2, water: 0.74, salt: 0, liver: 0, ...of(0.74, 0.2, 0.05) },
          },
          {
            share: fat,
            fractions: { fat: 0.9, protein: 0.02, water: 0.08, salt: 0, liver: 0, ...of(0.08, 0.02, 0.9) },
          },
          {
            share: ice,
            fractions: { fat: 0, protein: 0, water: 1, salt: 0, liver: 0, ...of(1, 0, 0), ice: 1 },
          },
        ]);
        const finished = (fraction: number | null, lost = 0) => ((fraction ?? 0) - lost) / yieldFraction;
        const [fatEnd, water, protein] = [
          finished(makeup.fat),
          Math.max(0, finished(makeup.water, 1 - yieldFraction)),
          finished(makeup.protein),
        ];
        const added = addedWaterFraction(water, protein, 0) ?? 0;
        fc.pre(Math.abs(fatEnd - 0.3) > 1e-6 && Math.abs(fatEnd + added - 0.4) > 1e-6);
        const slice = sold('us-frankfurter', {}, `${yieldFraction * 100}`);
        const kept = judgeStandard(slice, makeup).every(({ state }) => state === 'pass');
        expect(kept).toBe(keepsCookedSausageStandard(fatEnd, added));
      }),
    );
  });

  it('a fresh pork sausage may be half fat and holds little ice', () => {
    // 9 CFR 319.141: fat 50 % at most, water or ice 3 % of all ingredients at most.
    const ice = (kg: string) => ({ materials: [LEAN, FAT, { ...ICE, locked: enteredEntry(kg, 'kg') }] });
    expect(judged(sold('us-fresh-pork-sausage', { ...target('50'), ...ice('0.3') }))).toEqual({
      fat: 'pass',
      ice: 'pass',
    });
    expect(judged(sold('us-fresh-pork-sausage', { ...target('51'), ...ice('0.31') }))).toEqual({
      fat: 'fail',
      ice: 'fail',
    });
    // No ice among the materials: what is added later is not seen.
    expect(judged(sold('us-fresh-pork-sausage', { ...target('40'), materials: [LEAN, FAT] }))).toEqual({
      fat: 'pass',
      ice: 'cannot-tell',
    });
  });

  it('a liver paste holds three tenths of fresh liver, whatever the cook takes', () => {
    // 9 CFR 319.881: 6 kg ask for 1.8 kg of fresh liver.
    const paste = (kg: string) =>
      sold('us-liver-paste', {
        materials: [LEAN, FAT, { ...LIVER, locked: enteredEntry(kg, 'kg') }],
        total: enteredEntry('6', 'kg'),
      });
    expect(judged(paste('1.8'))).toEqual({ liver: 'pass' });
    expect(judged(paste('1.79'))).toEqual({ liver: 'fail' });
  });

  it('a ham earns its name by its protein on a fat-free basis', () => {
    // 9 CFR 318.19(a)(5) and 319.104(a): 18 % protein and 5 % fat are 18.95: with natural juices.
    const [makeup, pff] = [
      makeupOf([{ share: 1, fractions: { fat: 0.05, protein: 0.18, water: 0.75, salt: 0, liver: 0 } }]),
      proteinFatFreePercent(0.18, 0.05),
    ];
    expect(cookedHamName(pff ?? 0)).toBe('ham with natural juices');
    const state = (id: string, yieldPercent = '100') =>
      judgeStandard(sold(id, {}, yieldPercent), makeup).map((verdict) => verdict.state);
    expect(state('us-ham')).toEqual(['fail']);
    expect(state('us-ham-with-natural-juices')).toEqual(['pass']);
    expect(state('us-ham-water-added')).toEqual(['pass']);
    expect(state('us-ham', '')).toEqual(['cannot-tell']);
  });
});

describe('the cheapest blend of a name', () => {
  const open = { materials: [LEAN, FAT, ICE] };

  it('keeps to its standard, and fat costs less than lean so that both limits hold it', async () => {
    const slice = sold('us-frankfurter', open, '90');
    const answer = await leastCostBlend(slice, context);
    if (answer.state !== 'optimal') throw new Error(answer.state);
    const { makeup } = answer.blend;
    // Derived: 30 % × 0.9 of fat; with added water 40 % × 0.9 and the tenth that is lost.
    expect(makeup.fat).toBeLessThanOrEqual(0.27 + 1e-9);
    expect(makeup['fat-and-added-water']).toBeCloseTo(0.46, 9);
    expect(judgeStandard(slice, makeup).map(({ state }) => state)).toEqual(['pass', 'pass']);
    expect(leastCostFindings(answer, slice).map(({ field }) => field)).toContain('blend.standard');
  });

  it('is bound by nothing of it where a person only wants it judged', async () => {
    const slice = sold('us-frankfurter', open, '90');
    const answer = await leastCostBlend(
      { ...slice, standard: { nameId: 'us-frankfurter', yield: enteredEntry('90', '%'), asBounds: false } },
      context,
    );
    // Derived: ice costs nothing.
    expect(answer.state === 'optimal' ? answer.blend.costPerKg : null).toBeCloseTo(0, 9);
  });

  it('asks for the yield of what is sold cooked', async () => {
    const answer = await leastCostBlend(sold('us-frankfurter', open), context);
    expect(answer).toMatchObject({ state: 'cannot-tell' });
    expect(answer.state === 'cannot-tell' ? answer.missing.map(({ field }) => field) : []).toContain(
      'blend.standard.yield',
    );
  });

  it('says that it is the liver of the name that cannot be had', async () => {
    const scarce = { ...LIVER, stock: enteredEntry('1', 'kg') };
    const slice = sold('us-liver-paste', { materials: [LEAN, FAT, scarce] }, '90');
    const answer = await leastCostBlend(slice, context);
    expect(answer.state).toBe('infeasible');
    if (answer.state !== 'infeasible') return;
    expect(answer.alone.map(({ bound }) => ('quality' in bound ? bound.quality : bound.kind)).sort()).toEqual(
      ['liver', 'stock'],
    );
  });
});

it('every standard names its section, its source and limits that are shares', () => {
  expect(new Set(NAMED_STANDARDS.map(({ id }) => id)).size).toBe(NAMED_STANDARDS.length);
  for (const { limits } of NAMED_STANDARDS)
    for (const { fraction, section } of limits) {
      expect(section).toMatch(/^9 CFR \d{3}\.\d+/);
      expect(fraction).toBeGreaterThan(0);
      expect(fraction).toBeLessThan(1);
    }
});

/** What a standard asks of one material, by 9 CFR 318.22(b). */
function of(water: number, protein: number, fat: number) {
  const added = water - 4 * protein;
  return { 'added-water': added, 'fat-and-added-water': fat + added, ice: 0 };
}
