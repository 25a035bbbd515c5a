import { newBatch, readBatch } from '@larderwright/calc/batch';
import {
  type CureAmounts,
  judgeLimit,
  newResidualNitrite,
  type ResidualForm,
  readResidual,
} from '@larderwright/calc/cure';
import { WHOLE_MUSCLE_RULE_SETS } from '@larderwright/calc/dry-cure';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { run as runPiece } from '../dry-cure/pieces.ts';
import { limit } from './run-stage.ts';

/** 160 mg/kg put in, all of it known: no limit on what is left passes by its bound but the 200 of the United States. */
const AMOUNTS: CureAmounts = {
  isEmpty: false,
  meatBlockG: 1000,
  totalG: 1000,
  liningG: 0,
  finishedG: 1000,
  nitriteG: { low: 0.16, high: 0.16 },
  liningNitriteG: { low: 0, high: 0 },
  nitrateG: { low: 0, high: 0 },
  declaresNitrate: false,
  acceleratorG: { low: 0, high: 0 },
  unboundedBecause: null,
};

const lab = (found: string, as: ResidualForm | null) => ({
  ...newResidualNitrite(),
  found: enteredEntry(found, 'ppm'),
  as,
});
const judged = (id: string, found: string, as: ResidualForm | null) =>
  judgeLimit(limit(id), AMOUNTS, readResidual(lab(found, as)));

describe('what a laboratory found left', () => {
  test('nothing measured cannot tell, and a blank record is nothing measured', () => {
    expect(readResidual(undefined)).toBeNull();
    expect(readResidual(newResidualNitrite())).toBeNull();
    expect(judgeLimit(limit('eu-nitrite-residual'), AMOUNTS, null)).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.residual-to-be-measured',
    });
  });

  test('45 as ion is the limit of Regulation (EU) 2023/2108 and passes, a hundredth more fails', () => {
    expect(judged('eu-nitrite-residual', '45', 'nitrite-ion').state).toBe('pass');
    expect(judged('eu-nitrite-residual', '45.01', 'nitrite-ion')).toMatchObject({
      state: 'fail',
      reason: 'cure.residual-over',
    });
  });

  test('67 as sodium nitrite is 44.7 as ion and within 45; 68 is 45.3 and over (derived: × 46.0055 ÷ 68.9953)', () => {
    expect(judged('eu-nitrite-residual', '67', 'sodium-nitrite')).toMatchObject({
      state: 'pass',
      ppm: expect.closeTo(44.675, 3),
    });
    expect(judged('eu-nitrite-residual', '68', 'sodium-nitrite').state).toBe('fail');
  });

  test('a figure whose form nobody has said, or that cannot be read, judges nothing', () => {
    expect(judged('eu-nitrite-residual', '10', null)).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.residual-figure-incomplete',
    });
    expect(judged('us-nitrite-finished', 'none', 'sodium-nitrite').state).toBe('cannot-tell');
  });

  test('nitrite alone never passes a limit that counts nitrate with it, and can fail it', () => {
    expect(judged('anz-nitrite-in-food', '20', 'sodium-nitrite')).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.residual-nitrate-not-measured',
    });
    expect(judged('anz-nitrite-in-food', '130', 'sodium-nitrite').state).toBe('fail');
    expect(judged('anz-nitrite-in-food', '125', 'nitrite-and-nitrate-as-sodium-nitrite').state).toBe('pass');
  });

  test('nitrite and nitrate together within a limit on nitrite alone pass it; above it nobody can tell', () => {
    const both = 'nitrite-and-nitrate-as-sodium-nitrite' as const;
    expect(judged('codex-nitrite-residual', '100', both).state).toBe('pass');
    expect(judged('codex-nitrite-residual', '130', both)).toMatchObject({
      state: 'cannot-tell',
      reason: 'cure.residual-nitrate-counted-in',
    });
  });

  test('a laboratory over the limit fails it even where no more went in than the limit allows', () => {
    expect(judgeLimit(limit('us-nitrite-finished'), AMOUNTS).state).toBe('pass');
    expect(judged('us-nitrite-finished', '210', 'nitrite-and-nitrate-as-sodium-nitrite').state).toBe('fail');
  });

  test('a limit on what is put in never looks at what is left', () => {
    for (const id of ['us-nitrite-comminuted', 'gb-nitrite-added', 'canada-nitrite-ingoing'])
      expect(judged(id, '1', 'sodium-nitrite')).toEqual(judgeLimit(limit(id), AMOUNTS));
  });

  test('more found is never judged milder', () => {
    const rank = { pass: 0, 'cannot-tell': 1, fail: 2 } as const;
    const forms = ['sodium-nitrite', 'nitrite-ion', 'nitrite-and-nitrate-as-sodium-nitrite'] as const;
    const ids = [
      'us-nitrite-finished',
      'eu-nitrite-residual',
      'anz-nitrite-in-food',
      'codex-nitrite-residual',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...ids),
        fc.constantFrom(...forms),
        fc.integer({ min: 0, max: 400 }),
        fc.integer({ min: 0, max: 100 }),
        (id, form, found, more) => {
          const [low, high] = [judged(id, String(found), form), judged(id, String(found + more), form)];
          expect(rank[high.state]).toBeGreaterThanOrEqual(rank[low.state]);
        },
      ),
    );
  });
});

describe('where it stands', () => {
  test('the record keeps it, reads it back, and reads a batch without it', () => {
    const batch = newBatch({ id: 'b', at: '2026-11-25T08:00:00+00:00', zone: 'UTC' });
    expect(readBatch(batch)).toEqual({ ok: true, batch });
    const measured = { ...batch, cure: { ...batch.cure, residual: lab('12', 'nitrite-ion') } };
    expect(readBatch(JSON.parse(JSON.stringify(measured)))).toEqual({ ok: true, batch: measured });
    const broken = { ...measured, cure: { ...measured.cure, residual: { found: '12' } } };
    expect(readBatch(broken)).toMatchObject({ ok: false, path: expect.stringContaining('cure.residual') });
  });

  test('a traditional ham of Great Britain passes 100 left only by a laboratory', () => {
    const ham = { product: 'ham', isTraditional: true, nitriteTarget: enteredEntry('150', 'ppm') } as const;
    const cure = { ruleSetId: 'great-britain' };
    expect(runPiece(ham, cure).verdict('nitrite-residual')?.state).toBe('cannot-tell');
    const with90 = runPiece(ham, { ...cure, residual: lab('90', 'sodium-nitrite') });
    expect(with90.verdict('nitrite-residual')?.state).toBe('pass');
    const with110 = runPiece(ham, { ...cure, residual: lab('110', 'sodium-nitrite') });
    expect(with110.verdict('nitrite-residual')?.state).toBe('fail');
    expect(with110.ids).toContain('dry-cure.residual-over-limit');
  });

  test('mixed forcemeat and whole muscle read one figure where a law gives one', () => {
    const muscle = (id: string) =>
      WHOLE_MUSCLE_RULE_SETS.flatMap(({ limits }) => limits).find((one) => one.id === id);
    for (const [mixed, whole] of [
      ['eu-nitrite-residual', 'eu-muscle-residual'],
      ['anz-nitrite-in-food', 'anz-nitrite-in-cured-meat'],
      ['codex-nitrite-residual', 'codex-whole-pieces-residual'],
      ['canada-nitrite-ingoing', 'canada-cured-muscle'],
    ] as const)
      expect(muscle(whole)?.valuePpm, whole).toBe(limit(mixed).valuePpm);
  });
});
