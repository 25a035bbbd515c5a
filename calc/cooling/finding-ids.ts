import type { CoolCondition } from './cool-leg.ts';
import type { CoolReason } from './judge-cooling.ts';

/** Everything the cooling can say: reasons of its verdicts and findings beside them. */
export type CoolFindingId =
  | CoolReason
  | `cool.condition-${CoolCondition}`
  | 'cool.no-rule-set'
  | 'cool.rule-set-unknown'
  | 'cool.no-log'
  | 'cool.cured-not-met'
  | 'cool.cured-unknown'
  | 'cool.cured-liver'
  | 'cool.not-falling'
  | 'cool.clock-back'
  | 'cool.chill-start-met'
  | 'cool.chill-start-late'
  | 'cool.chill-start-unknown'
  | 'cool.good-practice-missed'
  | 'cool.log-more-often'
  | 'cool.will-miss'
  | 'cool.act-by'
  | 'cool.rewarmed'
  | 'cool.clock-assumed'
  | 'cool.reading-cannot-be'
  | 'cool.reading-unreadable'
  | 'cool.exclusion-incomplete';
