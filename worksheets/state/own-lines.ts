import { newLine } from '@larderwright/calc/batch';
import type { FormulaLine, LinePart } from '@larderwright/calc/formula';
import { type Entry, enteredEntry, entryValue } from '@larderwright/calc/quantities';

/** A line that a worksheet writes into the formula. Its id begins with the worksheet's prefix. */
export interface OwnLine {
  readonly id: string;
  readonly name: string;
  readonly part: LinePart;
  readonly ingredientId: string | null;
  /** Grams as text. */
  readonly grams: string;
  /** Read off a pack by that worksheet; left out where it asks for none. */
  readonly declared?: { readonly salt: Entry; readonly water?: Entry };
}

/** Lines of a formula that the worksheet of a prefix wrote. */
export function ownLines(formula: readonly FormulaLine[], prefix: string): FormulaLine[] {
  return formula.filter(({ id }) => id.startsWith(prefix));
}

/**
 * The formula with a worksheet's lines in it, in place of those it wrote before. Lots stay; a weight off the scale goes
 * when the planned one changed.
 */
export function withOwnLines(
  formula: readonly FormulaLine[],
  wanted: readonly OwnLine[],
  prefix: string,
): FormulaLine[] {
  const made = (line: OwnLine): FormulaLine => {
    const blank = newLine(line.id, line.part);
    const before = formula.find(({ id }) => id === line.id) ?? blank;
    const same = saysMass(before, line);
    return {
      ...before,
      name: line.name,
      part: line.part,
      ingredientId: line.ingredientId,
      basis: 'mass',
      amount: same ? before.amount : enteredEntry(line.grams, 'g'),
      actual: same ? before.actual : blank.actual,
      declared: { ...before.declared, ...line.declared },
    };
  };
  const kept = formula.flatMap((line) => {
    if (!line.id.startsWith(prefix)) return [line];
    const mine = wanted.find(({ id }) => id === line.id);
    return mine ? [made(mine)] : [];
  });
  const added = wanted.filter(({ id }) => !formula.some((line) => line.id === id)).map(made);
  return [...kept, ...added];
}

function saysMass({ amount, basis }: FormulaLine, { grams }: OwnLine): boolean {
  return basis === 'mass' && entryValue('mass', amount) === Number(grams);
}

/** Whether the formula already says just this. */
export function hasOwnLines(
  formula: readonly FormulaLine[],
  wanted: readonly OwnLine[],
  prefix: string,
): boolean {
  const own = ownLines(formula, prefix);
  return (
    own.length === wanted.length &&
    wanted.every((mine) => {
      const line = own.find(({ id }) => id === mine.id);
      return (
        line !== undefined &&
        line.name === mine.name &&
        line.ingredientId === mine.ingredientId &&
        saysMass(line, mine) &&
        (mine.declared?.salt === undefined || line.declared.salt.text === mine.declared.salt.text) &&
        (mine.declared?.water === undefined || line.declared.water.text === mine.declared.water.text)
      );
    })
  );
}
