export { isCheckOverdue, MONTHS_BETWEEN_CHECKS } from './check-overdue.ts';
export { SOURCES } from './register/index.ts';
export type { RuleSet } from './rule-set.ts';
export type { Mark, Source } from './source.ts';
export { isSourceId, type SourceId, sourceOf } from './source-of.ts';
export {
  BUILT_STANDING,
  type LimitStage,
  type LimitsStanding,
  laterStanding,
  readStanding,
  type Withdrawal,
  withdrawalsFor,
} from './standing.ts';
