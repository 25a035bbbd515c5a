import type { CureSlice } from '@larderwright/calc/cure';
import type { FormulaLine, FormulaSlice, LinePart } from '@larderwright/calc/formula';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';

/** One line in grams. */
export function line(
  id: string,
  part: LinePart,
  grams: string,
  ingredientId: string | null,
  change: Partial<FormulaLine> = {},
): FormulaLine {
  return {
    id,
    name: id,
    part,
    ingredientId,
    amount: enteredEntry(grams, 'g'),
    basis: 'mass',
    actual: blankEntry('g'),
    lot: '',
    declared: {
      salt: blankEntry('%'),
      fat: blankEntry('%'),
      protein: blankEntry('%'),
      water: blankEntry('%'),
    },
    cure: null,
    carriedNitrite: blankEntry('ppm'),
    ...change,
  };
}

/** Curing salt with the strengths of its pack, in per cent. */
export function cure(
  grams: string,
  nitrite: string,
  nitrate: string,
  change: Partial<FormulaLine> = {},
): FormulaLine {
  return line('cure', 'curing-salt', grams, null, {
    name: 'Curing salt',
    cure: { nitrite: enteredEntry(nitrite, '%'), nitrate: enteredEntry(nitrate, '%') },
    ...change,
  });
}

/** An invented country terrine of venison: meat block 2,800 g, 3,850.1 g in all. */
export function venisonTerrine(curingSalt: FormulaLine | null = cure('5.4', '6.25', '0')): FormulaSlice {
  const lines = [
    line('venison', 'lean', '1000', 'kitchen-venison-shoulder'),
    line('shoulder', 'lean', '700', 'kitchen-pork-shoulder-80-20'),
    line('backfat', 'fat', '770', 'kitchen-pork-backfat'),
    line('liver', 'liver', '330', 'kitchen-pork-liver'),
    line('bread', 'panade', '80', 'kitchen-bread-white'),
    line('milk', 'liquid', '120', 'kitchen-milk-whole'),
    line('egg', 'egg', '150', 'kitchen-egg'),
    line('shallot', 'garnish', '110', 'kitchen-shallot-sweated'),
    line('brandy', 'liquid', '45', 'kitchen-brandy'),
    line('port', 'liquid', '50', 'kitchen-fortified-wine-reduced'),
    line('chestnut', 'garnish', '240', 'kitchen-chestnut-roasted'),
    line('bacon', 'garnish', '180', 'kitchen-bacon-dry-cured', { name: 'Bacon, dry-cured' }),
    line('salt', 'salt', '47.5', 'salt'),
    line('spice', 'seasoning', '14.2', 'kitchen-spice-blend'),
    line('garlic', 'seasoning', '8', 'kitchen-herb-fresh'),
  ];
  return {
    familyId: 'country-terrine',
    lines: curingSalt === null ? lines : [...lines, curingSalt],
    saltTarget: enteredEntry('1.64', '%'),
  };
}

/** A cure slice with a rule set, a scale that shows 0.1 g, and two people. */
export function cureSlice(change: Partial<CureSlice> = {}): CureSlice {
  return {
    ruleSetId: 'us-federal',
    nitriteTarget: enteredEntry('120', 'ppm'),
    scaleReadability: enteredEntry('0.1', 'g'),
    weighedBy: 'A. Cook',
    checkedBy: 'B. Chef',
    ...change,
  };
}

/** The same formula with lines changed by id. */
export function withLines(slice: FormulaSlice, changes: Record<string, Partial<FormulaLine>>): FormulaSlice {
  return { ...slice, lines: slice.lines.map((item) => ({ ...item, ...changes[item.id] })) };
}
