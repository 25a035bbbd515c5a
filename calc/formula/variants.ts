import { compensatedSum } from '../quantities/index.ts';
import type { MixMasses } from './mix.ts';
import { isInBowl, isMeat } from './parts.ts';
import type { ReadLine } from './read-line.ts';
import { type SolvedMasses, solveMasses } from './solve-masses.ts';

function sumIfKnown(masses: readonly (number | null)[]): number | null {
  const known = masses.filter((massG) => massG !== null);
  return known.length === masses.length && known.length > 0 ? compensatedSum(known) : null;
}

/** The batch as planned. */
export function plannedMasses(lines: readonly ReadLine[]): MixMasses & Pick<SolvedMasses, 'problem'> {
  const solved = solveMasses(lines.map(({ planned }) => planned));
  return { ...solved, weighed: lines.map(() => false) };
}

/** Whether the scale has said anything about a formula. */
function isWeighed(lines: readonly ReadLine[]): boolean {
  return lines.some((line) => line.actualG !== null || line.actualUnreadable);
}

/**
 * The batch as weighed: what the scale showed, and the plan where it showed nothing yet. A weight that cannot be read
 * stays unknown. Null before the first weighing.
 */
export function weighedMasses(lines: readonly ReadLine[], planned: MixMasses): MixMasses | null {
  if (!isWeighed(lines)) return null;
  const massesG = lines.map((line, index) =>
    line.actualUnreadable ? null : (line.actualG ?? planned.massesG[index] ?? null),
  );
  const where = (keep: (line: ReadLine) => boolean) =>
    sumIfKnown(lines.flatMap((line, index) => (keep(line) ? [massesG[index] ?? null] : [])));
  const meat = lines.some((line) => isMeat(line.line.part));
  return {
    massesG,
    weighed: lines.map((line) => line.actualG !== null),
    totalG: where((line) => isInBowl(line.line.part)),
    meatBlockG: meat ? where((line) => isMeat(line.line.part)) : 0,
  };
}
