import type { FormulaLine } from '../formula/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import { entryValue, readEntry } from '../quantities/index.ts';
import { type CureLine, type CuringSalt, STRENGTH_RANGE, type StrengthProblem } from './cure-line.ts';

/** Rows of the composition table that are curing salt, whatever part of the mix they are entered as. */
const CURING_SALT_ROW = /^curing-salt-/;
/** Rows that are the chemical itself, which no kitchen weighs. */
const PURE_CHEMICALS: readonly string[] = ['sodium-nitrite', 'sodium-nitrate', 'potassium-nitrate'];

/** What the formula knows of a line: masses in g, salt as a fraction. */
export interface LineMass {
  readonly massG: number | null;
  readonly plannedG: number | null;
  readonly isWeighed: boolean;
  readonly saltFraction: number | null;
}

/**
 * The lines of a formula as cure and salt see them.
 *
 * @param masses by line id; a line that is not in it has not been begun and is left out
 */
export function readCureLines(
  lines: readonly FormulaLine[],
  masses: ReadonlyMap<string, LineMass>,
  composition: CompositionTable,
): CureLine[] {
  return lines.flatMap((line) => {
    const mass = masses.get(line.id);
    if (mass === undefined) return [];
    const ingredient = line.ingredientId === null ? null : (composition.get(line.ingredientId) ?? null);
    const read: CureLine = {
      id: line.id,
      name: line.name,
      part: line.part,
      ingredient,
      ...mass,
      carriedPpm: entryValue('ppm', line.carriedNitrite),
      curingSalt: readCuringSalt(line),
    };
    return [read];
  });
}

function readCuringSalt(line: FormulaLine): CuringSalt | null {
  const id = line.ingredientId ?? '';
  const isPure = PURE_CHEMICALS.includes(id);
  if (line.part !== 'curing-salt' && line.cure === null && !isPure && !CURING_SALT_ROW.test(id)) return null;
  const declared = line.cure === null ? null : entryValue('fraction', line.cure.nitrite);
  const problem = isPure ? 'pure-chemical' : strengthProblem(declared);
  const nitrate = line.cure === null ? null : entryValue('fraction', line.cure.nitrate);
  return {
    nitriteFraction: problem === null ? declared : null,
    // Saltpetre is nitrate whatever was typed beside it.
    nitrateFraction: isPure && id !== 'sodium-nitrite' ? 1 : nitrate,
    problem,
    notInGrams: !isInGrams(line),
  };
}

/**
 * 0.0625 typed for 6.25 would make a hundredfold dose look harmless, so a strength no pack has is
 * taken for a slip and not computed with.
 */
function strengthProblem(fraction: number | null): StrengthProblem | null {
  if (fraction === null) return 'missing';
  if (fraction < STRENGTH_RANGE.min) return 'too-weak';
  return fraction > STRENGTH_RANGE.max ? 'too-strong' : null;
}

function isInGrams(line: FormulaLine): boolean {
  if (line.basis !== 'mass') return line.amount.text.trim() === '';
  return [line.amount, line.actual].every((entry) => {
    const reading = readEntry('mass', entry, { gramsOnly: true });
    return reading.state !== 'bad' || !['grams-only', 'spoon-or-cup'].includes(reading.issue.code);
  });
}
