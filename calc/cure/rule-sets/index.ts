import { AUSTRALIA_NEW_ZEALAND } from './australia-new-zealand.ts';
import { CANADA_FEDERAL } from './canada-federal.ts';
import { CODEX } from './codex.ts';
import { EUROPEAN_UNION } from './european-union.ts';
import { GREAT_BRITAIN } from './great-britain.ts';
import type { CureLimit, CureRuleSet, ProductHeating } from './limit.ts';
import { US_FEDERAL } from './us-federal.ts';

export type {
  CureLimit,
  CureReference,
  CureRuleSet,
  ExpressedAs,
  ProductHeating,
  WeightBasis,
} from './limit.ts';

/** Every curing rule set carried. A person picks one; they are never averaged or blended. */
export const CURE_RULE_SETS: readonly CureRuleSet[] = [
  US_FEDERAL,
  CANADA_FEDERAL,
  GREAT_BRITAIN,
  EUROPEAN_UNION,
  AUSTRALIA_NEW_ZEALAND,
  CODEX,
];

/** The rule set of that id, or null when none is chosen or the id is not known here. */
export function cureRuleSet(id: string | null): CureRuleSet | null {
  return CURE_RULE_SETS.find((ruleSet) => ruleSet.id === id) ?? null;
}

/** The limits of a rule set that bind a product heated in that way. */
export function limitsFor(ruleSet: CureRuleSet, heating: ProductHeating): CureLimit[] {
  return ruleSet.limits.filter((limit) => limit.heating === 'any' || limit.heating === heating);
}
