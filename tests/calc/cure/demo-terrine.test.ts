import { type CureContext, cureStage } from '@larderwright/calc/cure';
import { formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { cure, cureSlice, venisonTerrine, withLines } from './demo-formula.ts';

const composition = await loadIngredients();

function run(formula = venisonTerrine(), slice = cureSlice(), more: Partial<CureContext> = {}) {
  return cureStage({ formula, cure: slice }, { composition, ...more });
}

function verdict(result: ReturnType<typeof run>, id: string) {
  const found = result.verdicts.find((item) => item.id === id);
  if (!found) throw new Error(`no verdict ${id}`);
  return found;
}

function ids(result: ReturnType<typeof run>) {
  return result.findings.map((finding) => finding.id);
}

// The terrine is invented; every figure below is arithmetic on its grams (derived).
describe('the venison terrine', () => {
  test('5.4 g of 6.25 %: 120.5 on the meat block, 87.7 on everything, 58.5 of it as ion', () => {
    const { values } = run();
    expect(values.meatBlockG).toBe(2800);
    expect(values.totalG).toBeCloseTo(3850.1, 9);
    expect(values.nitritePpmMeat).toBeCloseTo(120.5, 1);
    expect(values.nitritePpmTotal).toBeCloseTo(87.7, 1);
    expect(values.nitriteIonPpmTotal).toBeCloseTo(58.5, 1);
    expect(values.nitriteIonPpmMeat).toBeCloseTo(80.4, 1);
  });

  test('the dose for 120 on the meat block is 5.376 g, weighed 5.4 g, ± 0.9 %', () => {
    const { dose } = run().values;
    expect(dose?.dose).toMatchObject({ ok: true, doseG: 5.4, exactG: expect.closeTo(5.376, 9) });
    expect(dose?.dose.ok && dose.dose.ppm).toBeCloseTo(120.536, 3);
    expect(dose?.dose.ok && dose.dose.weighingErrorFraction).toBeCloseTo(0.00926, 5);
  });

  test.each([
    ['us-federal', 'meat-block', 120.536, 156.25, 'confirmed'],
    ['great-britain', 'total', 87.661, 150, 'confirmed'],
    ['canada-federal', 'total', 87.661, 200, 'confirmed'],
    ['european-union-2025', 'total', 58.452, 80, 'memory'],
  ])(
    '%s counts on the %s: %f against %f passes, marked %s',
    (ruleSetId, weightBasis, ppm, limitPpm, mark) => {
      const one = verdict(run(venisonTerrine(), cureSlice({ ruleSetId })), 'cure.nitrite');
      expect(one).toMatchObject({ state: 'pass', reason: 'cure.within', mark });
      expect(one.params).toMatchObject({ weightBasis, limitPpm, ppm: expect.closeTo(ppm, 2) });
    },
  );

  test('the bacon’s unknown nitrite is bounded by 200 mg/kg and does not break the limit', () => {
    const result = run();
    expect(result.values.carried).toMatchObject([{ lineId: 'bacon', isBound: true, lowG: 0, highG: 0.036 }]);
    expect(result.values.highestPpmMeat).toBeCloseTo(133.4, 1);
    expect(result.values.highestPpmTotal).toBeCloseTo(97, 1);
    expect(result.findings).toContainEqual(
      expect.objectContaining({ id: 'cure.carried-bound', severity: 'note' }),
    );
  });

  test('salt from all sources is 63.1 g, 1.64 %, and 2.96 % on the water phase', () => {
    const { salt, cured } = run().values;
    expect(Math.abs((salt.totalG ?? 0) - 63.1)).toBeLessThan(0.15);
    expect((salt.fraction ?? 0) * 100).toBeCloseTo(1.64, 1);
    expect((cured.saltOnWaterFraction ?? 0) * 100).toBeCloseTo(2.96, 1);
    const of = (id: string) => salt.sources.find((item) => item.lineId === id)?.grams;
    expect(of('bacon')).toBeCloseTo(5.4, 9);
    expect(of('cure')).toBeCloseTo(5.0625, 9);
    expect(salt.plainListedG).toBe(47.5);
  });

  test('the facts for cooling keep both weight bases: 121 on meat, 88 on everything', () => {
    const { cured } = run().values;
    expect(cured.ingoingPpmMeat).toBeCloseTo(120.5, 1);
    expect(cured.ingoingPpmTotal).toBeCloseTo(87.7, 1);
    expect(cured.acceleratorPpmTotal).toBe(0);
    expect(cured.liverFraction).toBeCloseTo(330 / 3850.1, 9);
  });

  test('counted on everything it is colour only; on the meat block it is not', () => {
    expect(ids(run(venisonTerrine(), cureSlice({ ruleSetId: 'great-britain' })))).toContain(
      'cure.colour-only',
    );
    expect(ids(run())).not.toContain('cure.colour-only');
  });

  test('a complete line leaves nothing missing and no stop', () => {
    const result = run();
    expect(result.missing).toEqual([]);
    expect(result.findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
  });

  test('a formula result handed in gives the same as one worked out here', () => {
    const formula = venisonTerrine();
    const formulaResult = formulaStage(formula, { composition });
    expect(run(formula, cureSlice(), { formulaResult })).toEqual(run(formula));
  });

  test('the slices are left as they were', () => {
    const formula = venisonTerrine();
    const copy = structuredClone(formula);
    run(formula);
    expect(formula).toEqual(copy);
  });
});

describe('what is left in the product', () => {
  const codex = cureSlice({ ruleSetId: 'codex' });

  test('cannot be told before the finished product is weighed', () => {
    expect(verdict(run(venisonTerrine(), codex), 'cure.nitrite-residual')).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.finished-unknown',
      mark: 'memory',
    });
  });

  test('passes when even all that went in, on the finished weight, is within the limit', () => {
    // (337.5 + 36) mg in 3,497 g = 106.8 mg/kg = 71.2 as ion, against 80.
    const one = verdict(run(venisonTerrine(), codex, { finishedMassG: 3497 }), 'cure.nitrite-residual');
    expect(one).toMatchObject({ state: 'pass', reason: 'cure.residual-within' });
    expect(one.params.highestPpm).toBeCloseTo(71.2, 1);
  });

  test('is never failed by arithmetic: above the bound only a laboratory can tell', () => {
    const strong = venisonTerrine(cure('12', '6.25', '0'));
    expect(verdict(run(strong, codex, { finishedMassG: 3497 }), 'cure.nitrite-residual')).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.residual-to-be-measured',
    });
  });

  test('losses concentrate: a finished weight above the batch does not dilute the bound', () => {
    const light = verdict(run(venisonTerrine(), codex, { finishedMassG: 3000 }), 'cure.nitrite-residual');
    const heavy = verdict(run(venisonTerrine(), codex, { finishedMassG: 9000 }), 'cure.nitrite-residual');
    expect(Number(light.params.highestPpm)).toBeGreaterThan(Number(heavy.params.highestPpm));
    expect(heavy.params.highestPpm).toBeCloseTo((373.5 / 3.8501) * 0.6668, 1);
  });

  test('the European residual limit stands beside the one on what is added', () => {
    const result = run(venisonTerrine(), cureSlice({ ruleSetId: 'european-union-2025' }), {
      finishedMassG: 3497,
    });
    expect(verdict(result, 'cure.nitrite')).toMatchObject({ state: 'pass' });
    expect(verdict(result, 'cure.nitrite-residual')).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.residual-to-be-measured',
    });
  });

  test('a batch without nitrite passes at once', () => {
    const bare = withLines(venisonTerrine(null), { bacon: { carriedNitrite: enteredEntry('0', 'ppm') } });
    expect(verdict(run(bare, codex), 'cure.nitrite-residual')).toMatchObject({
      state: 'pass',
      reason: 'cure.nothing-added',
    });
  });
});

describe('as weighed', () => {
  test('the verdict is on what the scale showed', () => {
    const heavy = withLines(venisonTerrine(), { cure: { actual: enteredEntry('7.4', 'g') } });
    const result = run(heavy);
    expect(result.values.inUse).toBe('as-weighed');
    expect(result.values.plannedPpmMeat).toBeCloseTo(120.5, 1);
    expect(result.values.nitritePpmMeat).toBeCloseTo((7.4 * 62500) / 2800, 6);
    expect(verdict(result, 'cure.nitrite').state).toBe('fail');
  });

  test('less meat than planned raises the figure', () => {
    const short = withLines(venisonTerrine(), { venison: { actual: enteredEntry('900', 'g') } });
    expect(run(short).values.nitritePpmMeat).toBeCloseTo((5.4 * 62500) / 2700, 6);
  });

  test('a weight that cannot be read is unknown, not the plan', () => {
    const smudged = withLines(venisonTerrine(), { cure: { actual: enteredEntry('5,4 or so', 'g') } });
    const result = run(smudged);
    expect(result.values.nitritePpmMeat).toBeNull();
    expect(verdict(result, 'cure.nitrite')).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.cure-amount-unknown',
    });
  });

  test('a blank readability leaves the dose unsaid', () => {
    const result = run(venisonTerrine(), cureSlice({ scaleReadability: blankEntry('g') }));
    expect(result.values.dose).toBeNull();
    expect(result.missing).toContainEqual({ field: 'cure.scaleReadability', neededFor: 'cure.dose' });
    expect(ids(result)).toContain('cure.scale-unknown');
  });
});
