import { cureStage, curingSaltForTarget } from '@larderwright/calc/cure';
import { type FormulaLine, formulaStage, scaleFormula, scaleToTotal } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { flowFromServed } from '@larderwright/calc/plan';
import { enteredEntry } from '@larderwright/calc/quantities';
import { cutSlices } from '@larderwright/calc/slicing';
import { purchaseG } from '@larderwright/calc/yield';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COUNTRY_TERRINE } from '../../fixtures/scenario-formulas.ts';
import { cureSlice, venisonTerrine } from './demo-formula.ts';

const composition = await loadIngredients();
const scaled = (lines: readonly FormulaLine[], factor: number): FormulaLine[] => {
  const made = scaleFormula(lines, factor);
  if (!made.ok) throw new Error(made.problem);
  return made.lines;
};

describe('a batch scaled as a whole', () => {
  test('holds the same nitrite on every weight, before the scale rounds', () => {
    const before = cureStage({ formula: venisonTerrine(), cure: cureSlice() }, { composition }).values;
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 200, noNaN: true }), (factor) => {
        const formula = { ...venisonTerrine(), lines: scaled(venisonTerrine().lines, factor) };
        const after = cureStage({ formula, cure: cureSlice() }, { composition }).values;
        for (const name of [
          'nitritePpmMeat',
          'nitritePpmTotal',
          'nitriteIonPpmTotal',
          'highestPpmMeat',
        ] as const)
          expect((after[name] ?? Number.NaN) / (before[name] ?? Number.NaN), name).toBeCloseTo(1, 6);
        const dose = after.dose?.dose;
        const one = before.dose?.dose;
        if (dose?.ok && one?.ok) expect(dose.exactG / one.exactG / factor).toBeCloseTo(1, 6);
      }),
    );
  });

  test('is conserved to 1 mg from what is bought to the last slice, through the formula as it is written down', () => {
    const share = (max: number) => fc.integer({ min: 0, max }).map((n) => n / 1000);
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 400_000 }),
        fc.integer({ min: 300, max: 1000 }).map((n) => n / 1000),
        fc.record({
          testG: fc.integer({ min: 0, max: 200 }),
          residueFraction: share(50),
          cookLossFraction: share(450),
          endLossFraction: share(100),
        }),
        (servedG, yieldFraction, losses) => {
          const flow = flowFromServed(servedG, losses);
          if (!flow) throw new Error('a sound plan was refused');
          const written = scaleToTotal(COUNTRY_TERRINE.slice.lines, flow.mixG);
          if (!written.ok) throw new Error(written.problem);
          const { mix } = formulaStage(
            { ...COUNTRY_TERRINE.slice, lines: written.lines },
            { composition },
          ).values;
          const sum = mix.lines.reduce((all, { massG }) => all + (massG ?? Number.NaN), 0);
          const mg = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-3);
          mg(sum, flow.mixG);
          mg(flow.testG + flow.residueG + flow.cookLossG + flow.endLossG + flow.servableG, sum);
          mg((purchaseG(sum, yieldFraction) ?? Number.NaN) * yieldFraction, sum);
          const cut = cutSlices({
            lengthMm: 290,
            massG: flow.finishedG,
            thicknessMm: 12,
            endTrimMm: 10,
            kerfMm: 0.5,
          });
          if (cut) mg(cut.slicesG + cut.endsG + cut.kerfG + cut.restG, flow.finishedG);
        },
      ),
    );
  });
});

describe('curing salt near its ceiling', () => {
  test('rounds down: with the target on the ceiling the scale never shows more than the exact dose', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(119.98, 150, 156.25, 200),
        fc.double({ min: 500, max: 50_000, noNaN: true }),
        fc.double({ min: 0.004, max: 0.1, noNaN: true }),
        fc.constantFrom(0.01, 0.1, 1),
        fc.boolean(),
        (ceilingPpm, basisMassG, nitriteFraction, readabilityG, countsInBasis) => {
          const dose = curingSaltForTarget({
            targetPpm: ceilingPpm,
            ceilingPpm,
            basisMassG,
            nitriteFraction,
            readabilityG,
            countsInBasis,
          });
          if (!dose.ok) return;
          expect(dose.doseG).toBeLessThanOrEqual(dose.exactG * (1 + 1e-9));
          expect(dose.allSourcesPpm).toBeLessThanOrEqual(ceilingPpm);
        },
      ),
    );
  });

  test('keeps its grams whatever the other weights are rounded to: rounding never moves onto the cure', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 9000, noNaN: true }), (porkG) => {
        const formula = venisonTerrine();
        const lines = formula.lines.map((line) =>
          line.id === 'venison' ? { ...line, amount: enteredEntry(porkG.toFixed(3), 'g') } : line,
        );
        const { values } = cureStage({ formula: { ...formula, lines }, cure: cureSlice() }, { composition });
        expect(values.weighing.map(({ massG }) => massG)).toEqual([5.4]);
      }),
    );
  });
});
