import type { Assessment, Batch } from '@larderwright/calc/batch';
import { type Entry, fixedText, readEntry } from '@larderwright/calc/quantities';
import { gramDecimals } from './filled.ts';

const inGrams = (massG: number, entry: Entry): Entry => ({
  text: fixedText(massG, gramDecimals(massG)),
  unit: 'g',
  origin: entry.origin,
});

/** A weight off the scale as the sheet prints it: in grams. One typed in grams stands as it is. */
function actualAsPrinted(actual: Entry): Entry {
  const read = readEntry('mass', actual);
  return read.state === 'ok' && read.unit !== 'g' ? inGrams(read.value, actual) : actual;
}

/**
 * The batch with every weight as the sheet prints it. The sheet's totals, percentages and mg/kg are computed from
 * this one, so that adding up the paper gives the paper's own total. Curing salt is never rounded here: it prints
 * as it was typed, in grams.
 */
export function asPrinted(batch: Batch, { formula }: Pick<Assessment, 'formula'>): Batch {
  const massOf = new Map(formula.values.planned.lines.map((line) => [line.lineId, line.massG]));
  const lines = batch.formula.lines.map((line) => {
    const massG = massOf.get(line.id) ?? null;
    if (line.part === 'curing-salt') return line;
    const actual = actualAsPrinted(line.actual);
    if (massG === null) return { ...line, actual };
    return { ...line, amount: inGrams(massG, line.amount), basis: 'mass' as const, actual };
  });
  return { ...batch, formula: { ...batch.formula, lines } };
}
