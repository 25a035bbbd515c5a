import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { cure, cureSlice, line, venisonTerrine, withLines } from './demo-formula.ts';
import { ids, porkAnd, run, severity, state } from './run-stage.ts';

describe('nitrite that comes with the ingredients', () => {
  test('a maker’s figure is counted in, on both bases', () => {
    const declared = withLines(venisonTerrine(), { bacon: { carriedNitrite: enteredEntry('50', 'ppm') } });
    const { values } = run(declared);
    expect(values.nitritePpmMeat).toBeCloseTo((337.5 + 9) / 2.8, 6);
    expect(values.nitritePpmTotal).toBeCloseTo((337.5 + 9) / 3.8501, 6);
    expect(values.highestPpmMeat).toBe(values.nitritePpmMeat);
    expect(values.cured.ingoingPpmMeat).toBeCloseTo(120.5, 1);
  });

  test('a powder that brings nitrite counts like any other source', () => {
    const formula = venisonTerrine(null);
    const celery = line('celery', 'seasoning', '20', null, { carriedNitrite: enteredEntry('20000', 'ppm') });
    const result = run({ ...formula, lines: [...formula.lines, celery] });
    expect(result.values.nitritePpmMeat).toBeCloseTo(400 / 2.8, 6);
  });

  test('an unknown garnish is bounded, and cannot-tell only where the bound could break the limit', () => {
    const near = withLines(venisonTerrine(), { cure: { amount: enteredEntry('6.5', 'g') } });
    const result = run(near);
    expect(state(result, 'cure.nitrite')).toBe('cannot-tell cure.carried-unknown');
    expect(severity(result, 'cure.carried-bound')).toBe('caution');
    const known = withLines(near, { bacon: { carriedNitrite: enteredEntry('0', 'ppm') } });
    expect(state(run(known), 'cure.nitrite')).toBe('pass cure.within');
  });

  test('a garnish nobody can name may be cured; a fresh one is not', () => {
    const formula = venisonTerrine();
    const unnamed = run({ ...formula, lines: [...formula.lines, line('dice', 'garnish', '100', null)] });
    expect(unnamed.values.carried.map(({ lineId }) => lineId)).toEqual(['bacon', 'dice']);
    expect(run(formula).values.carried.map(({ lineId }) => lineId)).toEqual(['bacon']);
  });

  test('vegetable garnish counts in the total and the salt, not in the meat block', () => {
    const formula = venisonTerrine();
    const more = run(withLines(formula, { chestnut: { amount: enteredEntry('480', 'g') } })).values;
    expect(more.meatBlockG).toBe(2800);
    expect(more.nitritePpmMeat).toBe(run(formula).values.nitritePpmMeat);
    expect(more.nitritePpmTotal).toBeLessThan(run(formula).values.nitritePpmTotal ?? 0);
  });
});

describe('salt', () => {
  test('plain salt left is what carried salt and curing salt leave of the target, on the final total (derived)', () => {
    const { salt } = run(porkAnd(cure('2.4', '6.25', '0'))).values;
    // 1000 g of pork at 0.15 % and 2.4 g of 93.75 % salt: (0.017 × 1002.4 − 1.5 − 2.25) ÷ 0.983.
    expect(salt.plain).toMatchObject({
      state: 'ok',
      plainSaltG: expect.closeTo((0.017 * 1002.4 - 1.5 - 2.25) / 0.983, 6),
    });
  });

  test('when the ingredients bring more than the target it is refused, and the one to blame is named', () => {
    const salty = porkAnd(cure('2.4', '6.25', '0'));
    const withBacon = {
      ...salty,
      lines: [...salty.lines, line('bacon', 'garnish', '2000', 'kitchen-bacon-dry-cured', { name: 'Bacon' })],
    };
    expect(run(withBacon).values.salt.plain).toMatchObject({
      state: 'over-supplied',
      overSupplier: { name: 'Bacon', saltG: 60 },
    });
  });

  test('with a weak pack salt and cure are one lever: the most nitrite the salt allows is told (derived)', () => {
    const result = run(porkAnd(cure('10', '0.6', '0'), '5'));
    const told = result.findings.find(({ id }) => id === 'cure.one-lever');
    expect(told?.params.mostPpm).toBeCloseTo(102.6, 1);
  });

  test('on everything in the bowl a dose allows for the plain salt that goes with it', () => {
    const formula = { ...porkAnd(cure('', '0.6', '0'), '30'), saltTarget: enteredEntry('1.7', '%') };
    const gb = cureSlice({ ruleSetId: 'great-britain', nitriteTarget: enteredEntry('80', 'ppm') });
    const asked = run(formula, gb).values.dose?.dose;
    const doseG = asked?.ok ? asked.exactG : Number.NaN;
    const plainG = (0.017 * (1000 + doseG) - 1.5 - 0.994 * doseG) / 0.983;
    expect((doseG * 6000) / (1000 + doseG + plainG)).toBeCloseTo(80, 6);
  });
});

describe('dose under each rule set', () => {
  test('a target above the ceiling is refused on the rule set’s own form', () => {
    const eu = cureSlice({ ruleSetId: 'european-union-2025', nitriteTarget: enteredEntry('120', 'ppm') });
    const result = run(porkAnd(cure('', '6.25', '0')), eu);
    expect(result.values.dose?.dose).toMatchObject({ ok: false, reason: 'target-over-ceiling' });
    expect(severity(result, 'cure.target-over-ceiling')).toBe('stop');
  });

  test('declared garnish nitrite counts against the ceiling of a dose', () => {
    const rich = withLines(venisonTerrine(), { bacon: { carriedNitrite: enteredEntry('200', 'ppm') } });
    const result = run(rich, cureSlice({ nitriteTarget: enteredEntry('150', 'ppm') }));
    expect(result.values.dose?.dose).toMatchObject({ ok: false, reason: 'other-sources-over-ceiling' });
  });

  test('an unknown meat weight gives no dose', () => {
    const open = withLines(porkAnd(cure('', '6.25', '0')), { pork: { amount: blankEntry('g') } });
    expect(run(open).values.dose).toBeNull();
  });
});

describe('people, products and floors', () => {
  test('the second person is asked for by a note, and one person twice by a caution', () => {
    expect(severity(run(venisonTerrine(), cureSlice({ checkedBy: ' ' })), 'cure.second-person-missing')).toBe(
      'note',
    );
    expect(severity(run(venisonTerrine(), cureSlice({ checkedBy: 'a. cook ' })), 'cure.same-person')).toBe(
      'caution',
    );
    expect(ids(run(venisonTerrine()))).not.toContain('cure.second-person-missing');
  });

  test('a batch without curing salt is spared the notes on handling it', () => {
    const bare = run(
      venisonTerrine(null),
      cureSlice({ weighedBy: '', checkedBy: '', scaleReadability: blankEntry('g') }),
    );
    expect(ids(bare)).toEqual(['cure.carried-bound']);
    expect(bare.missing).toEqual([]);
    expect(state(bare, 'cure.nitrite')).toBe('pass cure.within');
  });

  test('under the United States less than 120 is outside the keep-refrigerated policy', () => {
    expect(severity(run(porkAnd(cure('1.9', '6.25', '0'))), 'cure.keep-refrigerated-policy')).toBe('note');
    expect(severity(run(porkAnd(cure('2', '6.25', '0'))), 'cure.keep-refrigerated-policy')).toBe('none');
  });

  test('in Canada less than 100 on the raw batch may not be called cured', () => {
    const canada = cureSlice({ ruleSetId: 'canada-federal' });
    expect(severity(run(porkAnd(cure('1.5', '6.25', '0')), canada), 'cure.not-called-cured')).toBe('note');
    expect(severity(run(porkAnd(cure('2', '6.25', '0')), canada), 'cure.not-called-cured')).toBe('none');
    expect(severity(run(venisonTerrine(null), canada), 'cure.not-called-cured')).toBe('none');
  });

  test('liver above 15 % of the mix uses nitrite up (common practice, no source)', () => {
    const liverRich = withLines(venisonTerrine(), { liver: { amount: enteredEntry('900', 'g') } });
    expect(severity(run(liverRich), 'cure.liver-takes-nitrite')).toBe('note');
    expect(ids(run(venisonTerrine()))).not.toContain('cure.liver-takes-nitrite');
  });

  test('fish, fresh sausage and infants are spoken of', () => {
    const trout = withLines(porkAnd(cure('2.4', '6.25', '0')), { pork: { ingredientId: 'kitchen-trout' } });
    expect(severity(run(trout), 'cure.fish')).toBe('caution');
    const sausage = { ...porkAnd(cure('2.4', '6.25', '0')), familyId: 'fresh-sausage' };
    expect(severity(run(sausage), 'cure.fresh-sausage')).toBe('caution');
    expect(run(sausage).findings).toContainEqual(
      expect.objectContaining({ id: 'cure.not-for-infants', caution: 'nitrite-not-for-infants' }),
    );
  });

  test('an accelerator is counted on both bases and judged where there is a limit', () => {
    const formula = venisonTerrine();
    const withIt = (grams: string) =>
      run({
        ...formula,
        lines: [...formula.lines, line('erythorbate', 'seasoning', grams, 'sodium-erythorbate')],
      });
    const ok = withIt('1.5');
    expect(ok.values.cured.acceleratorPpmMeat).toBeCloseTo(1500 / 2.8, 6);
    expect(state(ok, 'cure.accelerator')).toBe('pass cure.within');
    expect(state(withIt('1.6'), 'cure.accelerator')).toBe('fail cure.over');
    expect(state(run(formula), 'cure.accelerator')).toBe('none');
  });
});
