import type { CompositionTable, Ingredient } from '../ingredients/index.ts';
import { readEntry } from '../quantities/index.ts';
import { type LineComposition, lineComposition } from './line-composition.ts';
import type { FormulaLine } from './slice.ts';
import type { PlannedAmount } from './solve-masses.ts';

/** Ten times the meat block: a wall against slips, far above cream in a mousseline or butter in a parfait. */
const MAX_SHARE_OF_MEAT = 10;

/** A line with its fields read. */
export interface ReadLine {
  readonly line: FormulaLine;
  /** Path of the line in the batch, for findings: `formula.lines.<id>`. */
  readonly path: string;
  readonly planned: PlannedAmount;
  /** As weighed, g; null while the scale has said nothing readable. */
  readonly actualG: number | null;
  /** A weight was written down that cannot be read: the plan must not stand in for it. */
  readonly actualUnreadable: boolean;
  /** A curing salt counted in per cent, which is refused. */
  readonly curingSaltInPercent: boolean;
  readonly row: Ingredient | undefined;
  readonly composition: LineComposition;
}

/** A row of the form that nobody has begun to fill. It is no ingredient of unknown mass. */
function isUntouched(line: FormulaLine): boolean {
  return (
    line.name.trim() === '' &&
    line.ingredientId === null &&
    line.amount.text.trim() === '' &&
    line.actual.text.trim() === ''
  );
}

function readAmount(line: FormulaLine): number | null {
  const curingSalt = line.part === 'curing-salt';
  if (line.basis !== 'mass' && curingSalt) return null;
  const reading =
    line.basis === 'mass'
      ? readEntry('mass', line.amount, { gramsOnly: curingSalt })
      : readEntry('fraction', line.amount, {
          range: { min: 0, max: line.basis === 'percent-of-meat' ? MAX_SHARE_OF_MEAT : 1 },
        });
  return reading.state === 'ok' ? reading.value : null;
}

/** Read all begun lines of a formula. */
export function readLines(lines: readonly FormulaLine[], table: CompositionTable): ReadLine[] {
  return lines
    .filter((line) => !isUntouched(line))
    .map((line) => {
      const actual = readEntry('mass', line.actual, { gramsOnly: line.part === 'curing-salt' });
      return {
        line,
        path: `formula.lines.${line.id}`,
        planned: { part: line.part, basis: line.basis, amount: readAmount(line) },
        actualG: actual.state === 'ok' ? actual.value : null,
        actualUnreadable: actual.state === 'bad',
        curingSaltInPercent: line.part === 'curing-salt' && line.basis !== 'mass',
        row: line.ingredientId === null ? undefined : table.get(line.ingredientId),
        composition: lineComposition(line, table),
      };
    });
}
