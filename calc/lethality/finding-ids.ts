import type { HoldReason } from './judge-hold.ts';
import type { CookCondition } from './limit.ts';
import type { LimitRefusal } from './resolve-limit.ts';

/** Everything the cook can say: reasons of its verdict and findings beside it. */
export type CookFindingId =
  | HoldReason
  | LimitRefusal
  | `cook.condition-${Exclude<CookCondition, 'come-up'>}`
  | 'cook.no-rule-set'
  | 'cook.rule-set-unknown'
  | 'cook.no-limit'
  | 'cook.limit-unknown'
  | 'cook.no-log'
  | 'cook.poultry-under-meat-limit'
  | 'cook.keep-probe-in'
  | 'cook.carry-over'
  | 'cook.other-pair-met'
  | 'cook.pork-liver'
  | 'cook.pork-liver-met'
  | 'cook.fat-as-mixed'
  | 'cook.come-up-slow'
  | 'cook.come-up-not-shown'
  | 'cook.gap-at-limit'
  | 'cook.gap-long'
  | 'cook.reading-cannot-be'
  | 'cook.reading-unreadable'
  | 'cook.exclusion-incomplete'
  | 'cook.outside-steps'
  | 'cook.reheat-not-judged'
  | 'cook.error-wide';
