export { type ComparedLeg, type CoolComparison, coolAcrossRuleSets } from './across-rule-sets.ts';
export { type CoolCondition, type CoolLeg, type CoolRuleSet, type CuredWay, exactC } from './cool-leg.ts';
export {
  type CoolingCurve,
  type CoolPoint,
  dwellMin,
  fallsThroughout,
  firstAtOrBelow,
  lastAbove,
} from './cooling-curve.ts';
export {
  type CoolFacts,
  type CuredState,
  coolFacts,
  coolFactsOf,
  curedState,
  MOST_LIVER_FRACTION,
  UNKNOWN_COOL_FACTS,
} from './cured.ts';
export { type CoolDeadline, coolDeadlines } from './deadlines.ts';
export type { CoolFindingId } from './finding-ids.ts';
export {
  COOL_GAP_MIN,
  type CoolReading,
  type CoolReason,
  type CoolRequest,
  judgeCooling,
  type LegJudgement,
  type LineLeg,
} from './judge-cooling.ts';
export { type CurveJudgement, type CurveLeg, judgeCurve } from './judge-curve.ts';
export { COOL_RULE_SETS, coolRuleSet } from './rule-sets/index.ts';
export { coolStage } from './stage.ts';
export type { CoolingResult, CoolLogResult, CoolValues, LegResult } from './values.ts';
