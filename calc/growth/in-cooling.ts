import type { CoolFacts } from '../cooling/index.ts';
import { COOL_GAP_MIN } from '../cooling/index.ts';
import { type CheckedLog, type CheckedReading, checkLog, hottestMediumC } from '../probe-log/index.ts';
import { inPhase, type Phase, type ProcessSlice, phasesOf } from '../process/index.ts';
import { cardinalRatePerH } from './cardinal-temperature.ts';
import { grow } from './grow.ts';
import {
  type GrowthSet,
  LIGHTLY_SALTED_FRACTION,
  PERFRINGENS_COUNTS,
  PERFRINGENS_LAG_WORK,
  PERFRINGENS_SETS,
} from './published.ts';
import { type GrowthPoint, rateIntegral } from './rate-integral.ts';

/** Why growth cannot be told. */
export type GrowthDoubt =
  /** No complete published set for cured meat. */
  | 'cured'
  | 'cure-unknown'
  /** More salt than the published food had. */
  | 'salty'
  | 'salt-unknown'
  | 'no-readings'
  | 'unit-suspect'
  | 'offset-unknown'
  | 'error-unknown'
  /** No reading shows the core above the temperatures of growth. */
  | 'start-not-shown'
  /** A reading that cannot be or cannot be read: the core may have been anything there. */
  | 'doubtful-reading'
  | 'gap';

/** Growth by one published set, log10. `most`: the largest with the probe's error put on or taken off. */
export interface SetGrowth {
  readonly set: GrowthSet;
  readonly withoutLag: { readonly asRead: number; readonly most: number };
  readonly withLag: { readonly asRead: number; readonly most: number };
}

/** Growth of Clostridium perfringens by one log. Information: no verdict hears of it. */
export interface LogGrowth {
  readonly logId: string;
  readonly name: string;
  readonly doubt: GrowthDoubt | null;
  readonly sets: readonly SetGrowth[];
  /** The core is shown below the temperatures of growth at the end; otherwise the figures are so far. */
  readonly ended: boolean;
}

/** What the product is, as far as the published sets depend on it. Null is unknown. */
export interface GrowthFacts {
  /** Ingoing nitrite, mg/kg. */
  readonly nitritePpm: number | null;
  /** Salt in everything, the most the formula allows. */
  readonly saltFraction: number | null;
}

/** What growth is judged by: the most salt on the water, a fraction, and the nitrite, mg/kg; null is unknown. */
export function growthFacts(
  { nitritePpm }: Pick<CoolFacts, 'nitritePpm'>,
  saltMaxFraction: number | null,
): GrowthFacts {
  return { nitritePpm, saltFraction: saltMaxFraction };
}

const MS_PER_MIN = 60_000;
const WARMEST_C = Math.max(...PERFRINGENS_SETS.map(({ maxC }) => maxC));
const COLDEST_C = Math.min(...PERFRINGENS_SETS.map(({ minC }) => minC));

/** Whether the published sets are about such a food. */
export function productDoubt({ nitritePpm, saltFraction }: GrowthFacts): GrowthDoubt | null {
  if (nitritePpm === null) return 'cure-unknown';
  if (nitritePpm > 0) return 'cured';
  if (saltFraction === null) return 'salt-unknown';
  return saltFraction > LIGHTLY_SALTED_FRACTION ? 'salty' : null;
}

type Sound = CheckedReading & { readonly tempC: number };
const isSound = (reading: CheckedReading): reading is Sound =>
  reading.state === 'counts' && reading.tempC !== null;

/**
 * Readings from the last one above all growth, before the core first falls into it, on. A rewarming after that counts.
 * Empty where nothing shows that the core was there.
 */
function fromHot(readings: readonly CheckedReading[], errorC: number): readonly CheckedReading[] {
  let last = -1;
  for (const [index, reading] of readings.entries()) {
    if (!isSound(reading)) continue;
    if (reading.tempC - errorC >= WARMEST_C) last = index;
    else if (last !== -1) break;
  }
  return last === -1 ? [] : readings.slice(last);
}

/** Whether two sound readings leave open what the core did between the ends of growth. */
function isGap(before: Sound, here: Sound): boolean {
  const inside = Math.max(before.tempC, here.tempC) > COLDEST_C;
  return inside && here.atMs - before.atMs > COOL_GAP_MIN * MS_PER_MIN;
}

function logDoubt(log: CheckedLog, readings: readonly CheckedReading[]): GrowthDoubt | null {
  if (log.unitSuspect) return 'unit-suspect';
  if (log.offsetC === null) return 'offset-unknown';
  if (log.errorC === null) return 'error-unknown';
  if (!readings.some(isSound)) return 'no-readings';
  const span = fromHot(readings, log.errorC);
  if (span.length === 0) return 'start-not-shown';
  if (span.some(({ state }) => state === 'cannot-be' || state === 'unreadable')) return 'doubtful-reading';
  const sound = span.filter(isSound);
  const gap = sound.some((here, index) => {
    const before = sound[index - 1];
    return before !== undefined && isGap(before, here);
  });
  return gap ? 'gap' : null;
}

/** log10 growth of one set over points, every reading moved by so many degrees. */
function grownBy(set: GrowthSet, points: readonly GrowthPoint[], shiftC: number, work: number): number {
  const moved = points.map(({ timeMin, tempC }) => ({ timeMin, tempC: tempC + shiftC }));
  const integral = rateIntegral(moved, (tempC) => cardinalRatePerH(tempC, set), [set.minC, set.maxC]);
  const { start, most } = PERFRINGENS_COUNTS;
  return grow({ log10Count: start, work }, integral, most).log10Count - start;
}

/** Growth of one set over a curve: as read, and the most a probe's error allows. */
export function setGrowth(set: GrowthSet, points: readonly GrowthPoint[], errorC: number): SetGrowth {
  const grown = (work: number) => {
    const shifts = [-errorC, -errorC / 2, 0, errorC / 2, errorC];
    return {
      asRead: grownBy(set, points, 0, work),
      most: Math.max(...shifts.map((shiftC) => grownBy(set, points, shiftC, work))),
    };
  };
  return { set, withoutLag: grown(0), withLag: grown(PERFRINGENS_LAG_WORK) };
}

/** Growth over the cooling of one checked log. A reading a person excluded is left out, its neighbours joined. */
function logGrowth(
  log: CheckedLog,
  readings: readonly CheckedReading[],
  product: GrowthDoubt | null,
): Pick<LogGrowth, 'doubt' | 'sets' | 'ended'> {
  const doubt = product ?? logDoubt(log, readings);
  if (doubt !== null) return { doubt, sets: [], ended: false };
  const errorC = log.errorC ?? 0;
  const points = fromHot(readings, errorC)
    .filter(isSound)
    .map(({ atMs, tempC }) => ({ timeMin: atMs / MS_PER_MIN, tempC }));
  const lastC = points.at(-1)?.tempC ?? Number.POSITIVE_INFINITY;
  return {
    doubt: null,
    sets: PERFRINGENS_SETS.map((set) => setGrowth(set, points, errorC)),
    ended: lastC + errorC <= COLDEST_C,
  };
}

/** Growth in the cooling after one heating. */
export interface CoolingGrowth {
  /** From 1, in the order of the work. */
  readonly number: number;
  readonly logs: readonly LogGrowth[];
}

/** Readings of one phase up to the end of its chill: later ones are storage. */
function inCooling(log: CheckedLog, phases: readonly Phase[], index: number): readonly CheckedReading[] {
  const chillEndMs = phases[index]?.chillEndMs ?? Number.POSITIVE_INFINITY;
  return log.readings.filter(({ atMs }) => inPhase(phases, index, atMs) && atMs <= chillEndMs);
}

/**
 * Growth of Clostridium perfringens from spores in every cooling of a batch, by the published sets, with and without
 * lag. It stands beside the verdicts and changes none of them: there is no verdict in it.
 */
export function growthInCooling(process: ProcessSlice, facts: GrowthFacts): CoolingGrowth[] {
  const phases = phasesOf(process.steps);
  const product = productDoubt(facts);
  return phases.flatMap((phase, index): CoolingGrowth[] => {
    if (index > 0 && !phase.steps.some((step) => step.kind === 'chill')) return [];
    const logs = process.logs.map((log): LogGrowth => {
      const checked = checkLog(log, hottestMediumC(process.steps));
      const readings = inCooling(checked, phases, index);
      return { logId: log.id, name: log.name, ...logGrowth(checked, readings, product) };
    });
    return [{ number: index + 1, logs }];
  });
}
