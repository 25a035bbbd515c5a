import { type ProcessSlice, phasesOf } from '../process/index.ts';
import { type CoolLeg, exactC } from './cool-leg.ts';
import type { CoolingResult, CoolLogResult, CoolValues } from './values.ts';

const MS_PER_MIN = 60_000;

/** A clock of the cooling rule that runs, on the pessimistic side. Times are ms since 1970 UTC. */
export interface CoolDeadline {
  /** From 1, in the order of the work. */
  readonly cooling: number;
  /** Null: chilling has to begin. */
  readonly leg: CoolLeg | null;
  readonly logId: string | null;
  /** The earliest moment at which it can have started. */
  readonly startMs: number;
  /** By when the end has to be shown: counted from that earliest start. */
  readonly latestMs: number;
  /**
   * `runs`: readings, or the end of the heat, show that it has started. `may-run`: the last reading was still above the
   * temperature where it starts, and the core may have left that right after.
   */
  readonly state: 'runs' | 'may-run';
}

/** The last reading above where a leg starts; null where there is none. */
function lastAboveMs({ readings }: CoolLogResult, { from }: CoolLeg): number | null {
  const fromC = from === null ? Number.POSITIVE_INFINITY : exactC(from);
  return (
    readings.findLast(({ tempC, state }) => state === 'counts' && tempC !== null && tempC > fromC)?.atMs ??
    null
  );
}

/** The legs that begin first: no later one can run before them. */
function isFirst({ from }: CoolLeg, legs: readonly CoolLeg[]): boolean {
  return from !== null && legs.every((other) => other.from === null || exactC(other.from) <= exactC(from));
}

type Bounds = Pick<CoolDeadline, 'startMs' | 'latestMs' | 'state'>;

/** A leg whose start no reading shows: from the end of the heat, or from the last reading above where it starts. */
function unread(
  leg: CoolLeg,
  legs: readonly CoolLeg[],
  aboveMs: number | null,
  heatEndMs: number | null,
): Bounds[] {
  if (heatEndMs === null) return [];
  const limitMs = leg.maxMin * MS_PER_MIN;
  if (leg.from === null) return [{ startMs: heatEndMs, latestMs: heatEndMs + limitMs, state: 'runs' }];
  if (!isFirst(leg, legs)) return [];
  const startMs = Math.max(heatEndMs, aboveMs ?? heatEndMs);
  return [{ startMs, latestMs: startMs + limitMs, state: 'may-run' }];
}

function deadlinesOfLog({ number, heatEndMs }: CoolingResult, log: CoolLogResult): CoolDeadline[] {
  const all = log.legs.map(({ leg }) => leg);
  return log.legs.flatMap(({ leg, judged, state }): CoolDeadline[] => {
    if (state === 'fail' || judged.endLatestMs !== null) return [];
    const { startEarliestMs, deadlineMs } = judged;
    const bounds: Bounds[] =
      deadlineMs === null
        ? unread(leg, all, lastAboveMs(log, leg), heatEndMs)
        : [{ startMs: startEarliestMs ?? deadlineMs, latestMs: deadlineMs, state: 'runs' }];
    return bounds.map((each) => ({ cooling: number, leg, logId: log.logId, ...each }));
  });
}

/** Chilling itself has to begin, where the rule says how soon. */
function chillStart({ number, heatEndMs }: CoolingResult, waitMin: number | undefined): CoolDeadline[] {
  if (waitMin === undefined || heatEndMs === null) return [];
  const latestMs = heatEndMs + waitMin * MS_PER_MIN;
  return [{ cooling: number, leg: null, logId: null, startMs: heatEndMs, latestMs, state: 'runs' }];
}

/**
 * Every clock of the chosen rule that runs or may run, the earliest end first. A leg that is met or missed has none,
 * nor has a cooling whose chill is over. A clock is no verdict: only readings are.
 *
 * @param values of the cooling as it was judged
 */
export function coolDeadlines({ ruleSet, coolings }: CoolValues, { steps }: ProcessSlice): CoolDeadline[] {
  const phases = phasesOf(steps);
  const legs = ruleSet?.legs ?? [];
  return coolings
    .flatMap((cooling): CoolDeadline[] => {
      const { number, heatEndMs, logs } = cooling;
      const phase = phases[number - 1];
      if (phase?.chillEndMs != null) return [];
      const withoutLog = legs.flatMap((leg) =>
        unread(leg, legs, null, heatEndMs).map((each) => ({ cooling: number, leg, logId: null, ...each })),
      );
      return [
        ...(phase?.chillStartMs == null ? chillStart(cooling, ruleSet?.chillStartMaxMin) : []),
        ...(logs.length === 0 ? withoutLog : logs.flatMap((log) => deadlinesOfLog(cooling, log))),
      ];
    })
    .toSorted((a, b) => a.latestMs - b.latestMs);
}
