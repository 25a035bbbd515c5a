export { isCheckOverdue, MONTHS_BETWEEN_CHECKS } from './check-overdue.ts';
export { SOURCES } from './register/index.ts';
export type { RuleSet } from './rule-set.ts';
export type { Mark, Source } from './source.ts';
export { isSourceId, type SourceId, sourceOf } from './source-of.ts';
