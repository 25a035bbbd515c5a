import type { Mark, SourceId } from '../sources/index.ts';

/** A name or class tied to a moisture : protein ratio. Drying, not safety by itself. */
export interface RatioClass {
  readonly id: string;
  readonly maxRatio: number;
  readonly maxPh: number | null;
  readonly source: SourceId;
  readonly mark: Mark;
}

/** Every class carried, driest first. */
export const RATIO_CLASSES: readonly RatioClass[] = [
  { id: 'jerky', maxRatio: 0.75, maxPh: null, source: 'fsis-shelf-stable', mark: 'confirmed' },
  { id: 'pepperoni', maxRatio: 1.6, maxPh: null, source: 'fsis-shelf-stable', mark: 'memory' },
  { id: 'dry-sausage', maxRatio: 1.9, maxPh: null, source: 'fsis-shelf-stable', mark: 'confirmed' },
  { id: 'genoa', maxRatio: 2.3, maxPh: null, source: 'fsis-shelf-stable', mark: 'memory' },
  { id: 'dry-sausage-1982', maxRatio: 2.3, maxPh: 5.3, source: 'ami-dry-sausage-1982', mark: 'confirmed' },
  { id: 'semi-dry-sausage', maxRatio: 3.1, maxPh: 5, source: 'fsis-shelf-stable', mark: 'confirmed' },
  { id: 'thuringer', maxRatio: 3.7, maxPh: null, source: 'fsis-shelf-stable', mark: 'confirmed' },
];

/**
 * Moisture ÷ protein.
 *
 * @returns null for unusable numbers
 * @example moistureProteinRatio(0.35, 0.2) // 1.75
 */
export function moistureProteinRatio(moisture: number, protein: number): number | null {
  if (!(moisture >= 0) || !(protein > 0)) return null;
  const ratio = moisture / protein;
  return Number.isFinite(ratio) ? ratio : null;
}

/**
 * Whether a product has the ratio, and the pH where the class asks one.
 *
 * @param ph null: not measured
 * @returns null where a pH is asked and not known; a ratio too high is false whatever the pH
 */
export function meetsClass(of: RatioClass, ratio: number, ph: number | null): boolean | null {
  if (!(ratio <= of.maxRatio)) return false;
  if (of.maxPh === null) return true;
  return ph === null ? null : ph <= of.maxPh;
}

/**
 * Weight to lose, of the start, for a moisture : protein ratio, when only water is lost: M − R·P.
 *
 * Derived: mass balance.
 *
 * @returns fraction; 0 when it is there already; null for unusable numbers
 * @example lossForRatio(0.56, 0.155, 1.9) // 0.2655
 */
export function lossForRatio(
  moistureFraction: number,
  proteinFraction: number,
  ratio: number,
): number | null {
  const isFraction = (value: number) => value >= 0 && value <= 1;
  if (!isFraction(moistureFraction) || !isFraction(proteinFraction) || proteinFraction === 0) return null;
  if (!(ratio >= 0) || !Number.isFinite(ratio)) return null;
  return Math.max(0, moistureFraction - ratio * proteinFraction);
}
