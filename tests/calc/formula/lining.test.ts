import { assess, newBatch } from '@larderwright/calc/batch';
import { cureStage } from '@larderwright/calc/cure';
import { COMPONENTS, type FormulaLine, formulaStage, scaleFormula } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { newCrustSlice } from '@larderwright/calc/mould';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeLine, makeSlice } from '../../fixtures/scenario-formulas.ts';
import { terrineMould } from '../../fixtures/terrine-mould.ts';
import { cureSlice } from '../cure/demo-formula.ts';

const composition = await loadIngredients();

const percent = (text: string) => enteredEntry(text, '%');
const made = (water: string, protein: string, fat: string, salt: string) => ({
  declared: { water: percent(water), protein: percent(protein), fat: percent(fat), salt: percent(salt) },
});
const STRONG = { cure: { nitrite: percent('6.25'), nitrate: percent('0') } };

/** 2,000 g of an invented mix with 1.5 % of salt and 200 g of invented bacon at 3 % round it. */
function lines(liningG = '200', change: Partial<FormulaLine> = {}): FormulaLine[] {
  return [
    makeLine('pork', 'lean', null, '1200', made('70', '20', '9', '0')),
    makeLine('fat', 'fat', null, '770', made('10', '3', '86', '0')),
    makeLine('salt', 'salt', null, '30'),
    makeLine('bacon', 'lining', null, liningG, { name: 'Bacon', ...made('45', '15', '36', '3'), ...change }),
  ];
}
const stage = (of: FormulaLine[], finishedMassG: number | null = null) =>
  formulaStage(makeSlice(of, { saltTarget: percent('1.5') }), { composition, finishedMassG });

describe('a lining with its own salt and fat', () => {
  test('is in the slice and not in the mix: salt 36 g of 2,200, fat 842.2 of 2,200 (derived)', () => {
    const { mix, lined } = stage(lines()).values;
    // 30 + 200 × 3 %; 1,200 × 9 % + 770 × 86 % + 200 × 36 %.
    expect(lined).toMatchObject({ liningG: 200, totalG: 2200, liningSaltG: 6 });
    expect(lined?.salt.fraction).toBeCloseTo(36 / 2200, 12);
    expect(lined?.fat.fraction).toBeCloseTo(842.2 / 2200, 12);
    expect(mix.totalG).toBe(2000);
    expect(mix.meatBlockG).toBe(1970);
    expect(mix.salt.fraction).toBeCloseTo(0.015, 12);
  });

  test('leaves the plain salt of the target and the salt on water to the bowl', () => {
    const [bare, lined] = [stage(lines('0')).values, stage(lines()).values];
    expect(bare.lined).toBeNull();
    expect(lined.plainSalt).toEqual(bare.plainSalt);
    expect(lined.mix.saltOnWaterFraction).toBe(bare.mix.saltOnWaterFraction);
  });

  test('says what it brings beside the target', () => {
    const note = stage(lines()).findings.find(({ id }) => id === 'formula.lining-salt');
    expect(note).toMatchObject({ severity: 'note', field: 'formula.saltTarget' });
    expect(note?.params).toMatchObject({
      liningSaltG: 6,
      mixPercent: expect.closeTo(1.5, 9),
      linedPercent: expect.closeTo(1.636, 3),
    });
    expect(stage(lines('0')).findings.map(({ id }) => id)).not.toContain('formula.lining-salt');
  });

  test('of unknown salt cannot be told, lies between bounds, and is named', () => {
    const open = lines('200', { declared: { ...made('', '', '', '').declared } });
    const { values, findings, missing } = stage(open);
    expect(values.lined?.salt.fraction).toBeNull();
    expect(values.lined?.liningSaltG).toBeNull();
    expect(values.lined?.salt.minFraction).toBeCloseTo(30 / 2200, 12);
    expect(values.mix.salt.fraction).toBeCloseTo(0.015, 12);
    const unknown = findings.find(({ id }) => id === 'formula.composition-unknown');
    expect(unknown?.params.names).toBe('Bacon');
    expect(missing).toContainEqual({
      field: 'formula.lines.bacon.declared.salt',
      neededFor: 'formula.lined',
    });
  });

  test('of unknown weight leaves the mix told and the slice untold', () => {
    const { values, missing } = stage(lines(''));
    expect(values.lined).toMatchObject({ liningG: null, totalG: null, liningSaltG: null });
    expect(values.mix.totalG).toBe(2000);
    expect(missing).toContainEqual({ field: 'formula.lines.bacon.amount', neededFor: 'formula.lined' });
  });

  test('goes into the salt of the finished slice: 36 g on 1,980 g is 1.82 % (derived)', () => {
    const { finished } = stage(lines(), 1980).values;
    expect(finished?.lossFraction).toBeCloseTo(0.1, 12);
    expect(finished?.saltFraction).toBeCloseTo(36 / 1980, 12);
    expect(stage(lines(), 2300).values.finished).toBeNull();
    expect(stage(lines()).values.finished).toBeNull();
  });
});

describe('a lining and the cure', () => {
  const cured = (ruleSetId: string, change: Partial<FormulaLine>) =>
    cureStage(
      {
        formula: makeSlice([
          ...lines('200', change),
          makeLine('cure', 'curing-salt', null, '4', { name: 'Curing salt', ...STRONG }),
        ]),
        cure: cureSlice({ ruleSetId }),
      },
      { composition },
    );
  const nitrite = (result: ReturnType<typeof cured>) =>
    result.verdicts.find(({ id }) => id === 'cure.nitrite')?.params.ppm;

  test('never thins a dose: 250 mg on 1,970 g of meat and on 2,004 g of mix, lined or not', () => {
    const bare = { carriedNitrite: enteredEntry('0', 'ppm') };
    const { values } = cured('us-federal', bare);
    expect(values.nitritePpmMeat).toBeCloseTo(250 / 1.97, 9);
    expect(values.nitritePpmTotal).toBeCloseTo(250 / 2.004, 9);
    expect(values.nitritePpmLined).toBeCloseTo(250 / 2.204, 9);
    expect(nitrite(cured('us-federal', bare))).toBeCloseTo(250 / 1.97, 9);
    // The law counts on the product; the thinner figure with the lining is shown and not judged.
    expect(nitrite(cured('great-britain', bare))).toBeCloseTo(250 / 2.004, 9);
  });

  test('that carries more than the mix makes the product the worse of the two', () => {
    const strong = { carriedNitrite: enteredEntry('500', 'ppm') };
    // 250 mg in the mix and 100 in the lining on 2,204 g, against 250 on 2,004. Derived.
    expect(nitrite(cured('great-britain', strong))).toBeCloseTo(350 / 2.204, 9);
    expect(nitrite(cured('us-federal', strong))).toBeCloseTo(250 / 1.97, 9);
    expect(cured('great-britain', strong).values.nitritePpmLined).toBeCloseTo(350 / 2.204, 9);
  });
});

describe('what must always hold', () => {
  const grams = fc.integer({ min: 1, max: 50_000 });

  test('mass is conserved to 1 mg: mix and lining add up, component by component', () => {
    fc.assert(
      fc.property(grams, grams, grams, (porkG, fatG, liningG) => {
        const [pork, fat, salt, bacon] = lines(String(liningG));
        if (!pork || !fat || !salt || !bacon) throw new Error('four lines');
        const all = [
          { ...pork, amount: enteredEntry(String(porkG), 'g') },
          { ...fat, amount: enteredEntry(String(fatG), 'g') },
          salt,
          bacon,
        ];
        const { mix, lined } = stage(all).values;
        expect(lined?.totalG).toBeCloseTo((mix.totalG ?? 0) + liningG, 3);
        for (const name of COMPONENTS) {
          const share = { water: 0.45, protein: 0.15, fat: 0.36, salt: 0.03 }[name];
          expect(lined?.[name].grams).toBeCloseTo((mix[name].grams ?? 0) + liningG * share, 3);
        }
      }),
    );
  });

  test('scaling moves mix and lining together', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (factor) => {
        const scaled = scaleFormula(lines(), factor);
        if (!scaled.ok) throw new Error(scaled.problem);
        const [before, after] = [stage(lines()).values.lined, stage(scaled.lines).values.lined];
        expect(after?.salt.fraction).toBeCloseTo(before?.salt.fraction ?? Number.NaN, 7);
        expect(after?.liningG).toBeCloseTo(200 * factor, 3);
      }),
    );
  });
});

describe('a lining in a batch', () => {
  const batch = (of: FormulaLine[]) => ({
    ...newBatch({ id: 'b', at: '2026-11-25T08:00:00+00:00', zone: 'UTC' }),
    formula: makeSlice(of),
    mould: { moulds: [terrineMould({ liningKind: 'bacon' })], density: enteredEntry('1.04', 'g/mL') },
    crust: {
      ...newCrustSlice(),
      mouldId: 'm1',
      pieceWidth: enteredEntry('45', 'mm'),
      pieceOverlap: enteredEntry('6', 'mm'),
      pieceMass: enteredEntry('25', 'g'),
      pieceSalt: percent('3'),
    },
  });
  const run = (of: FormulaLine[]) => assess(batch(of), { composition, today: '2026-11-25' });

  test('is asked for while the formula has none, and no longer once it has', () => {
    const ids = (of: FormulaLine[]) => run(of).findings.map(({ id }) => id);
    expect(ids(lines('0'))).toContain('mould.lining-in-formula');
    expect(ids(lines())).not.toContain('mould.lining-in-formula');
  });

  test('counts its salt once: the slices of the crust worksheet say so and add nothing', () => {
    const counted = (of: FormulaLine[]) =>
      run(of).findings.find(({ id }) => id === 'crust.lining-salt')?.params.counted;
    expect(counted(lines('0'))).toBe('no');
    expect(counted(lines())).toBe('yes');
    // 30 g of plain salt and 6 of the lining, whatever the crust worksheet reckons beside it.
    expect(run(lines()).formula.values.lined?.salt.grams).toBeCloseTo(36, 9);
  });
});
