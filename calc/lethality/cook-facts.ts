import type { FormulaValues } from '../formula/index.ts';
import { type CookFacts, UNKNOWN_FACTS } from './resolve-limit.ts';

/** Families of whole muscle. Every other named family is minced, chopped, shredded or filled. */
const WHOLE_MUSCLE_FAMILIES: readonly string[] = ['cooked-ham', 'dry-bacon', 'dried-muscle', 'confit'];

/** Which birds, where that is certain; a line nobody can name may be any bird. */
function kindOf({ facts }: FormulaValues): CookFacts['poultryKind'] {
  if (facts.poultry !== true || facts.allergensUnknown.length > 0) return null;
  const turkey = facts.poultrySpecies.includes('turkey');
  const others = facts.poultrySpecies.some((species) => species !== 'turkey');
  return turkey && others ? 'both' : turkey ? 'turkey' : 'other';
}

/**
 * What a formula tells about the choice of a cooking limit. Fat is the most the lines allow; once the finished mass
 * is known it is counted on that, for the tables mean the product as cooked and water is what it loses.
 *
 * @param finishedMassG all finished product after chilling, g
 */
export function cookFacts(
  formula: FormulaValues | null,
  familyId: string | null,
  finishedMassG: number | null = null,
): CookFacts {
  if (formula === null) return UNKNOWN_FACTS;
  const { mix, facts } = formula;
  const loss =
    mix.totalG !== null && finishedMassG !== null && finishedMassG > 0 ? mix.totalG / finishedMassG : 1;
  const mostFat = mix.fat.maxFraction;
  return {
    hasPoultry: facts.poultry,
    poultryKind: kindOf(formula),
    fatFraction: mostFat === null ? null : Math.min(1, mostFat * Math.max(1, loss)),
    comminuted: familyId === null ? null : !WHOLE_MUSCLE_FAMILIES.includes(familyId),
    hasPorkLiver: facts.porkLiver,
  };
}
