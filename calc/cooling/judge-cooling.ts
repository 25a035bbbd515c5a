import type { VerdictState } from '../findings/index.ts';
import { type CoolLeg, exactC } from './cool-leg.ts';
import { type CoolPoint, crossingMin } from './cooling-curve.ts';

/** A gap longer than this is never bridged, whatever stands at its ends. House rule. */
export const COOL_GAP_MIN = 60;
/** A fall and rise larger than this before the highest reading means more than one cooling. */
const EARLIER_FALL_C = 10;
/** Noise of a core that still climbs. */
const CLIMB_NOISE_C = 0.5;
/** Room for the last digits of a corrected reading. */
const TEMP_EPSILON = 1e-6;
const MS_PER_MIN = 60_000;

/** One reading as a leg sees it. Readings a person excluded, and those without a figure, are not handed in. */
export interface CoolReading {
  readonly atMs: number;
  /** °C, offset taken off. */
  readonly tempC: number;
  /** False for a reading that cannot be: it counts against a leg, never for it. */
  readonly counts: boolean;
}

export interface CoolRequest {
  /** ± °C; null while unknown. */
  readonly errorC: number | null;
  readonly offsetKnown: boolean;
  readonly unitSuspect: boolean;
  /** End of the last heating; null when nobody wrote it down. */
  readonly heatEndMs: number | null;
}

export type CoolReason =
  | 'cool.leg-met'
  | 'cool.leg-missed'
  | 'cool.too-close'
  | 'cool.gap'
  | 'cool.unfinished'
  | 'cool.not-begun'
  | 'cool.start-unknown'
  | 'cool.cook-end-unknown'
  | 'cool.no-readings'
  | 'cool.unit-suspect'
  | 'cool.error-unknown'
  | 'cool.offset-unknown';

/** What straight lines between readings say of a leg. Information only. */
export interface LineLeg {
  readonly startMs: number;
  readonly endMs: number;
  readonly elapsedMin: number;
  readonly state: 'pass' | 'fail';
}

export interface LegJudgement {
  readonly legId: string;
  readonly state: VerdictState;
  readonly reason: CoolReason;
  /** Earliest moment the clock can have started; null when nothing shows it. */
  readonly startEarliestMs: number | null;
  /** Reading that shows the end for sure. */
  readonly endLatestMs: number | null;
  /** Longest time the readings allow, min. The only figure a pass rests on. */
  readonly worstMin: number | null;
  /** Clock by which the end must be shown, from the earliest start. */
  readonly deadlineMs: number | null;
  readonly lines: LineLeg | null;
}

/** A cooling cut out of a log, ready for any leg. */
interface Cooling {
  /** From the highest reading of the carry-over on. */
  readonly sound: readonly CoolReading[];
  readonly all: readonly CoolReading[];
  readonly heatEndMs: number | null;
}

/**
 * Carry-over: readings that go on climbing from the last one in the heat. The first fall ends it, so noise can only
 * start a clock early. Without a reading in the heat to climb from, or after a fall, nothing is skipped: a later rise
 * would be a rewarming.
 */
function afterCarryOver(
  sound: readonly CoolReading[],
  inHeat: CoolReading | undefined,
): readonly CoolReading[] {
  const [first] = sound;
  if (!first || !inHeat || first.tempC < inHeat.tempC - CLIMB_NOISE_C) return sound;
  const top = sound.findIndex((reading, index) => {
    const next = sound[index + 1];
    return !next || next.tempC < reading.tempC || next.atMs - reading.atMs > COOL_GAP_MIN * MS_PER_MIN;
  });
  return sound.slice(top);
}

/** Highest reading of a log whose heating nobody ended; null where it fell and rose again before that. */
function fromPeak(sound: readonly CoolReading[]): readonly CoolReading[] | null {
  let top = 0;
  let runningC = Number.NEGATIVE_INFINITY;
  let fellAt = -1;
  for (const [index, { tempC }] of sound.entries()) {
    if (tempC > (sound[top]?.tempC ?? Number.NEGATIVE_INFINITY)) top = index;
    runningC = Math.max(runningC, tempC);
    if (fellAt === -1 && runningC - tempC > EARLIER_FALL_C) fellAt = index;
  }
  return fellAt !== -1 && fellAt < top ? null : sound.slice(top);
}

function coolingOf(readings: readonly CoolReading[], heatEndMs: number | null): Cooling | null {
  const after = heatEndMs === null ? readings : readings.filter(({ atMs }) => atMs >= heatEndMs);
  const sound = after.filter(({ counts }) => counts);
  const inHeat = readings.findLast(({ atMs, counts }) => counts && heatEndMs !== null && atMs < heatEndMs);
  const cut = heatEndMs === null ? fromPeak(sound) : afterCarryOver(sound, inHeat);
  if (cut === null) return null;
  const fromMs = cut.at(0)?.atMs ?? Number.POSITIVE_INFINITY;
  return { sound: cut, all: after.filter(({ atMs }) => atMs >= fromMs), heatEndMs };
}

interface Start {
  readonly earliestMs: number | null;
  readonly latestMs: number | null;
  readonly begun: boolean;
}

/** When the clock can have started: after the last reading surely above, before the first one surely not. */
function startOf({ sound, heatEndMs }: Cooling, leg: CoolLeg, errorC: number): Start {
  if (leg.from === null) return { earliestMs: heatEndMs, latestMs: heatEndMs, begun: true };
  const fromC = exactC(leg.from);
  const maybe = sound.findIndex(({ tempC }) => tempC - errorC <= fromC + TEMP_EPSILON);
  const surely = sound.find(({ tempC }) => tempC + errorC <= fromC + TEMP_EPSILON);
  const earliestMs = maybe > 0 ? (sound[maybe - 1]?.atMs ?? null) : heatEndMs;
  return {
    earliestMs: maybe === -1 ? null : earliestMs,
    latestMs: surely?.atMs ?? null,
    begun: maybe !== -1,
  };
}

/** The reading that surely shows the end, with nothing above after it. */
function endOf({ all }: Cooling, leg: CoolLeg, errorC: number): CoolReading | null {
  const toC = exactC(leg.to);
  const lastAbove = all.findLastIndex(({ tempC }) => tempC > toC + TEMP_EPSILON);
  return (
    all.slice(lastAbove + 1).find(({ tempC, counts }) => counts && tempC + errorC <= toC + TEMP_EPSILON) ??
    null
  );
}

/** A reading surely above the end at or after the deadline, counted from the latest possible start. */
function provenMiss({ all }: Cooling, leg: CoolLeg, errorC: number, latestMs: number | null): boolean {
  if (latestMs === null) return false;
  const deadlineMs = latestMs + leg.maxMin * MS_PER_MIN;
  const toC = exactC(leg.to);
  return all.some(
    ({ atMs, tempC, counts }) => atMs >= deadlineMs && tempC - (counts ? errorC : 0) > toC + TEMP_EPSILON,
  );
}

/** Whether sound readings cover a stretch without a gap that is too long. */
function covered(sound: readonly CoolReading[], startMs: number, endMs: number): boolean {
  let lastMs = startMs;
  for (const { atMs } of sound) {
    if (atMs <= startMs) continue;
    if (atMs - lastMs > COOL_GAP_MIN * MS_PER_MIN) return false;
    lastMs = atMs;
    if (atMs >= endMs) return true;
  }
  return lastMs >= endMs;
}

/** The leg along straight lines between sound readings; null where a crossing lies in a long gap or is not there. */
function linesOf({ sound, heatEndMs }: Cooling, leg: CoolLeg): LineLeg | null {
  const points = sound.map(({ atMs, tempC }): CoolPoint => ({ timeMin: atMs / MS_PER_MIN, tempC }));
  const between = (index: number, tempC: number): number | null => {
    const [a, b] = [points[index - 1], points[index]];
    return a && b && b.timeMin - a.timeMin <= COOL_GAP_MIN ? crossingMin(a, b, tempC) : null;
  };
  const toC = exactC(leg.to);
  const heatEndMin = heatEndMs === null ? null : heatEndMs / MS_PER_MIN;
  let startMin = heatEndMin;
  if (leg.from !== null) {
    const fromC = exactC(leg.from);
    const index = points.findIndex(({ tempC }) => tempC <= fromC + TEMP_EPSILON);
    if (index === -1) return null;
    if (index > 0) startMin = between(index, fromC);
  }
  const lastAbove = points.findLastIndex(({ tempC }) => tempC > toC + TEMP_EPSILON);
  const endMin = lastAbove === -1 ? (points.at(0)?.timeMin ?? null) : between(lastAbove + 1, toC);
  if (startMin === null || endMin === null) return null;
  const elapsedMin = Math.max(0, endMin - startMin);
  const inside = leg.strict ? elapsedMin < leg.maxMin : elapsedMin <= leg.maxMin;
  return {
    startMs: startMin * MS_PER_MIN,
    endMs: endMin * MS_PER_MIN,
    elapsedMin,
    state: inside ? 'pass' : 'fail',
  };
}

function unknown(leg: CoolLeg, reason: CoolReason): LegJudgement {
  const nothing = { startEarliestMs: null, endLatestMs: null, worstMin: null, deadlineMs: null, lines: null };
  return { legId: leg.id, state: 'cannot-tell', reason, ...nothing };
}

function passOrDoubt(request: CoolRequest): [VerdictState, CoolReason] {
  if (request.unitSuspect) return ['cannot-tell', 'cool.unit-suspect'];
  if (!request.offsetKnown) return ['cannot-tell', 'cool.offset-unknown'];
  return request.errorC === null ? ['cannot-tell', 'cool.error-unknown'] : ['pass', 'cool.leg-met'];
}

function judgeLeg(cooling: Cooling, leg: CoolLeg, request: CoolRequest): LegJudgement {
  // Unknown error: readings as written may prove a miss, and can never prove a pass.
  const errorC = request.errorC ?? 0;
  const start = startOf(cooling, leg, errorC);
  const end = endOf(cooling, leg, errorC);
  const worstMin =
    start.earliestMs === null || end === null ? null : (end.atMs - start.earliestMs) / MS_PER_MIN;
  const inside = worstMin !== null && (leg.strict ? worstMin < leg.maxMin : worstMin <= leg.maxMin);
  const shared = {
    legId: leg.id,
    startEarliestMs: start.earliestMs,
    endLatestMs: end?.atMs ?? null,
    worstMin,
    deadlineMs: start.earliestMs === null ? null : start.earliestMs + leg.maxMin * MS_PER_MIN,
    lines: linesOf(cooling, leg),
  };
  const say = (state: VerdictState, reason: CoolReason): LegJudgement => ({ ...shared, state, reason });
  if (provenMiss(cooling, leg, errorC, start.latestMs)) return say('fail', 'cool.leg-missed');
  if (!start.begun) return say('cannot-tell', 'cool.not-begun');
  if (start.earliestMs === null)
    return say('cannot-tell', leg.from === null ? 'cool.cook-end-unknown' : 'cool.start-unknown');
  if (end === null) return say('cannot-tell', 'cool.unfinished');
  if (!covered(cooling.sound, start.earliestMs, end.atMs)) return say('cannot-tell', 'cool.gap');
  return inside ? say(...passOrDoubt(request)) : say('cannot-tell', 'cool.too-close');
}

/**
 * Judge the cooling of one log, leg by leg, on readings alone.
 *
 * The clock starts where the core falls through the leg's start: at worst at the last reading surely above it, and
 * where no reading after heating is, at the end of heating. It ends at the first reading surely at or below the end
 * with none above after it. "Surely" takes the probe error off or puts it on, whichever is the less kind.
 *
 * Pass: that longest time is inside the limit and no gap over 60 min lies in it. Fail: even counted from the latest
 * start, a reading at or after the deadline is surely above the end. Anything else is "cannot tell".
 *
 * @param readings of the whole heating and cooling, in the order of time
 */
export function judgeCooling(
  readings: readonly CoolReading[],
  legs: readonly CoolLeg[],
  request: CoolRequest,
): LegJudgement[] {
  const cooling = coolingOf(readings, request.heatEndMs);
  return legs.map((leg) => {
    if (cooling === null) return unknown(leg, 'cool.cook-end-unknown');
    // A log that ends at its highest reading, its heating not ended either, is still on the way up.
    const climbs = request.heatEndMs === null && cooling.sound.length === 1 && readings.length > 1;
    if (climbs) return unknown(leg, 'cool.not-begun');
    if (cooling.sound.length === 0)
      return unknown(leg, request.unitSuspect ? 'cool.unit-suspect' : 'cool.no-readings');
    return judgeLeg(cooling, leg, request);
  });
}
