import { type CheckedLog, type CheckedReading, checkLog, hottestMediumC } from '../probe-log/index.ts';
import { inPhase, type Phase, type ProbeLog, type ProcessSlice } from '../process/index.ts';
import { comeUp } from './come-up.ts';
import type { CookFindingId } from './finding-ids.ts';
import { type HoldJudgement, type HoldReading, judgeHold, LINE_GAP_MIN } from './judge-hold.ts';
import { LINE_70_Z7_5, LINE_70_Z10 } from './lethal-rate.ts';
import type { CookLimit, Hold } from './limit.ts';
import { type CurvePoint, type Integration, pasteurisationValue } from './pasteurisation-value.ts';
import type { CookLogResult, ValueAt70 } from './values.ts';

const MS_PER_MIN = 60_000;
/** Under this the pasteurisation value by z = 7.5 °C counts nothing. Common practice, no source. */
const VALUE_FLOOR_C = 60;

/** Readings as the hold sees them: those a person left out are gone, doubtful ones stay and break runs. */
export function holdReadings(readings: readonly CheckedReading[]): HoldReading[] {
  return readings
    .filter((reading) => reading.state !== 'excluded')
    .map(({ atMs, tempC, unit, state }) => ({ atMs, tempC, unit, counts: state === 'counts' }));
}

/** Curves of sound readings, cut at every gap too long to draw a line over. */
export function curvesOf(readings: readonly HoldReading[]): CurvePoint[][] {
  const curves: CurvePoint[][] = [];
  for (const { atMs, tempC, counts } of readings) {
    if (!counts || tempC === null) continue;
    const point = { timeMin: atMs / MS_PER_MIN, tempC };
    const last = curves.at(-1);
    if (last && point.timeMin - (last.at(-1)?.timeMin ?? point.timeMin) <= LINE_GAP_MIN) last.push(point);
    else curves.push([point]);
  }
  return curves;
}

function valueAt70(readings: readonly HoldReading[]): ValueAt70 {
  const curves = curvesOf(readings);
  const sum = (method: Integration) =>
    curves.reduce(
      (total, curve) => total + pasteurisationValue(curve, LINE_70_Z7_5, { method, floorC: VALUE_FLOOR_C }),
      0,
    );
  return {
    exactMin: sum('exact'),
    trapezoidMin: sum('trapezoid'),
    failSafeMin: sum('fail-safe'),
    z10Min: curves.reduce((total, curve) => total + pasteurisationValue(curve, LINE_70_Z10), 0),
  };
}

/** The limit as it stands for this product, or the reason there is none. */
export type Asked =
  | { readonly limit: CookLimit; readonly hold: Hold }
  | { readonly state: 'fail' | 'cannot-tell'; readonly reason: CookFindingId };

function judgePhase(
  log: CheckedLog,
  readings: readonly HoldReading[],
  phase: Phase,
  asked: Asked,
): HoldJudgement | null {
  if (!('limit' in asked)) return null;
  return judgeHold(readings, {
    stated: asked.limit.stated,
    holdS: asked.hold.s,
    errorC: log.errorC,
    offsetKnown: log.offsetC !== null,
    unitSuspect: log.unitSuspect,
    heatOver: phase.heatOver,
  });
}

/**
 * Judge one log. Where the product was cooked in more than one heating, a heating that held the limit is enough;
 * without one the last that has readings is told.
 */
export function judgeLog(
  log: ProbeLog,
  process: ProcessSlice,
  phases: readonly Phase[],
  asked: Asked,
): CookLogResult {
  const checked = checkLog(log, hottestMediumC(process.steps));
  const tried = phases
    .map((phase, index) => ({
      phase,
      readings: checked.readings.filter(({ atMs }) => inPhase(phases, index, atMs)),
    }))
    .filter(({ phase }) => phase.kind === 'cook')
    .map((one) => ({ ...one, hold: judgePhase(checked, holdReadings(one.readings), one.phase, asked) }));
  const chosen =
    tried.find(({ hold }) => hold?.state === 'pass') ??
    tried.findLast(({ readings }) => readings.length > 0) ??
    tried.at(-1);
  const readings = chosen?.readings ?? [];
  const held = holdReadings(readings);
  const heatEndMs = chosen?.phase.heatEndMs ?? Number.POSITIVE_INFINITY;
  const hold = chosen?.hold ?? null;
  return {
    logId: log.id,
    name: log.name,
    log: checked,
    readings,
    hold,
    heatEndMs: chosen?.phase.heatEndMs ?? null,
    comeUp: comeUp(held),
    atHeatEnd: valueAt70(held.filter(({ atMs }) => atMs <= heatEndMs)),
    whole: valueAt70(held),
    state: 'limit' in asked ? (hold?.state ?? 'cannot-tell') : asked.state,
    reason: 'limit' in asked ? (hold?.reason ?? 'cook.no-readings') : asked.reason,
  };
}
