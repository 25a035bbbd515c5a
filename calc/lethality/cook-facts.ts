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
  const { mix, lined, facts } = formula;
  const { totalG } = lined ?? mix;
  const loss = totalG !== null && finishedMassG !== null && finishedMassG > 0 ? totalG / finishedMassG : 1;
  // The tables mean the product; a fat lining is part of it, and a lean one must not hide the fat of the mix.
  const most = [mix, ...(lined ? [lined] : [])].map(({ fat }) => fat.maxFraction);
  const mostFat = most.reduce((high, fat) => (high === null || fat === null ? null : Math.max(high, fat)));
  return {
    hasPoultry: facts.poultry,
    poultryKind: kindOf(formula),
    fatFraction: mostFat === null ? null : Math.min(1, mostFat * Math.max(1, loss)),
    comminuted: familyId === null ? null : !WHOLE_MUSCLE_FAMILIES.includes(familyId),
    hasPorkLiver: facts.porkLiver,
  };
}
