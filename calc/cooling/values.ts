import type { VerdictState } from '../findings/index.ts';
import type { CheckedLog, CheckedReading } from '../probe-log/index.ts';
import type { CoolLeg, CoolRuleSet } from './cool-leg.ts';
import type { CoolFacts, CuredState } from './cured.ts';
import type { CoolFindingId } from './finding-ids.ts';
import type { LegJudgement } from './judge-cooling.ts';

/** One leg of one log, with the reason that counts in the end. */
export interface LegResult {
  readonly leg: CoolLeg;
  readonly judged: LegJudgement;
  readonly state: VerdictState;
  readonly reason: CoolFindingId;
  /** When the core is expected at the end, ms since 1970 UTC; null where nothing shows it. */
  readonly projectedMs: number | null;
}

/** What one probe makes of one cooling. */
export interface CoolLogResult {
  readonly logId: string;
  readonly name: string;
  readonly log: CheckedLog;
  /** Readings from the end of heating on, those a person left out included. */
  readonly readings: readonly CheckedReading[];
  /** Rises seen on the way down, °C above the lowest before, larger than the probe's error explains; else null. */
  readonly rewarmedC: number | null;
  readonly legs: readonly LegResult[];
}

/** One heating's cooling. A reheat has its own. */
export interface CoolingResult {
  /** From 1, in the order of the work. */
  readonly number: number;
  readonly heatEndMs: number | null;
  readonly logs: readonly CoolLogResult[];
}

export interface CoolValues {
  readonly ruleSet: CoolRuleSet | null;
  readonly facts: CoolFacts;
  /** Whether the cure lets the set be used; null for a set that asks for none. */
  readonly cured: CuredState | null;
  readonly coolings: readonly CoolingResult[];
}
