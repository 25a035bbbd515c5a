import type { LinePart } from '../formula/index.ts';
import type { Ingredient } from '../ingredients/index.ts';

/** Sodium nitrite a kitchen's curing salt may hold, fraction. Common practice, no source. */
export const STRENGTH_RANGE = { min: 0.004, max: 0.1 } as const;

/** Why the declared strength of a curing salt is not computed with. */
export type StrengthProblem = 'missing' | 'too-weak' | 'too-strong' | 'pure-chemical';

/** A curing salt as its pack declares it. */
export interface CuringSalt {
  /** Sodium nitrite, fraction; null when it is not known or not believable. */
  readonly nitriteFraction: number | null;
  /** Sodium or potassium nitrate, fraction; null when the pack's nitrate was not typed in. */
  readonly nitrateFraction: number | null;
  readonly problem: StrengthProblem | null;
  /** Its amount or its weight is typed in another unit than grams, or as a share. */
  readonly notInGrams: boolean;
}

/** One line of the formula as far as cure and salt are concerned. Masses in g, null unknown. */
export interface CureLine {
  readonly id: string;
  readonly name: string;
  readonly part: LinePart;
  readonly ingredient: Ingredient | null;
  /** As weighed where it was weighed, else as planned. */
  readonly massG: number | null;
  readonly plannedG: number | null;
  readonly isWeighed: boolean;
  /** Salt in it, fraction of the line. */
  readonly saltFraction: number | null;
  /** Nitrite it brings by its maker's word, mg/kg as sodium nitrite. */
  readonly carriedPpm: number | null;
  readonly curingSalt: CuringSalt | null;
}

/** Lines of curing salt. */
export function curingSalts(lines: readonly CureLine[]): (CureLine & { curingSalt: CuringSalt })[] {
  return lines.filter((line): line is CureLine & { curingSalt: CuringSalt } => line.curingSalt !== null);
}
