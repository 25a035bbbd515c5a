import { coolRuleSet } from '../cooling/index.ts';
import { cureRuleSet } from '../cure/index.ts';
import { cookRuleSet } from '../lethality/index.ts';
import { isCheckOverdue, type RuleSet } from '../sources/index.ts';
import type { Batch } from './record.ts';

/** A rule set the batch is judged by, as the foot of a sheet names it. */
export interface RuleSetUsed {
  readonly subject: 'nitrite' | 'cook' | 'cool';
  readonly id: string;
  readonly title: string;
  readonly jurisdiction: string;
  readonly edition: string;
  readonly reviewed: string;
  /** Nobody has compared our figures with the text for a year. */
  readonly overdue: boolean;
}

/** The rule sets a person chose, with their editions. One not chosen is simply absent. */
export function ruleSetsUsed(batch: Batch, todayIso: string): RuleSetUsed[] {
  const chosen: [RuleSetUsed['subject'], RuleSet | null | undefined][] = [
    ['nitrite', cureRuleSet(batch.cure.ruleSetId)],
    ['cook', cookRuleSet(batch.process.cookRuleSetId)],
    ['cool', coolRuleSet(batch.process.coolRuleSetId)],
  ];
  return chosen.flatMap(([subject, set]) => {
    if (!set) return [];
    const { id, title, jurisdiction, edition, reviewed } = set;
    return [
      { subject, id, title, jurisdiction, edition, reviewed, overdue: isCheckOverdue(reviewed, todayIso) },
    ];
  });
}
