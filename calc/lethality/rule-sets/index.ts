import type { CookLimit, CookRuleSet } from '../limit.ts';
import { CANADA_MEAT } from './canada-meat.ts';
import {
  AUSTRALIA_MEAT,
  HEV_ADVISORY,
  IRELAND_COOK_CHILL,
  NEW_ZEALAND_CARD,
  UK_ACMSF_2007,
  UK_ADVICE,
} from './celsius-cards.ts';
import { UK_CHILLED_LIFE, US_CHILLED_LIFE } from './chilled-life.ts';
import { FOOD_CODE } from './food-code.ts';
import { FSIS_MEAT_6_5, FSIS_MEAT_7_0 } from './fsis-meat.ts';
import { CANADA_POULTRY, FSIS_POULTRY } from './fsis-poultry.ts';

/** Every cooking rule set a person can pick. */
export const COOK_RULE_SETS: readonly CookRuleSet[] = [
  UK_ADVICE,
  UK_ACMSF_2007,
  FOOD_CODE,
  FSIS_MEAT_6_5,
  FSIS_MEAT_7_0,
  FSIS_POULTRY,
  CANADA_MEAT,
  CANADA_POULTRY,
  NEW_ZEALAND_CARD,
  AUSTRALIA_MEAT,
  IRELAND_COOK_CHILL,
  HEV_ADVISORY,
  UK_CHILLED_LIFE,
  US_CHILLED_LIFE,
];

/** The rule set of an id, or undefined for an id this edition does not have. */
export function cookRuleSet(id: string | null): CookRuleSet | undefined {
  return COOK_RULE_SETS.find((set) => set.id === id);
}

/** The limit of an id inside a rule set. */
export function cookLimit(set: CookRuleSet | undefined, id: string | null): CookLimit | undefined {
  return set?.limits.find((limit) => limit.id === id);
}
