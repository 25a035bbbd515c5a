import {
  BATCH_SCHEMA,
  type Batch,
  CALC_VERSION,
  stateOf,
  unconfirmedRuleSets,
} from '@larderwright/calc/batch';
import { BUILT_STANDING, isCheckOverdue, type RuleSet, withdrawalsFor } from '@larderwright/calc/sources';
import * as say from '#words/parts/card-head.ts';
import { $limits } from '../state/limits.ts';
import { recordWords } from '../words/record.ts';
import { NOT_CONFIRMED } from '../words/rule-subjects.ts';
import { standingWords } from '../words/standing.ts';
import type { CardHead } from './blank-head.ts';
import { wallOf } from './clock-text.ts';

export { BLANK_HEAD, type CardHead } from './blank-head.ts';

const known = (text: string) => text.trim() || null;

/** A rule set with its edition and the day it was last compared with its text. */
function ruleSetLine(
  { jurisdiction, title, edition, reviewed }: RuleSet,
  now: string,
  isDefault: boolean,
): string {
  const overdue = isCheckOverdue(reviewed, now) ? say.checkOverdue : '';
  const unconfirmed = isDefault ? NOT_CONFIRMED : '';
  return `${say.checked(jurisdiction, title, edition, reviewed, overdue)}${unconfirmed}`;
}

/** Says on every card that a batch is held or discarded; null while it may be used. */
function outOfUse(batch: Batch): string | null {
  const { state, change } = stateOf(batch);
  if (!change || (state !== 'held' && state !== 'discarded')) return null;
  const { at, by, why } = change;
  return recordWords[state === 'held' ? 'record.held' : 'record.discarded']({ at, by, why }).title;
}

/** Says on every card that a rule set of the batch was withdrawn. */
function withdrawn(batch: Batch): string | null {
  const { withdrawn: all } = $limits.get()?.standing ?? BUILT_STANDING;
  const [first] = withdrawalsFor(batch, all);
  return first ? standingWords['limits.withdrawn']({ ...first }).title : null;
}

/**
 * Head and foot of a card.
 *
 * @param ruleSets those its figures are judged by
 * @param now ISO 8601 with offset
 */
export function cardHead(batch: Batch, ruleSets: readonly (RuleSet | null)[], now: string): CardHead {
  const printed = wallOf(now);
  const unconfirmed = unconfirmedRuleSets(batch).map(({ id }) => id);
  return {
    demo: batch.demo,
    product: known(batch.product.name),
    batchNo: known(batch.product.batchNo),
    kitchen: known(batch.product.kitchen),
    ruleSets: ruleSets
      .filter((set) => set !== null)
      .map((set) => ruleSetLine(set, now, unconfirmed.includes(set.id))),
    version: say.calcRecord(CALC_VERSION, BATCH_SCHEMA),
    batchId: batch.id === 'empty' ? null : batch.id,
    outOfUse: outOfUse(batch) ?? withdrawn(batch),
    printedAt: printed ? `${printed.date} ${printed.clock}` : null,
  };
}
