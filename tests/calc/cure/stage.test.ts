import { type CureContext, type CureSlice, cureStage } from '@larderwright/calc/cure';
import type { FormulaLine, FormulaSlice } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cure, cureSlice, line, venisonTerrine, withLines } from './demo-formula.ts';

const composition = await loadIngredients();

function run(formula: FormulaSlice, slice: CureSlice = cureSlice(), more: Partial<CureContext> = {}) {
  return cureStage({ formula, cure: slice }, { composition, ...more });
}

type Run = ReturnType<typeof run>;

function state(result: Run, id: string) {
  const found = result.verdicts.find((item) => item.id === id);
  return found ? `${found.state} ${found.reason}` : 'none';
}

function ids(result: Run) {
  return result.findings.map(({ id }) => id);
}

function severity(result: Run, id: string) {
  return result.findings.find((finding) => finding.id === id)?.severity ?? 'none';
}

/** A kilogram of pork with one curing salt and some plain salt. */
function porkAnd(curingSalt: FormulaLine, salt = '12'): FormulaSlice {
  return {
    familyId: 'country-terrine',
    lines: [
      line('pork', 'lean', '1000', 'kitchen-pork-shoulder-80-20'),
      line('salt', 'salt', salt, 'salt'),
      curingSalt,
    ],
    saltTarget: enteredEntry('1.7', '%'),
  };
}

describe('without a rule set', () => {
  test('every limit is cannot-tell, whatever the figures', () => {
    for (const formula of [venisonTerrine(), venisonTerrine(null), venisonTerrine(cure('60', '6.25', '0'))]) {
      const result = run(formula, cureSlice({ ruleSetId: null }));
      expect(result.verdicts.map((one) => [one.id, one.state, one.reason])).toEqual([
        ['cure.nitrite', 'cannot-tell', 'cure.no-rule-set'],
        ['cure.nitrate', 'cannot-tell', 'cure.no-rule-set'],
      ]);
      expect(result.missing).toContainEqual({ field: 'cure.ruleSetId', neededFor: 'cure.verdict' });
      expect(result.values.dose).toBeNull();
    }
  });

  test('a rule set that is not carried here is cannot-tell too', () => {
    expect(state(run(venisonTerrine(), cureSlice({ ruleSetId: 'moon' })), 'cure.nitrite')).toBe(
      'cannot-tell cure.rule-set-unknown',
    );
  });

  test('a gross error is stopped all the same', () => {
    const result = run(porkAnd(cure('20', '6.25', '0')), cureSlice({ ruleSetId: null }));
    expect(severity(result, 'cure.gross-error')).toBe('stop');
  });
});

describe('strength comes from the pack', () => {
  test('blank is a stop and cannot-tell; no strength is assumed', () => {
    const result = run(porkAnd(cure('2.5', '', '0')));
    expect(result.values.nitritePpmMeat).toBeNull();
    expect(state(result, 'cure.nitrite')).toBe('cannot-tell cure.strength-unknown');
    expect(severity(result, 'cure.strength-missing')).toBe('stop');
    expect(result.values.dose).toBeNull();
    expect(result.missing.map(({ field }) => field)).toContain('formula.lines.cure.cure.nitrite');
  });

  test('no strength follows from the row of the table the line names', () => {
    const named = cure('2.5', '', '0', { ingredientId: 'curing-salt-us-1' });
    expect(state(run(porkAnd(named)), 'cure.nitrite')).toBe('cannot-tell cure.strength-unknown');
  });

  test('0.0625 typed for 6.25 would look harmless: it is refused, not computed with', () => {
    const result = run(porkAnd(cure('20', '0.0625', '0')));
    expect(state(result, 'cure.nitrite')).toBe('cannot-tell cure.strength-unknown');
    expect(severity(result, 'cure.strength-too-weak')).toBe('stop');
  });

  test('more than 10 % is no kitchen’s curing salt, and pure nitrite never (common practice, no source)', () => {
    expect(severity(run(porkAnd(cure('1', '62.5', '0'))), 'cure.strength-too-strong')).toBe('stop');
    const pure = run(porkAnd(cure('0.15', '99', '0', { ingredientId: 'sodium-nitrite' })));
    expect(pure.findings).toContainEqual(
      expect.objectContaining({ id: 'cure.pure-chemical', severity: 'stop', caution: 'no-pure-nitrite' }),
    );
    expect(state(pure, 'cure.nitrite')).toBe('cannot-tell cure.strength-unknown');
  });

  test('2.5 g to the kilogram is 156.25 with a 6.25 % pack and 15 with a 0.6 % pack (derived)', () => {
    expect(run(porkAnd(cure('2.5', '6.25', '0'))).values.nitritePpmMeat).toBe(156.25);
    expect(run(porkAnd(cure('2.5', '0.6', '0'))).values.nitritePpmMeat).toBeCloseTo(15, 9);
  });
});

describe('amounts of curing salt', () => {
  test('20 g of 6.25 % on a kilogram is 1,250 mg/kg: over the limit and a gross error (derived)', () => {
    const result = run(porkAnd(cure('20', '6.25', '0')));
    expect(result.values.nitritePpmMeat).toBe(1250);
    expect(state(result, 'cure.nitrite')).toBe('fail cure.over');
    expect(severity(result, 'cure.over-limit')).toBe('stop');
    expect(severity(result, 'cure.gross-error')).toBe('stop');
  });

  test('above every ceiling is stopped under a rule set that limits only what is left', () => {
    const result = run(porkAnd(cure('4', '6.25', '0')), cureSlice({ ruleSetId: 'codex' }));
    expect(severity(result, 'cure.above-every-ceiling')).toBe('stop');
  });

  test('ounces, spoons and shares are refused: grams only', () => {
    for (const text of ['0.2 oz', '1 tsp', '0.005 kg']) {
      const result = run(porkAnd(cure(text, '6.25', '0')));
      expect(severity(result, 'cure.grams-only'), text).toBe('stop');
      expect(state(result, 'cure.nitrite'), text).toBe('cannot-tell cure.cure-amount-unknown');
    }
    const share = cure('0.25', '6.25', '0', { amount: enteredEntry('0.25', '%'), basis: 'percent-of-meat' });
    expect(severity(run(porkAnd(share)), 'cure.grams-only')).toBe('stop');
  });

  test('a planned amount under 50 steps of the scale is a stop (common practice, no source)', () => {
    const result = run(
      porkAnd(cure('2.4', '6.25', '0')),
      cureSlice({ scaleReadability: enteredEntry('1', 'g') }),
    );
    expect(result.values.weighing[0]).toMatchObject({
      isWeighable: false,
      errorFraction: expect.closeTo(0.208, 3),
    });
    expect(severity(result, 'cure.too-small-to-weigh')).toBe('stop');
  });

  test('a dose under 50 steps is refused with the least this scale can weigh', () => {
    const result = run(
      porkAnd(cure('', '6.25', '0')),
      cureSlice({ scaleReadability: enteredEntry('1', 'g') }),
    );
    expect(result.values.dose?.dose).toMatchObject({ ok: false, reason: 'too-small-to-weigh', leastG: 50 });
    expect(severity(result, 'cure.too-small-to-weigh')).toBe('stop');
  });

  test('two curing salts are added up, and no dose is split between them', () => {
    const formula = porkAnd(cure('1.25', '6.25', '0'));
    const both = { ...formula, lines: [...formula.lines, { ...cure('13', '0.6', '0'), id: 'second' }] };
    const result = run(both);
    expect(result.values.nitritePpmMeat).toBeCloseTo(78.125 + 78, 6);
    expect(result.values.dose).toBeNull();
  });

  test('within half a step of the ceiling is cautioned', () => {
    expect(severity(run(porkAnd(cure('2.5', '6.25', '0'))), 'cure.near-ceiling')).toBe('caution');
    expect(severity(run(porkAnd(cure('2.4', '6.25', '0'))), 'cure.near-ceiling')).toBe('none');
  });

  test('a curing salt entered as plain salt is not overlooked', () => {
    const formula = porkAnd(cure('2.5', '6.25', '0'));
    const swapped = withLines(formula, { salt: { ingredientId: 'curing-salt-us-1' } });
    const result = run(swapped);
    expect(severity(result, 'cure.entered-as-another-part')).toBe('stop');
    expect(state(result, 'cure.nitrite')).toBe('cannot-tell cure.strength-unknown');
  });

  test('a salt called pink, or a seasoning called saltpetre, is asked about', () => {
    const formula = porkAnd(cure('2.4', '6.25', '0'));
    for (const name of ['Pink salt', 'saltpetre', 'Salt with nitrite']) {
      expect(severity(run(withLines(formula, { salt: { name } })), 'cure.named-like-curing-salt'), name).toBe(
        'caution',
      );
    }
    expect(severity(run(formula), 'cure.named-like-curing-salt')).toBe('none');
  });

  test('a strong curing salt and no plain salt may be a swap', () => {
    expect(severity(run(porkAnd(cure('2.4', '6.25', '0'), '0')), 'cure.no-plain-salt')).toBe('caution');
    expect(severity(run(porkAnd(cure('17', '0.6', '0'), '0')), 'cure.no-plain-salt')).toBe('none');
  });
});

describe('nitrate', () => {
  test('declared above nothing is a stop and a fail, with or without a rule set', () => {
    for (const ruleSetId of ['us-federal', null]) {
      const result = run(porkAnd(cure('2.4', '6.25', '4')), cureSlice({ ruleSetId }));
      expect(state(result, 'cure.nitrate')).toBe('fail cure.nitrate-present');
      expect(severity(result, 'cure.nitrate-present')).toBe('stop');
    }
  });

  test('declared in a curing salt not yet weighed is a stop already', () => {
    expect(state(run(porkAnd(cure('', '6.25', '4'))), 'cure.nitrate')).toBe('fail cure.nitrate-present');
  });

  test('blank is unknown, never none: a caution and cannot-tell', () => {
    const result = run(porkAnd(cure('2.4', '6.25', '')));
    expect(state(result, 'cure.nitrate')).toBe('cannot-tell cure.nitrate-not-declared');
    expect(severity(result, 'cure.nitrate-blank')).toBe('caution');
    expect(
      state(
        run(porkAnd(cure('2.4', '6.25', '')), cureSlice({ ruleSetId: 'canada-federal' })),
        'cure.nitrite',
      ),
    ).toBe('cannot-tell cure.nitrate-not-declared');
  });

  test('saltpetre is nitrate whatever is typed beside it', () => {
    const result = run(porkAnd(cure('2.4', '6.25', '0', { ingredientId: 'potassium-nitrate' })));
    expect(state(result, 'cure.nitrate')).toBe('fail cure.nitrate-present');
  });

  test('typed as 0 it passes', () => {
    expect(state(run(porkAnd(cure('2.4', '6.25', '0'))), 'cure.nitrate')).toBe('pass cure.no-nitrate');
  });

  test('in a long-dried product it is for a specialist: neither passed nor stopped here', () => {
    const dried = { ...porkAnd(cure('2.4', '6.25', '4')), familyId: 'dried-muscle' };
    expect(state(run(dried), 'cure.nitrate')).toBe('cannot-tell cure.nitrate-specialist');
  });

  test('no dose of nitrate is computed anywhere', () => {
    const text = JSON.stringify(run(porkAnd(cure('2.4', '6.25', '4'))).values.dose);
    expect(text).not.toMatch(/nitrate/i);
  });
});

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

describe('nothing entered, or nonsense', () => {
  test('an empty formula passes nothing', () => {
    const empty = run({ familyId: null, lines: [], saltTarget: blankEntry('%') });
    expect(empty.verdicts.every((one) => one.state === 'cannot-tell')).toBe(true);
    expect(empty.values.nitritePpmMeat).toBeNull();
    expect(empty.findings).toEqual([]);
  });

  test('blank, negative, endless and worded amounts never make a pass', () => {
    for (const text of ['', '-5', 'NaN', 'Infinity', '1e3', 'some', '5,4 or 5,5']) {
      const result = run(porkAnd(cure(text, '6.25', '0')));
      expect(state(result, 'cure.nitrite'), text).toMatch(/^cannot-tell/);
      const blankMeat = withLines(porkAnd(cure('2.4', '6.25', '0')), {
        pork: { amount: enteredEntry(text, 'g') },
      });
      expect(state(run(blankMeat), 'cure.nitrite'), text).toMatch(/^cannot-tell/);
    }
  });

  test('scaling every line keeps the verdict and the figures', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 10, max: 60 }),
        (tenths, cureTenths) => {
          const scaled = (k: number) => {
            const formula = porkAnd(
              cure(((cureTenths / 10) * k).toFixed(6), '6.25', '0'),
              (12 * k).toFixed(6),
            );
            return run(withLines(formula, { pork: { amount: enteredEntry((1000 * k).toFixed(6), 'g') } }));
          };
          const one = scaled(1);
          const many = scaled(tenths / 10);
          expect((many.values.nitritePpmTotal ?? 0) / (one.values.nitritePpmTotal ?? Number.NaN)).toBeCloseTo(
            1,
            6,
          );
          expect(state(many, 'cure.nitrite')).toBe(state(one, 'cure.nitrite'));
        },
      ),
      { numRuns: 50 },
    );
  });
});
