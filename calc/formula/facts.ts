import {
  type Allergen,
  type Ingredient,
  isFish,
  isLiver,
  isPorkLiver,
  isPoultry,
  isShellfish,
  joinAllergens,
} from '../ingredients/index.ts';
import { compensatedSum } from '../quantities/index.ts';
import type { Mix } from './mix.ts';
import { isInBowl, mayBeAnything } from './parts.ts';
import type { ReadLine } from './read-line.ts';
import type { LinePart } from './slice.ts';

/** What other rules ask of a formula. `null` is "cannot tell": some line has no known ingredient. */
export interface FormulaFacts {
  /** Meat, liver, skin, fat or stock of any bird, one line being enough. Egg is none. A lining counts. */
  readonly poultry: boolean | null;
  readonly poultrySpecies: readonly string[];
  readonly porkLiver: boolean | null;
  readonly fish: boolean | null;
  readonly shellfish: boolean | null;
  /** All liver in the bowl, g, and its share of the total. */
  readonly liverG: number | null;
  readonly liverFraction: number | null;
  /** Lines whose ingredient comes already cured and may carry nitrite. */
  readonly curedLines: readonly string[];
  readonly euAllergens: readonly Allergen[];
  readonly usAllergens: readonly Allergen[];
  /** Lines whose allergens nobody has told. */
  readonly allergensUnknown: readonly string[];
}

/** Present for certain, absent for certain, or unknown because some line might be it. */
function present(
  lines: readonly ReadLine[],
  test: (row: Ingredient) => boolean,
  mayBe: (part: LinePart) => boolean = mayBeAnything,
): boolean | null {
  if (lines.some(({ row }) => row !== undefined && test(row))) return true;
  return lines.some(({ row, line }) => row === undefined && mayBe(line.part)) ? null : false;
}

/** Lines of which something is really in the batch: a planned or weighed zero is not. */
function used(lines: readonly ReadLine[], mix: Mix): ReadLine[] {
  return lines.filter((_, index) => mix.lines[index]?.massG !== 0);
}

function liver(lines: readonly ReadLine[], mix: Mix): number | null {
  const masses = lines
    .map(({ row, line }, index) => ({ row, line, massG: mix.lines[index]?.massG ?? null }))
    .filter(({ line }) => isInBowl(line.part))
    .filter(({ row, line }) => line.part === 'liver' || (row !== undefined && isLiver(row)))
    .map(({ massG }) => massG);
  return masses.some((massG) => massG === null) ? null : compensatedSum(masses.map((massG) => massG ?? 0));
}

/**
 * Facts of a formula that cooking, curing, cooling and labels follow.
 * @param mix the mix in use, made of the same lines in the same order
 */
export function formulaFacts(lines: readonly ReadLine[], mix: Mix): FormulaFacts {
  const real = used(lines, mix);
  const rows = real.flatMap(({ row }) => row ?? []);
  const liverG = liver(lines, mix);
  const empty = lines.length === 0;
  const orUnknown = (answer: boolean | null) => (empty ? null : answer);
  return {
    poultry: orUnknown(present(real, isPoultry)),
    poultrySpecies: [...new Set(rows.filter(isPoultry).map(({ species }) => species))].sort(),
    porkLiver: orUnknown(present(real, isPorkLiver, (part) => part === 'liver' || part === 'offal')),
    fish: orUnknown(present(real, isFish)),
    shellfish: orUnknown(present(real, isShellfish)),
    liverG: empty ? null : liverG,
    liverFraction: liverG === null || !mix.totalG ? null : liverG / mix.totalG,
    curedLines: real.filter(({ row }) => row?.category === 'cured-meat').map(({ line }) => line.id),
    euAllergens: joinAllergens(rows.map(({ euAllergens }) => euAllergens)),
    usAllergens: joinAllergens(rows.map(({ usAllergens }) => usAllergens)),
    allergensUnknown: real
      .filter(({ row, line }) => row === undefined && line.part !== 'salt' && line.part !== 'curing-salt')
      .map(({ line }) => line.id),
  };
}
