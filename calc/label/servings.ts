import { roundTo } from '../quantities/index.ts';

/** A serving by the United States' reference amounts, g. */
export interface ReferenceAmount {
  readonly id: string;
  readonly what: string;
  readonly readyG: number;
  readonly rawG: number | null;
  readonly rules: 'meat' | 'poultry' | 'fish-game';
  readonly mark: 'confirmed' | 'memory';
}

const of = (
  id: string,
  what: string,
  rules: ReferenceAmount['rules'],
  readyG: number,
  rawG: number | null,
  mark: ReferenceAmount['mark'],
): ReferenceAmount => ({ id, what, rules, readyG, rawG, mark });

/** 9 CFR 317.312 (meat), 9 CFR 381.412 (poultry), 21 CFR 101.12(b) (fish and game). */
export const REFERENCE_AMOUNTS: readonly ReferenceAmount[] = [
  of('meat-pate', 'Luncheon meat, pâté, liver sausage, brawn, spreads', 'meat', 55, null, 'memory'),
  of('meat-sausage', 'Linked sausage', 'meat', 55, 75, 'memory'),
  of('meat-dried', 'Dried: water to protein under 2 to 1', 'meat', 30, null, 'confirmed'),
  of('meat-bacon', 'Bacon', 'meat', 15, 54, 'confirmed'),
  of('meat-cut', 'Cuts and hams without sauce', 'meat', 85, 114, 'memory'),
  of('poultry-pate', 'Poultry loaves and luncheon products', 'poultry', 55, null, 'confirmed'),
  of('poultry-sausage', 'Linked poultry sausage', 'poultry', 55, 69, 'confirmed'),
  of('poultry-dried', 'Dried poultry', 'poultry', 30, null, 'confirmed'),
  of('poultry-cut', 'Cuts without sauce, cured poultry', 'poultry', 85, 114, 'confirmed'),
  of('fish-spread', 'Smoked or pickled fish, shellfish or game; spreads', 'fish-game', 55, null, 'memory'),
  of('fish-cut', 'Fish, shellfish or game without sauce', 'fish-game', 85, 110, 'memory'),
];

/** Servings in a pack as declared. */
export interface Servings {
  readonly exact: number;
  readonly declared: number;
  /** Say "about": the figure was rounded. */
  readonly about: boolean;
}

const WHOLE_ABOVE = 5;
const NOISE = 1e-9;

/**
 * Servings per container: whole above 5, halves from 2 to 5, "about" when rounded. Guide to nutrition labeling,
 * attachment 6. Below 2 they are rounded to halves too (common practice).
 */
export function servingsOf(netG: number, servingG: number): Servings | null {
  if (!(netG > 0) || !(servingG > 0) || !Number.isFinite(netG) || !Number.isFinite(servingG)) return null;
  const exact = netG / servingG;
  const declared = exact > WHOLE_ABOVE ? roundTo(exact, 0) : roundTo(exact * 2, 0) / 2;
  return { exact, declared, about: Math.abs(exact - declared) > NOISE };
}
