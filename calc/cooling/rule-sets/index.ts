import type { CoolRuleSet } from '../cool-leg.ts';
import {
  AUSTRALIA_NEW_ZEALAND,
  CANADA_FOOD_SERVICE,
  FRANCE_CATERING,
  LARGE_CURED,
  LARGE_UNCURED,
  UK_RETAIL_UNDER_5KG,
} from './celsius.ts';
import { FOOD_CODE_COOLING, FSIS_1, FSIS_2, FSIS_3_CURED, SLOW_20_CURED } from './united-states.ts';

/** Every cooling rule set a person can pick. They do not nest: passing one says nothing of another. */
export const COOL_RULE_SETS: readonly CoolRuleSet[] = [
  LARGE_UNCURED,
  LARGE_CURED,
  UK_RETAIL_UNDER_5KG,
  FOOD_CODE_COOLING,
  AUSTRALIA_NEW_ZEALAND,
  CANADA_FOOD_SERVICE,
  FRANCE_CATERING,
  FSIS_1,
  FSIS_2,
  FSIS_3_CURED,
  SLOW_20_CURED,
];

/** The rule set of an id, or undefined for an id this edition does not have. */
export function coolRuleSet(id: string | null): CoolRuleSet | undefined {
  return COOL_RULE_SETS.find((set) => set.id === id);
}
