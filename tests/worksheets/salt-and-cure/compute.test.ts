import { type Batch, newBatch, newLine } from '@larderwright/calc/batch';
import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { loadCure } from '../../../worksheets/salt-and-cure/compute.ts';
import { wordsOf } from '../../../worksheets/words/index.ts';

const compute = await loadCure();

const line = (
  id: string,
  part: FormulaLine['part'],
  ingredientId: string | null,
  grams: string,
): FormulaLine => ({
  ...newLine(id, part),
  name: id,
  ingredientId,
  amount: enteredEntry(grams, 'g'),
});
const cure = (grams: string, nitrite: string): FormulaLine => ({
  ...line('cure', 'curing-salt', null, grams),
  cure: { nitrite: enteredEntry(nitrite, '%'), nitrate: enteredEntry('0', '%') },
});

function batch(lines: FormulaLine[], ruleSetId: string | null, target = '120'): Batch {
  const blank = newBatch({ id: 'b1', at: '2026-03-10T07:30:00+00:00', zone: 'UTC' });
  return {
    ...blank,
    formula: { ...blank.formula, lines },
    cure: {
      ...blank.cure,
      ruleSetId,
      nitriteTarget: enteredEntry(target, 'ppm'),
      scaleReadability: enteredEntry('0.1', 'g'),
    },
  };
}

const pork = line('pork', 'lean', 'kitchen-pork-shoulder-80-20', '2800');

describe('what the page shows of salt and nitrite', () => {
  test('is CANNOT TELL for every limit while no rule set is chosen', () => {
    const { verdicts, cure: values } = compute(batch([pork, cure('5.4', '6.25')], null));
    expect(verdicts.length).toBeGreaterThan(0);
    expect(new Set(verdicts.map(({ state }) => state))).toEqual(new Set(['cannot-tell']));
    expect(values.dose).toBeNull();
  });

  // FSIS Directive 7620.3 (1995), comminuted products: 120 mg/kg × 2.800 kg ÷ 62.5 mg/g = 5.376 g.
  test('gives the dose on the rule’s own weight basis, to a step of the scale', () => {
    const { dose } = compute(batch([pork, cure('', '6.25')], 'us-federal')).cure;
    expect(dose?.dose).toMatchObject({ ok: true, doseG: 5.4 });
  });

  test('gives no dose without a strength, and says what is missing', () => {
    const { cure: values, findings } = compute(batch([pork, cure('5.4', '')], 'us-federal'));
    expect(values.dose).toBeNull();
    expect(findings).toContainEqual(
      expect.objectContaining({ severity: 'stop', field: 'formula.lines.cure.cure.nitrite' }),
    );
  });

  test('brings the findings of the salt target along', () => {
    const salted = line('salt', 'salt', 'salt', '200');
    const { findings } = compute(batch([pork, salted], 'us-federal'));
    expect(findings.some(({ field }) => field === 'formula.saltTarget')).toBe(true);
  });

  test('has words for every finding and verdict of every rule set, on good batches and bad', () => {
    const batches = [
      batch([], null),
      batch([pork], 'great-britain'),
      batch([pork, cure('5.4', '6.25')], 'us-federal'),
      batch([pork, cure('54', '6.25')], 'european-union-2025'),
      batch([pork, cure('540', '6.25')], 'codex'),
      batch([pork, cure('5.4', '0.06')], 'canada-federal', '1000'),
      batch([pork, cure('5.4', '95')], 'australia-new-zealand'),
      batch([pork, line('pink salt', 'seasoning', null, '20')], 'great-britain'),
      batch([pork, cure('5 oz', '6.25')], 'no-such-rule'),
    ];
    for (const one of batches) {
      const { findings, verdicts } = compute(one);
      for (const { id, params } of findings) expect(wordsOf(id, params).title).not.toMatch(/NaN|undefined/);
      for (const { reason, params } of verdicts)
        expect(wordsOf(reason, params).title).not.toMatch(/NaN|undefined/);
    }
  });
});
