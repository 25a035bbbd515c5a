import baseline from './limits-standing.json' with { type: 'json' };

/** The part of the work whose limits a withdrawal is about, by its stage. */
export type LimitStage = 'cure' | 'cook' | 'cool';

/** A rule set that may not be relied on any more. It is in force from the moment it is known, whatever the clock says. */
export interface Withdrawal {
  readonly stage: LimitStage;
  readonly ruleSetId: string;
  /** ISO date from which the rule set no longer stands. Shown, never compared with a clock. */
  readonly from: string;
  /** Why, in a sentence for the cook. */
  readonly reason: string;
}

/** Which limits still stand, as the site last said it. */
export interface LimitsStanding {
  /** ISO date or date-time at which the list was written. Of two lists the later rules. */
  readonly issued: string;
  readonly withdrawn: readonly Withdrawal[];
}

const MOST_WITHDRAWALS = 200;
const LONGEST_REASON = 400;
const STAGES: readonly string[] = ['cure', 'cook', 'cool'] satisfies LimitStage[];
const ISO = /^\d{4}-\d{2}-\d{2}(?:T[\d:.]+(?:Z|[+-]\d{2}:\d{2}))?$/;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown, longest: number): value is string =>
  typeof value === 'string' && value.trim() !== '' && value.length <= longest;
const isDate = (value: unknown): value is string =>
  typeof value === 'string' && ISO.test(value) && !Number.isNaN(Date.parse(value));

/**
 * Reads a list of withdrawn limits as it was fetched or kept.
 *
 * @returns null for anything that is not wholly such a list: half of it would hide a withdrawal
 */
export function readStanding(value: unknown): LimitsStanding | null {
  if (!isRecord(value) || !isDate(value.issued) || !Array.isArray(value.withdrawn)) return null;
  if (value.withdrawn.length > MOST_WITHDRAWALS) return null;
  const withdrawn: Withdrawal[] = [];
  for (const each of value.withdrawn as readonly unknown[]) {
    if (!isRecord(each)) return null;
    const { stage, ruleSetId, from, reason } = each;
    if (typeof stage !== 'string' || !STAGES.includes(stage) || !isText(ruleSetId, 100)) return null;
    if (!isDate(from) || !isText(reason, LONGEST_REASON)) return null;
    withdrawn.push({ stage: stage as LimitStage, ruleSetId, from, reason });
  }
  return { issued: value.issued, withdrawn };
}

/** The later of two lists; of two from the same moment, the second. An old copy on the way never takes back a newer. */
export function laterStanding(known: LimitsStanding, heard: LimitsStanding): LimitsStanding {
  return Date.parse(heard.issued) >= Date.parse(known.issued) ? heard : known;
}

/** The rule sets a batch is judged by, as far as a withdrawal asks: the record of a batch has this shape. */
interface Judged {
  readonly cure: { readonly ruleSetId: string | null };
  readonly process: { readonly cookRuleSetId: string | null; readonly coolRuleSetId: string | null };
}

/** The withdrawals that a batch is touched by, through the rule sets it is judged by. */
export function withdrawalsFor({ cure, process }: Judged, withdrawn: readonly Withdrawal[]): Withdrawal[] {
  const chosen: Readonly<Record<LimitStage, string | null>> = {
    cure: cure.ruleSetId,
    cook: process.cookRuleSetId,
    cool: process.coolRuleSetId,
  };
  return withdrawn.filter(({ stage, ruleSetId }) => chosen[stage] === ruleSetId);
}

/** The list as it stood when this edition was made. */
export const BUILT_STANDING: LimitsStanding = readStanding(baseline) ?? unreadable();

function unreadable(): never {
  throw new Error('calc/sources/limits-standing.json is no list of withdrawn limits');
}
