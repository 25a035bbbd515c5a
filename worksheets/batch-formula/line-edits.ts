import type { DeclaredCure, FormulaLine, LinePart } from '@larderwright/calc/formula';
import { isLiver, type PickItem } from '@larderwright/calc/ingredients';
import { blankEntry, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/batch-formula/line-edits.ts';

/** What the amount of a line is written in: a weight in some unit, or a share of something. */
export type AmountIn = 'g' | 'kg' | 'oz' | 'lb' | 'percent-of-meat' | 'percent-of-total';

/** Chemicals that no kitchen weighs: they are not offered, and the caution says why. */
const PURE = ['sodium-nitrite', 'sodium-nitrate', 'potassium-nitrate'];

/** Rows the picker offers. Pure nitrite and nitrate are none of them. */
export function pickable(list: readonly PickItem[]): PickItem[] {
  return list.filter((item) => !PURE.includes(item.id));
}

/** Whether a row is a curing salt: its pack, not the table, says what is in it. */
export function isCuringSalt(item: PickItem): boolean {
  return item.id.startsWith('curing-salt');
}

const PART_OF_CATEGORY: Readonly<Record<string, LinePart>> = {
  meat: 'lean',
  fish: 'lean',
  shellfish: 'lean',
  offal: 'offal',
  blood: 'liquid',
  skin: 'fat',
  'fat-tissue': 'fat',
  'rendered-fat': 'fat',
  'vegetable-fat': 'fat',
  egg: 'egg',
  cereal: 'panade',
  starch: 'panade',
  binder: 'panade',
  dairy: 'liquid',
  stock: 'liquid',
  alcohol: 'liquid',
  water: 'liquid',
  spice: 'seasoning',
  herb: 'seasoning',
  sugar: 'seasoning',
  condiment: 'seasoning',
  acid: 'seasoning',
  mineral: 'seasoning',
  gelling: 'seasoning',
};

/** The part an ingredient usually plays. The person may say otherwise. */
export function usualPart(item: PickItem): LinePart {
  if (isCuringSalt(item)) return 'curing-salt';
  if (item.id === 'salt') return 'salt';
  if (isLiver(item)) return 'liver';
  if (item.category === 'dairy' && /butter/i.test(item.name)) return 'fat';
  if (item.category === 'dairy' && /cheese|feta/i.test(item.name)) return 'garnish';
  return PART_OF_CATEGORY[item.category] ?? 'garnish';
}

/**
 * The line playing another part. A curing salt is a weight in grams and has a strength to declare, blank until
 * somebody reads the pack; what was typed as its strength before is given back through `knownCure`.
 */
export function withPart(
  line: FormulaLine,
  part: LinePart,
  knownCure: DeclaredCure | null = null,
): FormulaLine {
  if (part === line.part) return line;
  if (part !== 'curing-salt') return { ...line, part, cure: null };
  return {
    ...line,
    part,
    ingredientId: null,
    basis: 'mass',
    amount: { ...line.amount, unit: 'g' },
    cure: line.cure ?? knownCure ?? { nitrite: blankEntry('%'), nitrate: blankEntry('%') },
  };
}

/** How the amount of a line is written now. */
export function amountIn(line: FormulaLine): AmountIn {
  if (line.basis !== 'mass') return line.basis;
  const { unit } = line.amount;
  return unit === 'kg' || unit === 'oz' || unit === 'lb' ? unit : 'g';
}

/** The line with its amount written in something else. The typed number stays as it is. */
export function withAmountIn(line: FormulaLine, as: AmountIn): FormulaLine {
  const share = as === 'percent-of-meat' || as === 'percent-of-total';
  const unit: Unit = share ? '%' : as;
  return { ...line, basis: share ? as : 'mass', amount: { ...line.amount, unit, origin: 'entered' } };
}

/**
 * The line with its ingredient picked from the list.
 *
 * @param keepPart the person chose the part, so that the ingredient must not change it
 */
export function withIngredient(line: FormulaLine, item: PickItem, keepPart: boolean): FormulaLine {
  // A curing salt never takes its figures from a table, and never hides under another part.
  if (isCuringSalt(item))
    return { ...withPart(line, 'curing-salt'), name: say.curingSalt, ingredientId: null };
  const placed = keepPart && line.part !== 'curing-salt' ? line : withPart(line, usualPart(item));
  return { ...placed, name: item.name, ingredientId: item.id };
}

/** The line under another name. Its figures belonged to the old name, so they go with it. */
export function withName(line: FormulaLine, name: string): FormulaLine {
  return name === line.name ? line : { ...line, name, ingredientId: null };
}

/** The row whose name is exactly the text, where there is one only. */
export function sameName(list: readonly PickItem[], text: string): PickItem | null {
  const wanted = text.trim().toLowerCase();
  if (wanted === '') return null;
  const found = list.filter((item) => item.name.toLowerCase() === wanted);
  return found.length === 1 ? (found[0] ?? null) : null;
}
