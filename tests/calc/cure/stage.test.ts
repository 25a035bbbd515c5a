import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cure, cureSlice, venisonTerrine, withLines } from './demo-formula.ts';
import { porkAnd, run, severity, state } from './run-stage.ts';

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

  test('one certain gross error stops although another curing salt is still unknown', () => {
    const formula = porkAnd(cure('20', '6.25', '0'));
    const result = run({ ...formula, lines: [...formula.lines, { ...cure('1', '', '0'), id: 'second' }] });
    expect(severity(result, 'cure.gross-error')).toBe('stop');
    expect(state(result, 'cure.nitrite')).toBe('fail cure.over');
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
    const pepper = withLines(formula, { salt: { name: 'Pink pepper', part: 'seasoning' } });
    expect(severity(run(pepper), 'cure.named-like-curing-salt')).toBe('none');
    expect(severity(run(formula), 'cure.named-like-curing-salt')).toBe('none');
  });

  test('a strong curing salt and no plain salt may be a swap, and is a stop in the amount of a plain salt', () => {
    expect(severity(run(porkAnd(cure('5.1', '2.5', '0'), '0')), 'cure.no-plain-salt')).toBe('stop');
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
