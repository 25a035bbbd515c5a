import { formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { mouldStage } from '@larderwright/calc/mould';
import {
  newPlanLine,
  newPlanSlice,
  newPlanStep,
  type PlanContext,
  type PlanLine,
  type PlanSlice,
  planStage,
  TERRINE_STEPS,
} from '@larderwright/calc/plan';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { planWords } from '../../../worksheets/words/plan.ts';
import { COUNTRY_TERRINE } from '../../fixtures/scenario-formulas.ts';
import { terrineMould } from '../../fixtures/terrine-mould.ts';

const composition = await loadIngredients();
const { mix } = formulaStage(COUNTRY_TERRINE.slice, { composition }).values;

const MOULD = terrineMould();
const moulds = mouldStage(
  { moulds: [MOULD], density: enteredEntry('1.04', 'g/mL') },
  { totalMassG: mix.totalG },
).values;

function context(change: Partial<PlanContext> = {}): PlanContext {
  return {
    portions: enteredEntry('44', 'count'),
    familyId: 'country-terrine',
    lines: mix.lines,
    totalG: mix.totalG,
    moulds: moulds.moulds,
    capacityG: moulds.capacityG,
    now: null,
    ...change,
  };
}

const PRICES: Readonly<Record<string, string>> = {
  venison: '14.00',
  pork: '6.50',
  'back-fat': '3.00',
  liver: '4.00',
  chestnut: '11.00',
  bacon: '12.00',
};

/** The invented terrine of venison as it was costed: six prices, the rest in the sundries. */
function venison(change: Partial<PlanSlice> = {}): PlanSlice {
  return {
    ...newPlanSlice(),
    portionMass: enteredEntry('72', 'g'),
    cookLoss: enteredEntry('6', '%'),
    lines: mix.lines.map(({ lineId }): PlanLine => {
      const price = PRICES[lineId];
      return price === undefined
        ? { ...newPlanLine(lineId), priceBasis: 'sundries' }
        : { ...newPlanLine(lineId), price: enteredEntry(price, 'money') };
    }),
    sundries: enteredEntry('7.40', 'money'),
    currency: 'cu',
    ...change,
  };
}
const ids = (slice: PlanSlice, of = context()) => planStage(slice, of).findings.map(({ id }) => id);

describe('the stage of the plan', () => {
  it('costs an invented terrine as its kitchen did: 34.38 a batch, 0.78 a portion, 2.60 at 70 %', () => {
    // Invented batch: two terrines of 1,860 g, 60 g test, 70 g residue; prices as given. Sums derived.
    const fill = { moulds: moulds.moulds, capacityG: 3720 };
    const slice = venison({
      want: 'moulds',
      testPoach: enteredEntry('60', 'g'),
      residue: enteredEntry('1.849', '%'),
      endLoss: enteredEntry('9.4', '%'),
    });
    const { values, missing } = planStage(slice, context(fill));
    expect(values.factor).toBeCloseTo(1, 4);
    expect(values.flow?.finishedG).toBeCloseTo(3496.8, 6);
    expect(values.costs.food).toBeCloseTo(34.38, 2);
    expect(values.portions).toBe(44);
    expect(values.costs.foodPerPortion).toBeCloseTo(0.7814, 3);
    expect(values.pricePerPortion.exTax).toBeCloseTo(2.6, 2);
    expect(values.pricePerPortion.incTax).toBe(null);
    expect(missing).toEqual([]);
  });

  it('scales every line alike, salt and cure exactly, and sends strong aromatics to be tasted', () => {
    // Common practice, no source: aromatics 85 to 95 % above a fivefold batch.
    const big = planStage(venison({ want: 'finished', finished: enteredEntry('21', 'kg') }), context());
    const { factor, purchases } = big.values;
    expect(factor).toBeGreaterThan(5);
    for (const { lineId, massG } of purchases) {
      const planned = mix.lines.find((line) => line.lineId === lineId)?.massG ?? Number.NaN;
      expect(massG).toBeCloseTo(planned * (factor ?? Number.NaN), 9);
    }
    expect(big.findings.map(({ id }) => id)).toContain('plan.taste-aromatics');
    expect(ids(venison())).not.toContain('plan.taste-aromatics');
  });

  it('goes from portions to whole moulds and tells of one hardly filled', () => {
    // 44 × 72 = 3,168; ÷ 0.97 ÷ 0.94 = 3,474.4 g: two moulds of 1,862 g, the second 86.6 % full. Derived.
    const { values } = planStage(venison(), context());
    expect(values.moulds[0]?.needed).toMatchObject({ count: 2, lastFraction: expect.closeTo(0.8656, 3) });
    expect(ids(venison())).toEqual([]);
    expect(ids(venison(), context({ portions: enteredEntry('50', 'count') }))).toEqual([
      'plan.last-mould-low',
      'plan.moulds-too-few',
    ]);
  });

  it('buys more than it needs of what is trimmed', () => {
    const slice = venison();
    const lines = slice.lines.map((line) =>
      line.lineId === 'venison' ? { ...line, trimYield: enteredEntry('80', '%') } : line,
    );
    const [first] = planStage({ ...slice, lines }, context()).values.purchases;
    expect((first?.massG ?? 0) / (first?.purchaseG ?? 1)).toBeCloseTo(0.8, 12);
  });

  it('warns when more goes into the chiller or the bath than they take', () => {
    const tight = venison({
      chillerCapacity: enteredEntry('3', 'kg'),
      bathCapacity: enteredEntry('1', 'count'),
    });
    const { findings, values } = planStage(tight, context());
    expect(findings.map(({ id, severity, caution }) => [id, severity, caution])).toEqual([
      ['plan.chiller-over', 'caution', 'chill-depth'],
      ['plan.bath-over', 'caution', undefined],
    ]);
    expect(values.chiller).toMatchObject({ runs: 2, over: true });
    const roomy = venison({
      chillerCapacity: enteredEntry('4', 'kg'),
      bathCapacity: enteredEntry('2', 'count'),
    });
    expect(ids(roomy)).toEqual([]);
  });

  it('says weight, not part of an egg', () => {
    const slice = venison();
    const lines = slice.lines.map(
      (line): PlanLine =>
        line.lineId === 'egg'
          ? {
              ...line,
              priceBasis: 'each',
              price: enteredEntry('0.30', 'money'),
              eachMass: enteredEntry('50', 'g'),
            }
          : line,
    );
    expect(ids({ ...slice, lines })).toEqual(['plan.part-pieces']);
  });

  it('notes losses outside the habit and refuses one of everything', () => {
    const bare = { moulds: [], capacityG: null };
    const wide = venison({ cookLoss: enteredEntry('20', '%') });
    expect(ids(wide, context(bare))).toEqual(['plan.loss-outside-band']);
    expect(ids(wide, context({ ...bare, familyId: null }))).toEqual([]);
    expect(ids(venison({ cookLoss: enteredEntry('100', '%') }))).toEqual(['plan.loss-is-all']);
    expect(planStage(venison({ cookLoss: enteredEntry('100', '%') }), context()).values.flow).toBe(null);
  });

  it('runs the steps backwards and says when it is too late', () => {
    const steps = TERRINE_STEPS.map((kind) => newPlanStep(kind, kind));
    const slice = venison({ servingAt: '2026-05-08T12:00', steps });
    const { values, missing } = planStage(slice, context());
    // Slicing has no usual length, so nothing before it has a time until somebody writes one.
    expect(values.timeline.at(-1)?.latestStart).toBe(null);
    expect(missing.map(({ field }) => field)).toContain('plan.steps.slice.least');
    const known = steps.map((step) =>
      step.least.text === '' ? { ...step, least: enteredEntry('30', 'min') } : step,
    );
    const filled = venison({ servingAt: '2026-05-08T12:00', steps: known });
    const { timeline } = planStage(filled, context()).values;
    // 12 + 2 + 1 + 12 + 24 h and six half hours: 54 h before noon on the 8th. Derived.
    expect(timeline[0]?.latestStart).toBe('2026-05-06T06:00');
    // 48 + 2 + 1 + 24 + 72 + 3 = 150 h. Derived.
    expect(timeline[0]?.earliestStart).toBe('2026-05-02T06:00');
    expect(ids(filled, context({ now: '2026-05-06T06:00' }))).toEqual([]);
    expect(ids(filled, context({ now: '2026-05-06T06:01' }))).toEqual(['plan.too-late']);
    const reversed = filled.steps.map((step) =>
      step.kind === 'cure' ? { ...step, most: enteredEntry('1', 'h') } : step,
    );
    expect(ids({ ...filled, steps: reversed })).toEqual(['plan.most-under-least']);
    expect(ids(venison({ servingAt: 'soon' }))).toEqual(['plan.not-a-date']);
  });

  it('prices a margin on food, labour and overhead, and cannot while one is blank', () => {
    const margin = venison({
      pricing: 'margin',
      margin: enteredEntry('20', '%'),
      tax: enteredEntry('10', '%'),
      labour: enteredEntry('1:30', 'min'),
      labourRate: enteredEntry('20', 'money'),
      overhead: enteredEntry('5', 'money'),
    });
    const { costs, pricePerPortion } = planStage(margin, context()).values;
    expect(costs.labour).toBeCloseTo(30, 12);
    expect(costs.full).toBeCloseTo((costs.food ?? Number.NaN) + 35, 9);
    expect(pricePerPortion.incTax).toBeCloseTo(((costs.fullPerPortion ?? Number.NaN) / 0.8) * 1.1, 9);
    const blank = planStage({ ...margin, overhead: blankEntry('money') }, context());
    expect(blank.values.costs.full).toBe(null);
    expect(blank.values.pricePerPortion.exTax).toBe(null);
    expect(blank.missing).toEqual([{ field: 'plan.overhead', neededFor: 'plan.full-cost' }]);
    expect(ids({ ...margin, margin: enteredEntry('100', '%') })).toEqual(['plan.no-price']);
    expect(ids(venison({ pricing: 'food-cost', foodCost: enteredEntry('0', '%') }))).toEqual([
      'plan.no-price',
    ]);
  });

  it('asks for what is blank and takes nothing for it', () => {
    const empty = planStage(
      newPlanSlice(),
      context({ portions: blankEntry('count'), lines: [], totalG: null }),
    );
    expect(empty.values).toMatchObject({ flow: null, factor: null, portions: null, purchases: [] });
    expect(empty.values.costs.food).toBe(null);
    expect(empty.missing.map(({ field }) => field)).toEqual(['product.portions', 'formula.lines']);
    const unpriced = planStage(venison({ lines: [] }), context());
    expect(unpriced.values.costs.food).toBe(null);
    expect(unpriced.missing).toHaveLength(mix.lines.length);
    for (const text of ['', 'NaN', 'Infinity', '-5', '1,234']) {
      const bad = planStage(venison({ portionMass: enteredEntry(text, 'g') }), context());
      expect(bad.values.flow).toBe(null);
      expect(bad.missing.map(({ field }) => field)).toContain('plan.portionMass');
    }
    expect(planStage(venison({ want: 'moulds' }), context({ capacityG: null })).missing).toEqual([
      { field: 'mould.moulds', neededFor: 'plan.masses' },
    ]);
  });

  it('does not change what it is given', () => {
    const slice = venison();
    const before = structuredClone(slice);
    planStage(slice, context());
    expect(slice).toEqual(before);
  });

  it('says every finding in a whole sentence', () => {
    const params = {
      loadG: 12_000,
      capacityG: 10_000,
      runs: 2,
      moulds: 4,
      capacity: 2,
      count: 3,
      lastFraction: 0.2,
      fillG: 4000,
      overG: 276,
      name: 'Egg',
      pieces: 3.2,
      whole: 4,
      massG: 160,
      factor: 6,
      minFraction: 0.85,
      maxFraction: 0.95,
      what: 'cookLoss',
      lossFraction: 0.2,
      family: 'Country terrine',
      latestStart: '2026-05-06T06:00',
      leastMin: 60,
      mostMin: 30,
      method: 'margin',
    };
    for (const [id, say] of Object.entries(planWords)) {
      const { title, body } = say(params);
      expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\s{2,}/);
      expect(title.endsWith('.'), id).toBe(true);
    }
  });
});
