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
