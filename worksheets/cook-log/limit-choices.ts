import {
  type CookLimit,
  type CookValues,
  isByFat,
  type LimitRefusal,
  resolveLimit,
  thresholdC,
} from '@larderwright/calc/lethality';
import { formWords, holdWords } from '../words/cook-limits.ts';
import { limitTemp } from '../words/limit-temp.ts';

/** One pair of the rule set as a person picks it. */
export interface LimitChoice {
  readonly id: string;
  readonly label: string;
}

/** The pairs of the chosen rule set, parted by whether they may judge this batch. */
export interface LimitChoices {
  readonly fits: readonly LimitChoice[];
  readonly refused: readonly { readonly reason: LimitRefusal; readonly limits: readonly LimitChoice[] }[];
}

function labelOf(limit: CookLimit, printed: string | null): string {
  const temperature = limitTemp(limit.stated, 'minimum').text;
  const parts = [temperature, printed === null ? '' : holdWords(printed), formWords(limit.form)];
  return parts.filter((part) => part !== '').join(', ');
}

/** The choice of limits for a batch: only those of the rule set it names, hottest first. */
export function limitChoices({ ruleSet, facts }: CookValues): LimitChoices {
  const fits: LimitChoice[] = [];
  const refused = new Map<LimitRefusal, LimitChoice[]>();
  const limits = (ruleSet?.limits ?? []).toSorted(
    (a, b) => thresholdC(b.stated, 'C') - thresholdC(a.stated, 'C'),
  );
  for (const limit of limits) {
    const resolved = resolveLimit(limit, facts);
    if (resolved.ok) {
      fits.push({ id: limit.id, label: labelOf(limit, resolved.hold.printed) });
    } else {
      const printed = isByFat(limit.hold) ? null : limit.hold.printed;
      const choice = { id: limit.id, label: labelOf(limit, printed) };
      refused.set(resolved.reason, [...(refused.get(resolved.reason) ?? []), choice]);
    }
  }
  return { fits, refused: [...refused].map(([reason, choices]) => ({ reason, limits: choices })) };
}
