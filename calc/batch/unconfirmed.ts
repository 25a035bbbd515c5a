import type { Batch, RuleSetDefaults } from './record.ts';

/** A rule set of the batch that nobody has confirmed. */
export interface Unconfirmed {
  readonly subject: keyof RuleSetDefaults;
  /** Where it stands in the record. */
  readonly field: string;
  readonly id: string;
}

/** Rule sets that came from the kitchen's settings and wait for a person to say that they apply to this batch. */
export function unconfirmedRuleSets({ ruleSetDefaults, cure, process }: Batch): Unconfirmed[] {
  const sets = [
    ['cure', 'cure.ruleSetId', cure.ruleSetId],
    ['cook', 'process.cookRuleSetId', process.cookRuleSetId],
    ['cool', 'process.coolRuleSetId', process.coolRuleSetId],
  ] as const;
  return sets.flatMap(([subject, field, id]) =>
    ruleSetDefaults?.[subject] && id !== null ? [{ subject, field, id }] : [],
  );
}
