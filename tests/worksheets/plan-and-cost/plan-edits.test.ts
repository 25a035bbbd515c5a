import { newBatch, newLine } from '@larderwright/calc/batch';
import { newPlanSlice } from '@larderwright/calc/plan';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planLineOf, withPlanLine } from '../../../worksheets/plan-and-cost/plan-edits.ts';
import { planOf } from '../../../worksheets/plan-and-cost/plan-of.ts';
import { printedCosts } from '../../../worksheets/plan-and-cost/printed-costs.ts';

const empty = () => newBatch({ id: 'b', at: '', zone: 'UTC' });

describe('how a line is bought', () => {
  it('begins a plan where there was none, and changes nothing else of the line', () => {
    const batch = withPlanLine(empty(), 'l', { trimYield: enteredEntry('71', '%') });
    const line = planLineOf(batch.plan ?? newPlanSlice(), 'l');
    expect(line.trimYield).toEqual({ text: '71', unit: '%', origin: 'entered' });
    expect(line.price.text).toBe('');
    expect(batch.plan?.lines).toHaveLength(1);
  });

  it('is kept once, whatever is changed in it and how often', () => {
    const once = withPlanLine(empty(), 'l', { trimYield: enteredEntry('71', '%') });
    const twice = withPlanLine(once, 'l', { price: enteredEntry('6', 'money') });
    expect(twice.plan?.lines).toHaveLength(1);
    expect(planLineOf(twice.plan ?? newPlanSlice(), 'l')).toMatchObject({
      trimYield: { text: '71' },
      price: { text: '6' },
    });
  });
});

describe('costs as printed', () => {
  const priced = (rows: readonly { massG: number; cents: number }[]) => {
    let batch = empty();
    batch.product.portions = enteredEntry('40', 'count');
    for (const [index, { massG, cents }] of rows.entries()) {
      const id = `${index}`;
      batch.formula.lines.push({ ...newLine(id, 'lean'), name: id, amount: enteredEntry(`${massG}`, 'g') });
      batch = withPlanLine(batch, id, { price: enteredEntry((cents / 100).toFixed(2), 'money') });
    }
    return batch;
  };
  const row = fc.record({
    massG: fc.integer({ min: 1, max: 9000 }),
    cents: fc.integer({ min: 0, max: 9000 }),
  });

  it('add up: every total is the sum of the figures above it', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
        const planned = planOf(priced(rows), null);
        const { lines, food } = printedCosts(planned);
        const cents = [...lines.values()].map((cost) => Math.round((cost ?? 0) * 100));
        expect(Math.round((food ?? -1) * 100)).toBe(cents.reduce((sum, each) => sum + each, 0));
        // Rounding each line moves the whole by at most half a cent a line.
        expect(Math.abs((food ?? 0) - (planned.values.costs.food ?? 0))).toBeLessThanOrEqual(
          0.005 * rows.length + 1e-9,
        );
      }),
    );
  });

  it('are not known while one price is blank, and no price is taken for nothing', () => {
    const batch = priced([{ massG: 1000, cents: 500 }]);
    batch.formula.lines.push({ ...newLine('x', 'fat'), name: 'x', amount: enteredEntry('500', 'g') });
    const { food, full, lines } = printedCosts(planOf(batch, null));
    expect(food).toBeNull();
    expect(full).toBeNull();
    expect(lines.get('x')).toBeNull();
  });
});
