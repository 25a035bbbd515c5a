import type { VerdictState } from '../findings/index.ts';
import type { CheckedLog, CheckedReading } from '../probe-log/index.ts';
import type { ComeUp } from './come-up.ts';
import type { CookFindingId } from './finding-ids.ts';
import type { HoldJudgement } from './judge-hold.ts';
import type { CookLimit, CookRuleSet, Hold } from './limit.ts';
import type { CookFacts } from './resolve-limit.ts';

/** Pasteurisation values, min at 70 °C. Readings under 60 °C count nothing in the first three. Information only. */
export interface ValueAt70 {
  /** z = 7.5 °C, along straight lines. */
  readonly exactMin: number;
  readonly trapezoidMin: number;
  readonly failSafeMin: number;
  /** z = 10 °C, along straight lines, from all readings. */
  readonly z10Min: number;
}

/** What one probe makes of the cook. */
export interface CookLogResult {
  readonly logId: string;
  readonly name: string;
  readonly log: CheckedLog;
  /** Readings of the judged heating with its carry-over, those a person left out included. */
  readonly readings: readonly CheckedReading[];
  readonly hold: HoldJudgement | null;
  /** End of the judged heating, ms since 1970 UTC; null while nobody wrote it down. */
  readonly heatEndMs: number | null;
  readonly comeUp: ComeUp;
  readonly atHeatEnd: ValueAt70;
  readonly whole: ValueAt70;
  readonly state: VerdictState;
  readonly reason: CookFindingId;
}

export interface CookValues {
  readonly ruleSet: CookRuleSet | null;
  readonly limit: CookLimit | null;
  /** The hold the limit asks of this product; null where it may not judge it. */
  readonly hold: Hold | null;
  readonly facts: CookFacts;
  readonly heatOver: boolean;
  readonly logs: readonly CookLogResult[];
  /** The log whose result rules. */
  readonly rulingLogId: string | null;
}
