import { type CheckedReading, checkLog, hottestMediumC, projectCrossingMs } from '../probe-log/index.ts';
import { inPhase, type Phase, type ProbeLog, type ProcessSlice } from '../process/index.ts';
import { entryValue } from '../quantities/index.ts';
import { type CoolLeg, type CoolRuleSet, exactC } from './cool-leg.ts';
import { type CoolFacts, type CuredState, curedState } from './cured.ts';
import type { CoolFindingId } from './finding-ids.ts';
import { type CoolReading, judgeCooling, type LegJudgement } from './judge-cooling.ts';
import type { CoolLogResult, LegResult } from './values.ts';

/** A rise no probe error explains, over twice the error. House rule. */
const RISE_C = 1;

function coolReadings(readings: readonly CheckedReading[]): CoolReading[] {
  return readings.flatMap(({ atMs, tempC, state }) =>
    state === 'excluded' || state === 'unreadable' || tempC === null
      ? []
      : [{ atMs, tempC, counts: state === 'counts' }],
  );
}

/** Largest rise over the lowest reading before it, once the core has begun to fall. */
function rewarming(readings: readonly CoolReading[], errorC: number | null): number | null {
  const sound = readings.filter(({ counts }) => counts);
  const top = sound.findIndex(
    ({ tempC }, index) => (sound[index + 1]?.tempC ?? Number.POSITIVE_INFINITY) < tempC,
  );
  let lowestC = Number.POSITIVE_INFINITY;
  let rise = 0;
  for (const { tempC } of top === -1 ? [] : sound.slice(top + 1)) {
    rise = Math.max(rise, tempC - lowestC);
    lowestC = Math.min(lowestC, tempC);
  }
  return rise > RISE_C + 2 * (errorC ?? 0) ? rise : null;
}

const CURED_REASON: Readonly<Record<Exclude<CuredState, 'met'>, CoolFindingId>> = {
  'not-met': 'cool.cured-not-met',
  unknown: 'cool.cured-unknown',
  liver: 'cool.cured-liver',
};

/**
 * Whether the clock went back while this cooling was written down. Every time after that may be too early by nobody
 * knows how much, so that no stretch of it can be shown short enough.
 */
function clockWentBack(log: readonly CheckedReading[], cooling: readonly CheckedReading[]): boolean {
  const first = cooling.find(({ doubt }) => doubt !== 'clock-back')?.index ?? Number.POSITIVE_INFINITY;
  return log.some(({ doubt, index }) => doubt === 'clock-back' && index > first);
}

/** The leg's own result, unless the set may not be used for this product or asks for a fall without a rise. */
function decide(
  judged: LegJudgement,
  cured: CuredState | null,
  rose: boolean,
  clockBack: boolean,
): Pick<LegResult, 'state' | 'reason'> {
  if (judged.state === 'fail') return judged;
  if (cured === 'not-met') return { state: 'fail', reason: CURED_REASON['not-met'] };
  if (cured === 'unknown' || cured === 'liver') return { state: 'cannot-tell', reason: CURED_REASON[cured] };
  if (judged.state === 'pass' && clockBack) return { state: 'cannot-tell', reason: 'cool.clock-back' };
  if (judged.state === 'pass' && rose) return { state: 'cannot-tell', reason: 'cool.not-falling' };
  return judged;
}

/** The coldest medium of the chill last begun, to which the core now falls. */
function mediumOf(phase: Phase): number | null {
  const chill = phase.steps.findLast((step) => step.kind === 'chill' && step.startedAt !== null);
  return chill ? entryValue('temperature', chill.medium) : null;
}

function projected(
  leg: CoolLeg,
  judged: LegJudgement,
  readings: readonly CoolReading[],
  mediumC: number | null,
): number | null {
  if (judged.endLatestMs !== null || mediumC === null) return null;
  return projectCrossingMs(
    readings.filter(({ counts }) => counts),
    mediumC,
    exactC(leg.to),
  );
}

/** Whether a cure lets a set be used; null where the set asks for none. */
export function curedFor(ruleSet: CoolRuleSet, facts: CoolFacts): CuredState | null {
  return ruleSet.cured === null ? null : curedState(ruleSet.cured, facts);
}

/** Judge one log in one cooling by every leg of a rule set. */
export function judgeCoolLog(
  log: ProbeLog,
  process: ProcessSlice,
  phases: readonly Phase[],
  index: number,
  ruleSet: CoolRuleSet,
  cured: CuredState | null,
): CoolLogResult {
  const checked = checkLog(log, hottestMediumC(process.steps));
  const phase = phases[index];
  const heatEndMs = phase?.heatEndMs ?? null;
  const chillEndMs = phase?.chillEndMs ?? Number.POSITIVE_INFINITY;
  const inside = checked.readings.filter(({ atMs }) => inPhase(phases, index, atMs) && atMs <= chillEndMs);
  const readings = coolReadings(inside);
  const after = readings.filter(({ atMs }) => heatEndMs === null || atMs >= heatEndMs);
  const rewarmedC = rewarming(after, checked.errorC);
  const request = {
    errorC: checked.errorC,
    offsetKnown: checked.offsetC !== null,
    unitSuspect: checked.unitSuspect,
    heatEndMs,
  };
  const judged = judgeCooling(readings, ruleSet.legs, request);
  const mediumC = phase ? mediumOf(phase) : null;
  const cooled = inside.filter(({ atMs }) => heatEndMs === null || atMs >= heatEndMs);
  const clockBack = clockWentBack(checked.readings, cooled);
  const legs = ruleSet.legs.flatMap((leg, place): LegResult[] => {
    const own = judged[place];
    if (!own) return [];
    const rose = ruleSet.mustFall === true && rewarmedC !== null;
    const { state, reason } = decide(own, cured, rose, clockBack);
    return [{ leg, judged: own, state, reason, projectedMs: projected(leg, own, after, mediumC) }];
  });
  return {
    logId: log.id,
    name: log.name,
    log: checked,
    readings: cooled,
    rewarmedC,
    legs,
  };
}
