import type { Batch, Unconfirmed } from '@larderwright/calc/batch';
import { edit } from './store.ts';

type Subject = Unconfirmed['subject'];

/** A person has looked at it: it is no default any more. */
function confirmed(batch: Batch, subject: Subject): Batch {
  const { ruleSetDefaults } = batch;
  return ruleSetDefaults?.[subject]
    ? { ...batch, ruleSetDefaults: { ...ruleSetDefaults, [subject]: false } }
    : batch;
}

/** The rule set that came from the settings applies to this batch. */
export function confirmRuleSet(subject: Subject): void {
  edit((batch) => confirmed(batch, subject));
}

/** Chooses a rule set; null: none. A cook's limit belongs to its rule set: with another it is to be chosen again. */
export function chooseRuleSet(subject: Subject, id: string | null): void {
  edit((before) => {
    const batch = confirmed(before, subject);
    const { cure, process } = batch;
    if (subject === 'cure') return { ...batch, cure: { ...cure, ruleSetId: id } };
    if (subject === 'cool') return { ...batch, process: { ...process, coolRuleSetId: id } };
    return { ...batch, process: { ...process, cookRuleSetId: id, cookLimitId: null } };
  });
}
