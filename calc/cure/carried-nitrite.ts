import type { SourceId } from '../sources/index.ts';
import type { CureLine } from './cure-line.ts';

/**
 * Most nitrite a bought cured product is taken to bring when its maker's figure is not known, mg/kg
 * as sodium nitrite: the highest the United States let a finished cured product hold
 * (9 CFR 424.21(c)). Real residues are mostly far lower.
 */
export const CARRIED_WORST_PPM = 200;
export const CARRIED_WORST_SOURCE = 'us-9-cfr-424-21-c' satisfies SourceId;

/** Meat or fish this salty has been cured in some way. Common practice, no source. */
const SALTED_FRACTION = 0.01;

/**
 * Powders, juices and ferments of leaf and root that are rich in nitrate and, once cultured, in nitrite. Packs differ by
 * far more than any bound could cover. A stock is none. Common practice, no source.
 */
const RICH = '(?:celery|celeriac|beet(?:root)?|chard|spinach|lettuce|cabbage|vegetable)';
const CURING_VEGETABLE = new RegExp(
  `\\b${RICH}\\b.*\\b(?:powder|concentrate|extract|juice)|\\b(?:cultured|fermented)\\b.*\\b${RICH}\\b`,
  'i',
);
const NO_CURE = /\b(?:stock|bouillon|broth)\b/i;

/** Whether a line that is no curing salt by its part is a vegetable that cures. */
export function isCuringVegetable(line: CureLine): boolean {
  if (line.curingSalt !== null || line.massG === 0) return false;
  const called = `${line.name} ${line.ingredient?.name ?? ''}`;
  return CURING_VEGETABLE.test(called) && !NO_CURE.test(called);
}

/** Parts of a mix that bought cured goods come in as. */
const MAY_BE_CURED: readonly string[] = ['lean', 'fat', 'liver', 'offal', 'garnish', 'lining'];

/**
 * Whether a line whose nitrite nobody declared may bring some: cured and finished products of the
 * table, salted fish, and whatever is salty, or unknown in kind and salt, among meat, garnish and lining.
 */
function mayCarryNitrite(line: CureLine): boolean {
  if (!MAY_BE_CURED.includes(line.part)) return false;
  const { ingredient, saltFraction } = line;
  const isSalted = saltFraction !== null && saltFraction >= SALTED_FRACTION;
  if (ingredient === null) {
    return isSalted || (saltFraction === null && (line.part === 'garnish' || line.part === 'lining'));
  }
  if (ingredient.category === 'cured-meat' || ingredient.category === 'reference-product') return true;
  return isSalted && ['meat', 'fat-tissue', 'offal', 'fish', 'skin'].includes(ingredient.category);
}

/** What one line carries, g as sodium nitrite. */
export interface CarriedNitrite {
  readonly lineId: string;
  readonly name: string;
  readonly part: CureLine['part'];
  /** By the maker's figure; 0 where only the bound is known. */
  readonly lowG: number;
  /** By the maker's figure or the stated worst case; null when the weight is not known or nothing bounds it. */
  readonly highG: number | null;
  /** No maker's figure: `highG` is the stated worst case. */
  readonly isBound: boolean;
}

/** Every line that carries nitrite or may. Curing salts are not among them. */
export function carriedNitrite(lines: readonly CureLine[]): CarriedNitrite[] {
  const carried: CarriedNitrite[] = [];
  for (const line of lines) {
    if (line.curingSalt !== null || line.massG === 0) continue;
    const isBound = line.carriedPpm === null;
    const isVegetable = isCuringVegetable(line);
    if (isBound ? !isVegetable && !mayCarryNitrite(line) : line.carriedPpm === 0) continue;
    const ppm = line.carriedPpm ?? CARRIED_WORST_PPM;
    const isOpen = line.massG === null || (isBound && isVegetable);
    const highG = isOpen ? null : ((line.massG ?? 0) * ppm) / 1e6;
    const { id: lineId, name, part } = line;
    carried.push({ lineId, name, part, lowG: isBound ? 0 : (highG ?? 0), highG, isBound });
  }
  return carried;
}
