import { limitAsSodiumNitrite } from '../../cure/index.ts';
import { AUSTRALIA_NEW_ZEALAND, CANADA_FEDERAL, GREAT_BRITAIN } from './commonwealth.ts';
import { CODEX, EUROPEAN_UNION } from './europe-and-codex.ts';
import type { WholeMuscleKind, WholeMuscleLimit, WholeMuscleRuleSet } from './limit.ts';
import { US_FEDERAL } from './us-federal.ts';

export type { CureRoute, WholeMuscleKind, WholeMuscleLimit, WholeMuscleRuleSet } from './limit.ts';

/** Rule sets for whole muscle, under the ids of the rule sets of mixed forcemeats. Never averaged or blended. */
export const WHOLE_MUSCLE_RULE_SETS: readonly WholeMuscleRuleSet[] = [
  US_FEDERAL,
  CANADA_FEDERAL,
  GREAT_BRITAIN,
  EUROPEAN_UNION,
  AUSTRALIA_NEW_ZEALAND,
  CODEX,
];

/** The rule set of that id, or null when none is chosen or the id is not known here. */
export function wholeMuscleRuleSet(id: string | null): WholeMuscleRuleSet | null {
  return WHOLE_MUSCLE_RULE_SETS.find((ruleSet) => ruleSet.id === id) ?? null;
}

/** The limits that bind such a product. Empty: none is carried for it, which is not the same as none exists. */
export function wholeMuscleLimits(ruleSet: WholeMuscleRuleSet, kind: WholeMuscleKind): WholeMuscleLimit[] {
  const { product, finish, isTraditional, route } = kind;
  return ruleSet.limits.filter(
    (limit) =>
      (limit.products === undefined || (product !== null && limit.products.includes(product))) &&
      (limit.finishes === undefined || (finish !== null && limit.finishes.includes(finish))) &&
      (limit.routes === undefined || limit.routes.includes(route)) &&
      (limit.traditional === undefined || limit.traditional === isTraditional),
  );
}

/** Highest nitrite any rule set carried here lets into whole muscle, as sodium nitrite, mg/kg. */
export const HIGHEST_WHOLE_MUSCLE_PPM = Math.max(
  ...WHOLE_MUSCLE_RULE_SETS.flatMap(({ limits }) => limits)
    .filter(({ kind, role }) => kind === 'ingoing' && role === 'ceiling')
    .map(({ expressedAs, valuePpm }) => limitAsSodiumNitrite(expressedAs, valuePpm)),
);
