import {
  type BlendMaterial,
  type BlendSlice,
  blendStage,
  leastCostBlend,
  leastCostFindings,
  newBlendMaterial,
  newBlendSlice,
} from '@larderwright/calc/blend';
import type { LinePart } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { blendWords } from '../../../worksheets/words/blend.ts';

const composition = await loadIngredients();
const context = { composition, familyId: null };

interface Given {
  part?: LinePart;
  row?: string;
  fat?: string;
  protein?: string;
  water?: string;
  price?: string;
  stock?: string;
  locked?: string;
  max?: string;
}

function material(id: string, given: Given): BlendMaterial {
  const blank = newBlendMaterial(id, given.part ?? 'lean');
  return {
    ...blank,
    name: id,
    ingredientId: given.row ?? null,
    declared: {
      ...blank.declared,
      fat: enteredEntry(given.fat ?? '', '%'),
      protein: enteredEntry(given.protein ?? '', '%'),
      water: enteredEntry(given.water ?? '', '%'),
    },
    price: enteredEntry(given.price ?? '', 'money'),
    stock: enteredEntry(given.stock ?? '', 'kg'),
    locked: enteredEntry(given.locked ?? '', 'kg'),
    maxShare: enteredEntry(given.max ?? '', '%'),
  };
}

function blend(materials: BlendMaterial[], change: Partial<BlendSlice> = {}): BlendSlice {
  return {
    ...newBlendSlice(),
    materials,
    total: enteredEntry('10', 'kg'),
    freeA: materials[0]?.id ?? null,
    freeB: materials[1]?.id ?? null,
    ...change,
  };
}
function fatBand(min: string, max: string): BlendSlice['bands'] {
  const { bands } = newBlendSlice();
  return { ...bands, fat: { min: enteredEntry(min, '%'), max: enteredEntry(max, '%') } };
}

const VENISON = material('venison', { row: 'kitchen-venison-shoulder', price: '14' });
const BACK_FAT = material('back fat', { part: 'fat', row: 'kitchen-pork-backfat', price: '3' });

describe('the stage of the square', () => {
  it('balances venison and back fat to 25 % fat: 7,412 g and 2,588 g', () => {
    // Common practice: the square of 3 % and 88 %. Derived: 74.12 : 25.88; 7.412 × 14 + 2.588 × 3 = 111.53.
    const { values, findings, missing } = blendStage(
      blend([VENISON, BACK_FAT], { fatTarget: enteredEntry('25', '%') }),
      context,
    );
    expect(values.squareMasses.map(({ massG }) => Math.round(massG))).toEqual([7412, 2588]);
    expect(values.squareMakeup?.fat).toBeCloseTo(0.25, 12);
    expect(values.squareCost).toBeCloseTo(111.53, 2);
    expect([findings, missing]).toEqual([[], []]);
  });

  it('Lean is not without fat: its own 5 % counts, and a lean typed as none is doubted', () => {
    // Working composition of trimmed pork lean: 5 % fat (common practice). 88 − 28 ÷ 88 − 5 = 72.3 % lean;
    // with lean taken as fatless it would be 68.2 %, and the blend 3.4 points too fat. Derived.
    const lean = material('lean', { row: 'kitchen-pork-shoulder-lean', fat: '5' });
    const { values } = blendStage(blend([lean, BACK_FAT]), context);
    expect(values.squareMasses[0]?.massG).toBeCloseTo(7228.9, 1);
    const fatless = blendStage(blend([material('lean', { fat: '0' }), BACK_FAT]), context);
    expect(fatless.values.squareMasses[0]?.massG).toBeCloseTo(6818.2, 1);
    expect(fatless.findings.map(({ id }) => id)).toEqual(['blend.lean-has-fat']);
  });

  it('tells what cannot be reached, what the stock does not hold, and figures that pass the whole', () => {
    const ids = (of: BlendSlice) => blendStage(of, context).findings.map(({ id }) => id);
    expect(ids(blend([VENISON, BACK_FAT], { fatTarget: enteredEntry('2', '%') }))).toEqual([
      'blend.out-of-reach',
    ]);
    expect(
      ids(blend([material('a', { fat: '20', part: 'fat' }), material('b', { fat: '20', part: 'fat' })])),
    ).toEqual(['blend.same-fat']);
    expect(ids(blend([VENISON, BACK_FAT, material('c', { fat: '30', locked: '10' })]))).toEqual([
      'blend.locked-fill-it',
    ]);
    expect(ids(blend([{ ...VENISON, stock: enteredEntry('5', 'kg') }, BACK_FAT]))).toEqual([
      'blend.over-stock',
    ]);
    expect(ids(blend([material('a', { fat: '80', water: '30' }), BACK_FAT]))).toContain(
      'blend.declared-over-100',
    );
    expect(ids(blend([VENISON, BACK_FAT], { bands: fatBand('30', '20') }))).toEqual(['blend.band-reversed']);
  });

  it('notes a fat emulsion only where there is an emulsion', () => {
    const fatty = blend(
      [
        material('a', { fat: '10', protein: '15', water: '70' }),
        { ...BACK_FAT, declared: material('x', { fat: '88', protein: '3', water: '9' }).declared },
      ],
      {
        fatTarget: enteredEntry('35', '%'),
      },
    );
    const ids = (familyId: string | null) =>
      blendStage(fatty, { composition, familyId }).findings.map(({ id }) => id);
    expect(ids('emulsified-sausage')).toEqual(['blend.fat-to-protein']);
    expect(ids('country-terrine')).toEqual([]);
  });

  it('asks for what is blank and takes nothing for it', () => {
    const unknown = blend([material('a', {}), BACK_FAT], { total: enteredEntry('', 'kg') });
    const { values, missing } = blendStage(unknown, context);
    expect(values.square).toBe(null);
    expect(missing.map(({ field }) => field)).toEqual(['blend.total', 'blend.materials.a.declared.fat']);
    const sameTwice = blend([VENISON, BACK_FAT], { freeB: 'venison' });
    expect(blendStage(sameTwice, context).missing.map(({ field }) => field)).toEqual(['blend.freeB']);
    const badLock = blend([VENISON, BACK_FAT, material('c', { fat: '30', locked: '1,234' })]);
    expect(blendStage(badLock, context).values.square).toBe(null);
    expect(blendStage(newBlendSlice(), context)).toMatchObject({ findings: [], missing: [] });
  });
});

/** Lean 8.00, cheek 5.00 with 3 kg of it, fat 3.00; 20 to 28 % fat of 10 kg. */
const THREE = [
  material('lean', { fat: '5', price: '8' }),
  material('cheek', { fat: '20', price: '5', stock: '3' }),
  material('fat', { part: 'fat', fat: '88', price: '3' }),
];

describe('the least-cost blend', () => {
  it('is worked out by hand for three materials', async () => {
    // All the cheek and as fat as allowed: 3 kg cheek; lean + fat = 7 kg holding 2,800 − 600 = 2,200 g of fat:
    // fat = (2,200 − 350) ÷ 0.83 = 2,228.9 g, lean 4,771.1 g. Cost 38.169 + 15 + 6.687 = 59.855. Derived.
    const answer = await leastCostBlend(blend(THREE, { bands: fatBand('20', '28') }), context);
    if (answer.state !== 'optimal') throw new Error(answer.state);
    expect(answer.blend.shares.map(({ massG }) => massG)).toEqual([
      expect.closeTo(4771.08, 1),
      expect.closeTo(3000, 3),
      expect.closeTo(2228.92, 1),
    ]);
    expect(answer.blend.cost).toBeCloseTo(59.855, 3);
  });

  it('says in words what another kilo would save', async () => {
    const slice = blend(THREE, { bands: fatBand('20', '28') });
    const answer = await leastCostBlend(slice, context);
    const more = leastCostFindings(answer, slice, 'cu').find(({ id }) => id === 'blend.more-stock-saves');
    // A kilo more cheek: (88 − 20) ÷ 83 = 0.8193 kg lean and 0.1807 kg fat less: 6.554 + 0.542 − 5 = 2.10. Derived.
    expect(more?.params.money).toBeCloseTo(2.096, 3);
    expect(more?.field).toBe('blend.materials.cheek.stock');
    expect(blendWords['blend.more-stock-saves'](more?.params ?? {}).title).toBe(
      'Another kilo of cheek would save 2.10\u00A0cu.',
    );
  });

  it('says which bound must give way and by how much when there is no blend', async () => {
    // Only lean 5 % and cheek 20 %, at least 25 % fat wanted, all cheek would give 20 %, 3 kg of it 9.5 %. Derived.
    const slice = blend(THREE.slice(0, 2), { bands: fatBand('25', '') });
    const answer = await leastCostBlend(slice, context);
    if (answer.state !== 'infeasible') throw new Error(answer.state);
    expect(answer.alone).toEqual([
      {
        bound: { kind: 'quality-min', quality: 'fat', limit: 0.25 },
        reachable: expect.closeTo(0.095, 8),
        by: expect.closeTo(0.155, 8),
      },
    ]);
    const said = leastCostFindings(answer, slice).map(({ id, params }) => blendWords[id](params).title);
    expect(said[0]).toBe('No blend meets everything asked for.');
    expect(said).toContain('The least fat: 25.0 % must go down to 9.5 % (15.5 % lower).');
  });

  it('names the stock that would be enough', async () => {
    const fat = material('fat', { part: 'fat', fat: '88', price: '3', stock: '1' });
    const slice = blend([THREE[0] ?? fat, fat], { bands: fatBand('25', '') });
    const answer = await leastCostBlend(slice, context);
    const said = leastCostFindings(answer, slice).map(({ id, params }) => blendWords[id](params).title);
    // (25 − 5) ÷ 83 = 24.096 % of 10 kg. Derived.
    expect(said).toContain('fat: 2.410 kg would be needed, 1.000 kg is there (1.410 kg more).');
  });

  it('holds shares, liver and fixed lines', async () => {
    const liver = material('liver', { part: 'liver', fat: '4', price: '1' });
    const { bands } = newBlendSlice();
    const slice = blend([...THREE, liver, material('fixed', { fat: '30', price: '9', locked: '2' })], {
      bands: { ...bands, liver: { min: enteredEntry('', '%'), max: enteredEntry('15', '%') } },
    });
    const answer = await leastCostBlend(slice, context);
    if (answer.state !== 'optimal') throw new Error(answer.state);
    expect(answer.blend.makeup.liver).toBeCloseTo(0.15, 8);
    expect(answer.blend.shares.at(-1)?.massG).toBe(2000);
  });

  it('cannot tell while a price, a figure or the total is unknown or unreadable', async () => {
    const state = async (of: BlendSlice) => {
      const answer = await leastCostBlend(of, context);
      return answer.state === 'cannot-tell' ? answer.missing.map(({ field }) => field) : answer.state;
    };
    const bands = fatBand('20', '28');
    expect(await state(blend([material('a', { fat: '5' })], { bands }))).toEqual(['blend.materials.a.price']);
    expect(await state(blend([material('a', { price: '5' })], { bands }))).toEqual([
      'blend.materials.a.declared.fat',
    ]);
    expect(await state(blend([material('a', { price: '5' })]))).toBe('optimal');
    expect(await state(blend(THREE, { total: enteredEntry('0', 'kg') }))).toEqual(['blend.total']);
    expect(await state(blend([material('a', { price: '5', stock: 'some' })]))).toEqual([
      'blend.materials.a.stock',
    ]);
    expect(await state(blend([material('a', { price: '5', max: 'NaN' })]))).toEqual([
      'blend.materials.a.maxShare',
    ]);
    expect(await state(newBlendSlice())).toEqual(['blend.total', 'blend.materials']);
    expect(await state(blend([material('a', { price: '5', locked: '10' })]))).toBe('nothing-to-choose');
  });

  it('says every finding in a whole sentence', () => {
    const params = {
      name: 'Cheek',
      what: 'cheek',
      kind: 'stock',
      quality: 'fat',
      side: 'most',
      section: '9 CFR 319.141',
      why: 'yield',
      limitFraction: 0.5,
      figureFraction: 0.52,
      limit: 3000,
      reachable: 4000,
      by: 1000,
      movedBy: 1000,
      money: 2.1,
      targetFraction: 0.15,
      leastFraction: 0.2,
      mostFraction: 0.5,
      massG: 3000,
      stockG: 2000,
      ratio: 2.4,
      mostRatio: 2.2,
      sumFraction: 1.1,
      count: 2,
    };
    for (const kind of ['stock', 'least-share', 'most-share', 'quality-min', 'quality-max']) {
      for (const [id, say] of Object.entries(blendWords)) {
        const { title, body } = say({ ...params, kind });
        expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\s{2,}/);
        expect(title.endsWith('.'), id).toBe(true);
      }
    }
  });
});
