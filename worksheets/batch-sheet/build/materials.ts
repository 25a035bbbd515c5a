import type { Assessment, Batch } from '@larderwright/calc/batch';
import { type FormulaLine, isMeat } from '@larderwright/calc/formula';
import { formatQuantity } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/materials.ts';
import type { Filled, MaterialRow, Materials } from '../sheet-model.ts';
import { filled, gramDecimals, summed, words, worked } from './filled.ts';

/**
 * Warmest a material may come in, °C: Regulation (EC) 853/2004 Annex III for red meat, offal and poultry.
 * The house aims for 4 °C or colder.
 */
const WARMEST_IN_C = { poultry: '4', offal: '3', meat: '7' } as const;

/** The plan as it prints: in grams as typed, or worked out from a percentage. */
function planned(line: FormulaLine, massG: number | null): Filled | null {
  if (line.basis !== 'mass') return worked(massG);
  if (massG === null) return filled('mass', line.amount, 'g', false);
  const flag = line.amount.origin === 'entered' ? 'E' : 'D';
  return { text: formatQuantity('mass', massG, { decimals: gramDecimals(massG) }), flag };
}

function warmestIn(line: FormulaLine, poultrySpecies: boolean): string | null {
  if (line.part === 'liver' || line.part === 'offal') return WARMEST_IN_C.offal;
  if (!isMeat(line.part)) return null;
  return poultrySpecies ? WARMEST_IN_C.poultry : WARMEST_IN_C.meat;
}

/** Every material of the batch with its weight, sorted as the bench weighs them. */
export function buildMaterials(batch: Batch, { formula }: Assessment): Materials {
  const massOf = new Map(formula.values.planned.lines.map((line) => [line.lineId, line.massG]));
  // Which line is the bird is not asked here: with any bird in the mix the colder limit holds for all.
  const anyPoultry = formula.values.facts.poultry === true;
  const row = (line: FormulaLine): MaterialRow => ({
    id: line.id,
    name: words(line.name) ?? say.notNamed,
    planned: planned(line, massOf.get(line.id) ?? null),
    limit: warmestIn(line, anyPoultry),
    lot: words(line.lot),
    actual: filled('mass', line.actual, 'g', false),
    staysOnBench: line.part === 'salt',
  });
  const lines = batch.formula.lines.filter((line) => line.part !== 'curing-salt');
  const seasoning = lines.filter((line) => line.part === 'seasoning');
  const seasoningG = seasoning.map((line) => massOf.get(line.id) ?? null);
  const { totalG, meatBlockG } = formula.values.planned;
  return {
    meats: lines.filter((line) => isMeat(line.part)).map(row),
    others: lines.filter((line) => !isMeat(line.part) && line.part !== 'seasoning').map(row),
    seasonings: seasoning.map(row),
    gathered: null,
    seasoningTotal: seasoningG.includes(null)
      ? null
      : (summed(seasoningG.reduce<number>((sum, massG) => sum + (massG ?? 0), 0))?.text ?? null),
    total: summed(totalG, true),
    meatBlock: summed(meatBlockG, true),
    onCard: [],
  };
}
