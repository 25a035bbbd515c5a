import type { Batch } from '@larderwright/calc/batch';
import type { ChillLot, LotKind } from '@larderwright/calc/chill-budget';
import { formulaStage, type LinePart } from '@larderwright/calc/formula';
import { compensatedSum, enteredEntry, fixedText } from '@larderwright/calc/quantities';

/** Weights of the formula by the kind of lot they would be, g. Null: some line of that kind has no weight. */
export type FormulaMasses = Readonly<Partial<Record<LotKind, number | null>>>;

/** Weights need no composition: the table is not fetched for this page. */
const NO_TABLE = new Map();

/** What of the formula is ground or mixed in cold. Garnish is folded in afterwards and is not in it. */
const KINDS: Readonly<Partial<Record<LinePart, LotKind>>> = {
  lean: 'lean',
  liver: 'lean',
  offal: 'lean',
  fat: 'fat',
  egg: 'liquid',
  liquid: 'liquid',
};

/** Adds up the formula by kind of lot. */
export function formulaMasses(batch: Batch): FormulaMasses {
  const { lines } = formulaStage(batch.formula, { composition: NO_TABLE }).values.mix;
  const masses: Partial<Record<LotKind, number | null>> = {};
  for (const kind of new Set(Object.values(KINDS))) {
    const mine = lines.filter(({ part }) => KINDS[part] === kind).map(({ massG }) => massG);
    if (mine.length === 0) continue;
    const known = mine.filter((massG) => massG !== null);
    masses[kind] = known.length === mine.length ? compensatedSum(known) : null;
  }
  return masses;
}

/**
 * The lots with the formula's weights: the first lot of each kind takes all of it. Temperatures stay as measured.
 * @param add makes a lot where there is none of a kind
 */
export function withFormulaMasses(
  lots: readonly ChillLot[],
  masses: FormulaMasses,
  add: (kind: LotKind) => ChillLot,
): ChillLot[] {
  const next = [...lots];
  for (const [kind, massG] of Object.entries(masses) as [LotKind, number | null][]) {
    if (massG === null) continue;
    const mass = enteredEntry(String(Number(fixedText(massG / 1000, 3))), 'kg');
    const place = next.findIndex((lot) => lot.kind === kind);
    const lot = next[place] ?? add(kind);
    next.splice(place < 0 ? next.length : place, place < 0 ? 0 : 1, { ...lot, mass });
  }
  return next;
}
