import { assess, type Batch, issueAssessment, labelOf, newBatch } from '@larderwright/calc/batch';
import { newBrineSlice } from '@larderwright/calc/brine';
import { newDryCurePiece, newDryCureSlice } from '@larderwright/calc/dry-cure';
import { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import { newLabelSlice } from '@larderwright/calc/label';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { countryTerrine } from '../../../content/demo/country-terrine.ts';
import { muttonHam } from '../../../content/demo/mutton-ham.ts';
import { buildSheet } from '../../../worksheets/batch-sheet/build/index.ts';
// It brings the words of every subject.
import '../../../worksheets/batch-sheet/compute.ts';
import { loadFormula } from '../../../worksheets/batch-formula/compute.ts';
import { loadLabel } from '../../../worksheets/label/compute.ts';
import { loadCure } from '../../../worksheets/salt-and-cure/compute.ts';

const composition = await loadIngredients();
const details = await loadIngredientDetails();
const NOW = '2026-11-27T10:00:00+00:00';

function sheetOf(batch: Batch) {
  const assessment = assess(batch, { composition, today: NOW });
  return { assessment, sheet: buildSheet(batch, assessment, NOW) };
}

const labelled: Batch = { ...muttonHam, label: { ...newLabelSlice(), loss: 'water' } };

describe('a brined muscle', () => {
  const { assessment, sheet } = sheetOf(muttonHam);

  it('has on its sheet the salt and nitrite of the brine, and none of the bare meat', () => {
    expect(sheet.salt).toMatchObject({ target: null, total: null, onWater: null, sources: null });
    // Derived: 86.37 g of salt shared over 1728 g of water in the meat and 1200 g outside; 50.97 g in 2400 g of meat.
    expect(sheet.salt.elsewhere).toMatch(/2\.12\s%.*bare meat/);
    expect(sheet.cure?.lines).toMatchObject([
      {
        strength: { text: expect.stringMatching(/^6\.25\s%$/) },
        actual: { text: expect.stringMatching(/^6\.9\sg$/) },
        lot: 'CS-0502',
      },
    ]);
    // Derived: 6.9 g × 6.25 % = 431.25 mg, all of it in 2.4 kg of meat.
    expect(sheet.cure?.ppm).toMatch(/at most 179\.7 on the meat/);
    expect(JSON.stringify([sheet.salt, sheet.cure])).not.toMatch(/\b0(?:\.\d+)?\s(?:%|on meat block)/);
  });

  it('passes no limit for nothing added, which is only true of the bare meat', () => {
    expect(assessment.verdicts.filter(({ reason }) => /nothing-added|no-nitrate/.test(reason))).toEqual(
      assessment.brine?.verdicts.filter(({ reason }) => /nothing-added|no-nitrate/.test(reason)),
    );
    expect(assessment.findings.map(({ id }) => id)).not.toContain('formula.salt-off-target');
    const { figures } = issueAssessment(muttonHam, assessment, composition, NOW);
    expect(figures).toMatchObject({
      saltFraction: null,
      saltOnWaterFraction: null,
      nitritePpmMeat: null,
      nitritePpmTotal: null,
    });
  });

  it('is not for children under three on its sheet and label, unless it is written that no nitrite is wanted', () => {
    expect(sheet.warnings.audience).toMatch(/Nitrite: not for under-3s/);
    expect(labelOf(labelled, composition, details).values.warnings).toContain('nitrite-infants');
    const { brine } = muttonHam;
    if (!brine) throw new Error('the demo has lost its brine');
    const actual = { ...brine.actual, curingSalt: enteredEntry('0', 'g') };
    const salted = { ...muttonHam, brine: { ...brine, nitriteTarget: enteredEntry('0', 'ppm'), actual } };
    expect(sheetOf(salted).sheet.warnings.audience).not.toMatch(/Nitrite/);
  });

  it('leaves the salt of its label open until somebody writes what the meat took up', async () => {
    const { values, findings } = labelOf(labelled, composition, details);
    const salt = () => values.euTable?.find(({ id }) => id === 'salt')?.declared;
    expect(salt()).toBeNull();
    expect(values.euTable?.find(({ id }) => id === 'protein')?.declared).not.toBeNull();
    expect(findings.map(({ id }) => id)).toContain('label.cure-not-listed');
    expect(JSON.stringify((await loadLabel())(labelled).blocks)).not.toMatch(/"Salt","0/);
  });

  it('has no figure of salt or nitrite on the two worksheets of a mixed bowl', async () => {
    const cure = (await loadCure())(muttonHam);
    expect(cure).toMatchObject({ isReckonedElsewhere: true, verdicts: [] });
    expect(cure.cure).toMatchObject({ nitritePpmMeat: null, nitritePpmTotal: null, dose: null });
    const formula = (await loadFormula())(muttonHam);
    expect(formula.isSaltElsewhere).toBe(true);
    expect(formula.values.mix.salt.fraction).toBeNull();
  });
});

describe('a muscle cured dry', () => {
  it('names its pieces in the heavy box, and tells no mg/kg that nobody knows', () => {
    const piece = { ...newDryCurePiece('p1'), name: 'Left loin', skinOff: enteredEntry('1000', 'g') };
    const dryCure = {
      ...newDryCureSlice(),
      pieces: [{ ...piece, curingSaltActual: enteredEntry('2.4', 'g') }],
      pack: {
        name: '',
        lot: 'D-7',
        strength: { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('', '%') },
      },
    };
    const { formula } = muttonHam;
    const { sheet } = sheetOf({ ...newBatch({ id: 'a', at: NOW, zone: 'UTC' }), formula, dryCure });
    expect(sheet.cure?.lines[0]).toMatchObject({ name: expect.stringContaining('Left loin'), lot: 'D-7' });
    expect(sheet.cure?.ppm).toMatch(/nobody can tell/);
    expect(sheet.salt.elsewhere).toMatch(/______\s%/);
  });
});

describe('a terrine whose cook has looked at the brine worksheet', () => {
  it('keeps all of its own figures', () => {
    const looked = { ...countryTerrine, brine: newBrineSlice(), dryCure: newDryCureSlice() };
    const [own, after] = [countryTerrine, looked].map((batch) => sheetOf(batch).sheet);
    expect(after?.salt).toEqual(own?.salt);
    expect(after?.cure).toEqual(own?.cure);
    expect(own?.salt.total).not.toBeNull();
  });
});
