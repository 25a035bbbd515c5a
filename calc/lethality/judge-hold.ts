import type { VerdictState } from '../findings/index.ts';
import type { LimitTemp } from '../quantities/index.ts';
import { thresholdC } from './limit.ts';

/** Two readings further apart than this are not one run. House rule. */
export const HOLD_GAP_MIN = 15;
/** Lines are drawn between readings up to this far apart, for information only. */
export const LINE_GAP_MIN = 60;
/** A log that has fallen this far under its peak is past its heating, whatever the steps say. */
const FALLEN_C = 10;
/** Room for the last digits of a corrected reading, far under what any probe shows. */
const TEMP_EPSILON = 1e-6;
const MS_PER_MIN = 60_000;

/** One reading as the hold sees it. Readings a person excluded are not handed in. */
export interface HoldReading {
  readonly atMs: number;
  /** °C, offset taken off; null when unreadable. */
  readonly tempC: number | null;
  /** Scale of the probe's display: a rule that prints both scales holds each to its own figure. */
  readonly unit: 'C' | 'F';
  /** False for a reading that cannot be or cannot be read: it breaks a run and shows nothing. */
  readonly counts: boolean;
}

export interface HoldRequest {
  readonly stated: LimitTemp;
  readonly holdS: number;
  /** ± °C; null while unknown. */
  readonly errorC: number | null;
  readonly offsetKnown: boolean;
  /** The log may be in the other unit. */
  readonly unitSuspect: boolean;
  /** The end of heating is written down, or a chill has begun. */
  readonly heatOver: boolean;
}

export type HoldReason =
  | 'cook.hold-met'
  | 'cook.hold-short'
  | 'cook.never-reached'
  | 'cook.hold-not-shown'
  | 'cook.open'
  | 'cook.no-readings'
  | 'cook.unit-suspect'
  | 'cook.error-unknown'
  | 'cook.offset-unknown';

/** An unbroken run of readings at or above the action temperature. */
export interface Run {
  readonly startMs: number;
  readonly endMs: number;
  readonly readings: number;
}

export interface HoldJudgement {
  readonly state: VerdictState;
  readonly reason: HoldReason;
  /** What the probe must show: limit + error, on the scale of the last reading, °C. Null without an error. */
  readonly actionC: number | null;
  /** First to last reading of the longest run, s. The only figure the verdict rests on. */
  readonly countedS: number;
  readonly run: Run | null;
  /** Longest time at or above by straight lines between readings, s. Information only. */
  readonly interpolatedS: number;
  readonly peakC: number | null;
  readonly firstReachedMs: number | null;
  /** Seconds of the hold that the readings so far leave to be shown. */
  readonly remainingS: number;
}

type Sound = HoldReading & { readonly tempC: number };

/** Highest of readings, however many: a spread call would overflow on a logger's file. */
function peakOf(readings: readonly Sound[]): number {
  return readings.reduce((peak, { tempC }) => Math.max(peak, tempC), Number.NEGATIVE_INFINITY);
}

function isSound(reading: HoldReading): reading is Sound {
  return reading.counts && reading.tempC !== null;
}

/** Longest first, the earlier of two equals first. */
function longest(runs: readonly Run[]): Run | null {
  return runs.toSorted((a, b) => b.endMs - b.startMs - (a.endMs - a.startMs)).at(0) ?? null;
}

/** Cut readings into unbroken runs at or above. A reading that is below, doubtful or too long after ends a run. */
function runsOf(
  readings: readonly HoldReading[],
  reached: (reading: Sound) => boolean,
  gapMin: number,
): Run[] {
  const runs: Run[] = [];
  let run: Run | null = null;
  for (const reading of readings) {
    if (!isSound(reading) || !reached(reading)) {
      run = null;
      continue;
    }
    const joins: boolean = run !== null && reading.atMs - run.endMs <= gapMin * MS_PER_MIN;
    if (run !== null && joins) runs.pop();
    const begun: Run =
      run !== null && joins ? run : { startMs: reading.atMs, endMs: reading.atMs, readings: 0 };
    run = { startMs: begun.startMs, endMs: reading.atMs, readings: begun.readings + 1 };
    runs.push(run);
  }
  return runs;
}

/** Longest stretch at or above a temperature along straight lines between sound readings, s. */
export function interpolatedDwellS(readings: readonly HoldReading[], tempC: number): number {
  const points = readings.filter(isSound);
  let best = 0;
  let sinceMs: number | null = null;
  let before: Sound | null = null;
  for (const point of points) {
    const above = point.tempC >= tempC - TEMP_EPSILON;
    const joined: boolean = before !== null && point.atMs - before.atMs <= LINE_GAP_MIN * MS_PER_MIN;
    if (before === null || !joined) {
      sinceMs = above ? point.atMs : null;
    } else if (above !== before.tempC >= tempC - TEMP_EPSILON) {
      const share = (tempC - before.tempC) / (point.tempC - before.tempC);
      const crossMs = before.atMs + share * (point.atMs - before.atMs);
      if (!above && sinceMs !== null) best = Math.max(best, crossMs - sinceMs);
      sinceMs = above ? crossMs : null;
    }
    if (sinceMs !== null) best = Math.max(best, point.atMs - sinceMs);
    before = point;
  }
  return best / 1000;
}

function verdictOf(
  request: HoldRequest,
  sound: readonly Sound[],
  run: Run | null,
  possibleS: number,
): [VerdictState, HoldReason] {
  const countedS = run === null ? -1 : (run.endMs - run.startMs) / 1000;
  if (sound.length === 0)
    return ['cannot-tell', request.unitSuspect ? 'cook.unit-suspect' : 'cook.no-readings'];
  if (countedS >= request.holdS) {
    if (request.unitSuspect) return ['cannot-tell', 'cook.unit-suspect'];
    if (!request.offsetKnown) return ['cannot-tell', 'cook.offset-unknown'];
    return request.errorC === null ? ['cannot-tell', 'cook.error-unknown'] : ['pass', 'cook.hold-met'];
  }
  const fallen = peakOf(sound) - (sound.at(-1)?.tempC ?? Number.POSITIVE_INFINITY) >= FALLEN_C;
  if (!request.heatOver && !fallen) return ['cannot-tell', 'cook.open'];
  if (possibleS >= request.holdS) return ['cannot-tell', 'cook.hold-not-shown'];
  return ['fail', run === null ? 'cook.never-reached' : 'cook.hold-short'];
}

/**
 * Judge a hold on readings alone.
 *
 * Pass: an unbroken run at or above (limit + probe error), no two readings more than 15 min apart, from its first to
 * its last reading at least as long as the hold; for a hold of 0 s one reading is enough. Fail: heating is over and
 * the readings do not hold it, even if gaps and doubtful readings between two high ones are forgiven. Anything else
 * is "cannot tell": an open cook, a gap or a lost probe inside the hold, an error or offset nobody entered.
 * An error that is not known is taken as 0 to look for a miss, never for a pass.
 *
 * @param readings in the order of time, without those a person excluded
 */
export function judgeHold(readings: readonly HoldReading[], request: HoldRequest): HoldJudgement {
  const { stated, holdS, errorC } = request;
  const actionFor = (unit: 'C' | 'F') => thresholdC(stated, unit) + (errorC ?? 0);
  const reached = (reading: Sound) => reading.tempC >= actionFor(reading.unit) - TEMP_EPSILON;
  const sound = readings.filter(isSound);
  const runs = runsOf(readings, reached, HOLD_GAP_MIN);
  const run = longest(runs);
  const forgiven = longest(runsOf(sound, reached, Number.POSITIVE_INFINITY));
  const possibleS = forgiven === null ? -1 : (forgiven.endMs - forgiven.startMs) / 1000;
  const [state, reason] = verdictOf(request, sound, run, possibleS);
  const last = sound.at(-1);
  const current = runs.find(({ endMs }) => last !== undefined && endMs === last.atMs && reached(last));
  const currentS = current ? (current.endMs - current.startMs) / 1000 : 0;
  const action = last ? actionFor(last.unit) : null;
  return {
    state,
    reason,
    actionC: errorC === null ? null : action,
    countedS: run === null ? 0 : (run.endMs - run.startMs) / 1000,
    run,
    interpolatedS: action === null ? 0 : interpolatedDwellS(readings, action),
    peakC: sound.length === 0 ? null : peakOf(sound),
    firstReachedMs: sound.find(reached)?.atMs ?? null,
    remainingS: state === 'pass' ? 0 : Math.max(0, holdS - currentS),
  };
}
