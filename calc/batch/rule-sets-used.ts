import { coolRuleSet } from '../cooling/index.ts';
import { cureRuleSet } from '../cure/index.ts';
import { wholeMuscleRuleSet } from '../dry-cure/index.ts';
import { cookRuleSet } from '../lethality/index.ts';
import { isCheckOverdue, type RuleSet } from '../sources/index.ts';
import type { Batch } from './record.ts';

/** A rule set the batch is judged by, as the foot of a sheet names it. */
export interface RuleSetUsed {
  readonly subject: 'nitrite' | 'nitrite in whole muscle' | 'cook' | 'cool';
  readonly id: string;
  readonly title: string;
  readonly jurisdiction: string;
  readonly edition: string;
  readonly reviewed: string;
  /** Nobody has compared our figures with the text for a year. */
  readonly overdue: boolean;
}

/** Limits on whole muscle are another table of the same rule, with an edition of its own. */
function curesWholeMuscle({ dryCure, brine }: Batch): boolean {
  return (dryCure?.pieces.length ?? 0) > 0 || (brine?.method ?? null) !== null;
}

/** The rule sets a person chose, with their editions. One not chosen is simply absent. */
export function ruleSetsUsed(batch: Batch, todayIso: string): RuleSetUsed[] {
  const chosen: [RuleSetUsed['subject'], RuleSet | null | undefined][] = [
    ['nitrite', cureRuleSet(batch.cure.ruleSetId)],
    ['nitrite in whole muscle', curesWholeMuscle(batch) ? wholeMuscleRuleSet(batch.cure.ruleSetId) : null],
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
