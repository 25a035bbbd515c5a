import { newLine } from '@larderwright/calc/batch';
import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry, entryValue, fixedText } from '@larderwright/calc/quantities';
import {
  type SeasoningSlice,
  type SeasoningValues,
  type SeasoningWeight,
  spiceOf,
} from '@larderwright/calc/seasoning';
import { spiceName } from './row-names.ts';

/** How the id of a line that this page writes begins; the row's own id follows. */
const PREFIX = 'seasoning-';
/** Places below which a scale for spices shows nothing. */
const DECIMALS = 3;

/** A seasoning as it stands in the formula. */
export interface SeasoningLine {
  readonly id: string;
  readonly name: string;
  readonly ingredientId: string | null;
  /** Grams as text, in whole steps of the scale where the scale shows them. */
  readonly grams: string;
}

/** Lines of a formula that this page wrote. */
export function ownLines(lines: readonly FormulaLine[]): FormulaLine[] {
  return lines.filter(({ id }) => id.startsWith(PREFIX));
}

/** What goes into this batch: the scale's steps where it is weighed by itself, else the exact share. */
function gramsText({ massG, toWeighG, onScaleG, weighable }: SeasoningWeight): string | null {
  if (massG === null) return null;
  const byItself = weighable === true && toWeighG === massG && onScaleG !== null;
  return String(Number(fixedText(byItself ? onScaleG : massG, DECIMALS)));
}

/** The seasoning as lines of a formula; null while some weight is unknown or there is none. */
export function seasoningLines(slice: SeasoningSlice, values: SeasoningValues): SeasoningLine[] | null {
  const rows = [...slice.blends.flatMap(({ items }) => items), ...slice.loose];
  const weights = [...values.blends.flatMap(({ items }) => items), ...values.loose];
  if (weights.length === 0) return null;
  const lines: SeasoningLine[] = [];
  for (const weight of weights) {
    const row = rows.find(({ id }) => id === weight.id);
    const grams = gramsText(weight);
    if (!row || grams === null) return null;
    if (weight.massG === 0) continue;
    lines.push({
      id: `${PREFIX}${weight.id}`,
      name: spiceName(row),
      ingredientId: spiceOf(weight.spiceId)?.ingredientId ?? null,
      grams,
    });
  }
  return lines;
}

/** The formula with these seasonings in it, in place of those this page wrote before. Lots stay; old weights go. */
export function withSeasoning(
  formula: readonly FormulaLine[],
  wanted: readonly SeasoningLine[],
): FormulaLine[] {
  const made = (line: SeasoningLine): FormulaLine => {
    const blank = newLine(line.id, 'seasoning');
    const before = formula.find(({ id }) => id === line.id) ?? blank;
    const sameMass = entryValue('mass', before.amount) === Number(line.grams);
    return {
      ...before,
      name: line.name,
      ingredientId: line.ingredientId,
      basis: 'mass',
      amount: sameMass ? before.amount : enteredEntry(line.grams, 'g'),
      actual: sameMass ? before.actual : blank.actual,
    };
  };
  const kept = formula.flatMap((line) => {
    if (!line.id.startsWith(PREFIX)) return [line];
    const mine = wanted.find(({ id }) => id === line.id);
    return mine ? [made(mine)] : [];
  });
  const added = wanted.filter(({ id }) => !formula.some((line) => line.id === id)).map(made);
  return [...kept, ...added];
}

/** Whether the formula already says just this. */
export function isWritten(formula: readonly FormulaLine[], wanted: readonly SeasoningLine[]): boolean {
  const own = ownLines(formula);
  return (
    own.length === wanted.length &&
    wanted.every(({ id, name, grams }) => {
      const line = own.find((each) => each.id === id);
      return line?.name === name && entryValue('mass', line.amount) === Number(grams);
    })
  );
}
