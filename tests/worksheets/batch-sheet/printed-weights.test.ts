import type { Batch } from '@larderwright/calc/batch';
import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry, type Unit } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { loadCompute, type SheetComputed } from '../../../worksheets/batch-sheet/compute.ts';

let compute: (batch: Batch) => SheetComputed;
beforeAll(async () => {
  compute = await loadCompute();
});

/** Amounts as cooks type them: too many digits, other units, shares. */
const amounts = fc.oneof(
  fc.tuple(fc.double({ min: 0.5, max: 20_000, noNaN: true }), fc.constant<Unit>('g')),
  fc.tuple(fc.double({ min: 0.01, max: 20, noNaN: true }), fc.constantFrom<Unit>('kg', 'lb')),
  fc.tuple(fc.double({ min: 0.5, max: 200, noNaN: true }), fc.constant<Unit>('oz')),
);
const SALT_PERCENT = 3;

function batchOf(typed: readonly (readonly [number, Unit])[], cureG: string): Batch {
  const batch = structuredClone(demos['country-terrine']);
  if (!batch) throw new Error('no demo');
  const percent = (text: string) => enteredEntry(text, '%');
  batch.formula.lines = batch.formula.lines
    .filter(({ part }) => part === 'lean' || part === 'garnish' || part === 'curing-salt')
    .map((line, index): FormulaLine => {
      const [value, unit] = typed[index % typed.length] ?? [1, 'g'];
      const isCure = line.part === 'curing-salt';
      return {
        ...line,
        basis: 'mass',
        amount: isCure ? enteredEntry(cureG, 'g') : enteredEntry(value.toPrecision(9), unit),
        actual: enteredEntry('', 'g'),
        declared: isCure
          ? line.declared
          : {
              salt: percent(String(SALT_PERCENT)),
              fat: percent('20'),
              protein: percent('15'),
              water: percent('60'),
            },
        carriedNitrite: enteredEntry('0', 'ppm'),
      };
    });
  return batch;
}

const grams = (text: string | undefined) => Number(text?.replace(/[\s\u00A0\u202F]/g, '').replace(/g$/, ''));

describe('a sheet adds up on paper, whatever was typed', () => {
  it('the total is the sum of the weights as printed, ppm and per cent come from those weights, and the cure prints as typed', () => {
    fc.assert(
      fc.property(
        fc.array(amounts, { minLength: 4, maxLength: 6 }),
        fc.integer({ min: 1, max: 2000 }).map((cg) => String(cg / 100)),
        (typed, cureG) => {
          const { model } = compute(batchOf(typed, cureG));
          const { meats, others, total, meatBlock } = model.materials;
          const sum = (rows: typeof meats) => rows.reduce((all, row) => all + grams(row.planned?.text), 0);
          const printedCureG = grams(model.cure?.lines[0]?.grams?.text);
          const rest = sum(meats) + sum(others);

          expect(printedCureG).toBe(Number(cureG));
          expect(rest + printedCureG).toBeCloseTo(grams(total?.text), 5);
          expect(sum(meats)).toBeCloseTo(grams(meatBlock?.text), 5);

          const nitriteMg = printedCureG * 0.0625 * 1000;
          const said = /mg\/kg: ([\d.]+) on meat block, ([\d.]+) on total/.exec(model.cure?.ppm ?? '');
          for (const [text, kg] of [
            [said?.[1], sum(meats) / 1000],
            [said?.[2], (rest + printedCureG) / 1000],
          ] as const) {
            // Printed up to the next tenth, never down.
            expect(Number(text)).toBeGreaterThanOrEqual(nitriteMg / kg - 1e-6);
            expect(Number(text) - nitriteMg / kg).toBeLessThan(0.1 + 1e-6);
          }
          const saltG = (rest * SALT_PERCENT) / 100 + printedCureG * 0.9375;
          const saltPercent = (100 * saltG) / (rest + printedCureG);
          expect(Number.parseFloat(model.salt.total ?? '')).toBeCloseTo(saltPercent, 1);
          expect(Math.abs(Number.parseFloat(model.salt.total ?? '') - saltPercent)).toBeLessThanOrEqual(
            0.005001,
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
