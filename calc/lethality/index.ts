export { type HoldAtPresent, holdsAtPresent } from './at-present.ts';
export { COME_UP, type ComeUp, comeUp } from './come-up.ts';
export { cookFacts } from './cook-facts.ts';
export { type CookLoss, type CookLossDoubt, type CookLossRequest, cookLoss } from './cook-loss.ts';
export type { CookFindingId } from './finding-ids.ts';
export {
  HOLD_GAP_MIN,
  type HoldJudgement,
  type HoldReading,
  type HoldReason,
  type HoldRequest,
  interpolatedDwellS,
  judgeHold,
  LINE_GAP_MIN,
  type Run,
} from './judge-hold.ts';
export {
  decimalReductionMin,
  equivalentMin,
  type HeatResistance,
  type LethalityLine,
  LINE_70_Z7_5,
  LINE_70_Z10,
  LINE_90_UK,
  LINE_90_US,
  lethalRate,
  logReduction,
  zAt,
  zFromPoints,
} from './lethal-rate.ts';
export {
  type CookCondition,
  type CookLimit,
  type CookRuleSet,
  type FatColumn,
  type Hold,
  type HoldByFat,
  isByFat,
  thresholdC,
} from './limit.ts';
export {
  type CurvePoint,
  type Integration,
  pasteurisationValue,
  type ValueOptions,
} from './pasteurisation-value.ts';
export {
  logReductionOver,
  type MeatKind,
  meatKinds,
  type OrganismLine,
  organismLines,
  type Reduction,
  reductionsOf,
  type ValueRow,
  valuesOf,
} from './reductions.ts';
export {
  applicableLimits,
  type CookFacts,
  type LimitRefusal,
  lookUpHold,
  type ResolvedLimit,
  resolveLimit,
  TOP_FAT_PERCENT,
  UNKNOWN_FACTS,
} from './resolve-limit.ts';
export { COOK_RULE_SETS, cookLimit, cookRuleSet } from './rule-sets/index.ts';
export { cookStage } from './stage.ts';
export { COOK_RULES_BY_PLACE, type PlaceRule } from './tables/by-place.ts';
export { HEAT_RESISTANCE, HEAT_RESISTANCE_SOURCE, type HeatResistanceRow } from './tables/heat-resistance.ts';
export {
  PARASITE_TABLES,
  type ParasiteRow,
  type ParasiteTable,
  TRICHINELLA_FREEZING_SOURCE,
  trichinellaFreezingMeanH,
} from './tables/parasites.ts';
export type { CookLogResult, CookValues, ValueAt70 } from './values.ts';
