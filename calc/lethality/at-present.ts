import { judgeHold } from './judge-hold.ts';
import { holdReadings } from './judge-log.ts';
import { type CookLimit, type Hold, thresholdC } from './limit.ts';
import { applicableLimits, lookUpHold } from './resolve-limit.ts';
import type { CookLogResult, CookValues } from './values.ts';

/** What the plan's rule set lists for a core as hot as it is now. */
export interface HoldAtPresent {
  readonly logId: string;
  /** Newest reading that counts, °C, the probe's error taken off. */
  readonly surelyC: number;
  /** Listed row at or below it; null: the set lists nothing so low. */
  readonly row: { readonly limit: CookLimit; readonly hold: Hold } | null;
  /** Seconds of that row's hold that the readings so far leave; null without a row. */
  readonly remainingS: number | null;
  readonly untilMs: number | null;
  /** It is the limit the plan names. Any other row met is a note and no pass. */
  readonly isPlans: boolean;
}

function latest({ readings }: CookLogResult) {
  const newest = readings.findLast(({ state }) => state !== 'excluded');
  return newest?.state === 'counts' && newest.tempC !== null
    ? { atMs: newest.atMs, tempC: newest.tempC }
    : null;
}

/**
 * The hold that would complete the cook at its present temperature, by listed rows only: the row of the plan's rule set
 * at or below what the core surely is, nothing in between two rows and nothing above. One for each log that is open.
 *
 * Null for a log whose offset or error is unknown, whose newest reading does not count, or that has passed.
 */
export function holdsAtPresent({ ruleSet, limit, facts, heatOver, logs }: CookValues): HoldAtPresent[] {
  if (ruleSet === null || heatOver) return [];
  return logs.flatMap((result): HoldAtPresent[] => {
    const { log, logId, state, readings } = result;
    const now = latest(result);
    if (state === 'pass' || now === null || log.errorC === null || log.offsetC === null || log.unitSuspect)
      return [];
    const surelyC = now.tempC - log.errorC;
    // The plan's own limit first: where the core is hot enough for it, no other row is wanted.
    const own = applicableLimits(ruleSet, facts).find((one) => one.limit === limit);
    const ownReached = own && thresholdC(own.limit.stated, 'C') <= surelyC;
    const row = ownReached ? own : lookUpHold(ruleSet, surelyC, facts);
    if (row === null || row === undefined)
      return [{ logId, surelyC, row: null, remainingS: null, untilMs: null, isPlans: false }];
    const judged = judgeHold(holdReadings(readings), {
      stated: row.limit.stated,
      holdS: row.hold.s,
      errorC: log.errorC,
      offsetKnown: true,
      unitSuspect: false,
      heatOver: false,
    });
    return [
      {
        logId,
        surelyC,
        row: { limit: row.limit, hold: row.hold },
        remainingS: judged.remainingS,
        untilMs: now.atMs + judged.remainingS * 1000,
        isPlans: row.limit === limit,
      },
    ];
  });
}
